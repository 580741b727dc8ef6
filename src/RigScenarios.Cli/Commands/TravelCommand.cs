using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Cli.Commands;

/// <summary><c>travel SCENARIO</c>: who carries which battery on a journey, what stays behind, what the airline must
/// approve.</summary>
internal static class TravelCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var journey = new Option<string?>("--journey") { Description = "Only this journey, by its short name. Where the "
            + "scenario has none: a passenger flight today, one traveller, all batteries of the kit.", HelpName = "NAME" };
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("travel",
            "Do the batteries get there? What to ask the airline, what stays behind and why, and who carries what.");
        options.AddFileTo(command);
        command.Add(journey);
        command.Add(json);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed);
            var answers = Answers(scenario, parsed.GetValue(journey), Today.Of(clock), cancellation);
            var planned = PlannedJourney.All(scenario, Today.Of(clock), cancellation);
            if (parsed.GetValue(json))
                Console.Out.WriteLine(TravelJson.Text(scenario, answers, planned));
            else
                TravelText.Write(AnswerText.Console(), scenario, answers, planned,
                    DaysWithout(scenario, Today.Of(clock), planned, cancellation));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    /// <summary>The days of each build that misses a battery which a journey leaves behind.</summary>
    private static IReadOnlyList<RigAnswer> DaysWithout(
        Scenario scenario, DateOnly today, IReadOnlyList<PlannedJourney> planned, CancellationToken cancellation) =>
        JourneySentences.Verdict(planned) != Verdict.Fails || scenario.Days.Count == 0 ? []
        : [.. scenario.Builds.Keys.Select(build => RigAnswer.Of(scenario, build, [],
            AnswerOptions.EndOnly with { Today = today }, cancellation: cancellation)).Where(answer => answer.Staying.Count > 0)];

    private static IReadOnlyList<(string Name, TravelAnswer Answer)> Answers(Scenario scenario, string? journey, DateOnly today,
        CancellationToken cancellation)
    {
        if (journey is null && scenario.Journeys.Count == 0)
            return [("", ScenarioTravel.PlainFlight(scenario, today, cancellation))];
        if (journey is not null && !scenario.Journeys.ContainsKey(journey))
        {
            throw new ScenarioProblemsException([new Diagnostic(
                Severity.Error, "", TextPlace.None, "--journey", $"The scenario has no journey \"{journey}\".",
                scenario.Journeys.Count == 0 ? "no name: the file plans no journey" : string.Join(", ", scenario.Journeys.Keys),
                NearestName.To(journey, scenario.Journeys.Keys))]);
        }
        return [.. scenario.Journeys.Keys.Where(name => journey is null || name == journey)
            .Select(name => (name, ScenarioTravel.Answer(scenario, name, today, cancellation)))];
    }
}
