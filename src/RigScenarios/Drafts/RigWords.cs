using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>Says in plain words what is known of a rig so far.</summary>
internal static class RigWords
{
    /// <summary>Where nothing can be run yet: what is needed next.</summary>
    public static string NothingYet(IReadOnlyList<MissingField> missing, IReadOnlyList<Diagnostic> problems, RigFrame frame)
    {
        var devices = frame.InBuild("devices");
        var next = missing.Where(field => field.Path == devices
            || field.Path.StartsWith(frame.InBuild("battery"), StringComparison.Ordinal))
            .Select(field => field.Path == devices ? "a camera body" : "a battery").ToList();
        return next.Count > 0 ? $"Choose {string.Join(" and ", next)}: the answer begins there."
            : missing.Count > 0 ? $"Still needed: {string.Join(", ", missing.Select(field => field.Label))}."
            : problems.FirstOrDefault(problem => problem.Severity == Severity.Error)?.Problem
                ?? "Nothing on the rig draws from the battery yet.";
    }

    /// <summary>Where something on the rig must not be run.</summary>
    public static string WrongSoFar(IEnumerable<Diagnostic> problems) =>
        $"No answer until this is put right: {problems.First(problem => problem.Severity == Severity.Error).Problem}";

    /// <summary>The answer with what it still leaves out.</summary>
    public static string Answer(RigAnswer answer, IReadOnlyList<string> leftOut, bool noBlocks, bool noAir)
    {
        var air = noAir ? " Taken at 20 °C until you say how cold it is." : "";
        var without = leftOut.Count > 0 ? $" Not counted yet: {string.Join(", ", leftOut)}." : "";
        if (!noBlocks)
            return $"{AnswerSentences.Headline(answer)}{air}{without}";
        var lasts = $"{(answer.Reserve.IsLowerBound ? "more than " : "")}{AnswerTimes.Length(answer.Simulation.Runtime)}";
        return $"Recording without a stop it lasts {lasts}. Choose a day, and the answer will be for that day.{air}{without}";
    }

    /// <summary>What the makers' labels must still say.</summary>
    public static IEnumerable<string> Cautions(Scenario scenario, Build build)
    {
        var parts = build.Things.Select(scenario.PartOf).OfType<Parts.Part>().Distinct().ToList();
        var unknown = build.Devices.Keys.Select(scenario.PartOf).OfType<Parts.Part>().Where(part => part.Voltage?.Maximum is null)
            .Select(part => part.Name).ToList();
        if (unknown.Count > 0)
            yield return $"The greatest voltage that {string.Join(", ", unknown)} can take is not given, so a wrong voltage "
                + "would not be found. Read it on the label before you plug anything in.";
        var assumed = parts.Where(part => part.Assumed.Contains("voltage.maximum")
            || part.Assumed.Contains("regulator.input-maximum")).Select(part => part.Name).ToList();
        if (assumed.Count > 0)
            yield return $"The greatest voltage of {string.Join(", ", assumed)} was assumed, not read. Compare it with the "
                + "label or the maker's sheet before you plug anything in.";
    }
}
