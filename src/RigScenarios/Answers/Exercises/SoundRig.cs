using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>The rig that an exercise starts from: one build and its days, the head set as it is best.</summary>
internal static class SoundRig
{
    /// <summary>The answer for it.</summary>
    /// <exception cref="ScenarioProblemsException">There is no such build or day, or a question fails.</exception>
    public static RigAnswer Of(Scenario scenario, string build, IReadOnlyList<string> days, AnswerOptions options,
        CancellationToken cancellation)
    {
        IReadOnlyList<string> names = days.Count > 0 ? days : [.. scenario.Days.Keys];
        var asked = scenario.AskedOn(options.Today);
        // What else the file holds would show how the rig was meant to be.
        var alone = asked with
        {
            Builds = new([KeyValuePair.Create(build, Chosen.From(asked.Builds, build, "build", "builds"))]),
            Days = new(names.Distinct().Select(name => KeyValuePair.Create(name,
                Chosen.From(asked.Days, name, "day", "days")))),
        };
        var answer = RigAnswer.Of(alone, build, names, options, cancellation: cancellation);
        if (answer.Balance is { AsSet: null, Best: { } best })
        {
            var set = ScenarioPath.SetAll(alone, [
                ($"builds.{build}.on-head.plate-at", $"{Math.Round(best.CameraPlate.Millimeters):0} mm"),
                ($"builds.{build}.on-head.counterbalance-at", BatteryChanges.Text(
                    Math.Round(best.Counterbalance.NewtonMeters, 1), "N·m"))]);
            answer = RigAnswer.Of(set, build, names, options, cancellation: cancellation);
        }
        var failing = answer.Questions.Where(question => question.Verdict == Verdict.Fails).ToList();
        return failing.Count == 0 ? answer : throw new ScenarioProblemsException([.. AnswerSentences.Questions(answer)
            .Where(line => line.Verdict == Verdict.Fails).Select(line => new Diagnostic(Severity.Error, "", TextPlace.None,
                $"builds.{build}", $"An exercise starts from a rig that works, and this one fails. {line.Title}: {line.Words}",
                "a build and days for which \"run\" says that nothing fails"))]);
    }
}
