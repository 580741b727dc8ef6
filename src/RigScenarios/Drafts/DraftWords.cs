using RigScenarios.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>Says in plain words what is known of a draft so far.</summary>
internal static class DraftWords
{
    /// <summary>Where nothing can be run yet: what is needed next.</summary>
    public static string NothingYet(IReadOnlyList<string> missing, IReadOnlyList<Diagnostic> problems)
    {
        var next = missing.Where(key => key is "camera" or "battery")
            .Select(key => key == "camera" ? "a camera body" : "a battery").ToList();
        return next.Count > 0
            ? $"Choose {string.Join(" and ", next)}: the answer begins there."
            : problems.FirstOrDefault(problem => problem.Severity == Severity.Error)?.Problem
                ?? "Nothing on the rig draws from the battery yet.";
    }

    /// <summary>Where something on the rig must not be run.</summary>
    public static string WrongSoFar(IReadOnlyList<Diagnostic> problems)
    {
        var first = problems.First(problem => problem.Severity == Severity.Error).Problem;
        return $"No answer until this is put right: {first}";
    }

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
    public static IEnumerable<string> Cautions(DraftRig rig)
    {
        var unknown = rig.Devices.Where(device => device.Part.Voltage?.Maximum is null)
            .Select(device => device.Part.Name).ToList();
        if (unknown.Count > 0)
            yield return $"The greatest voltage that {string.Join(", ", unknown)} can take is not given, so a wrong voltage "
                + "would not be found. Read it on the label before you plug anything in.";
        var assumed = rig.Things.Where(thing => thing.Part.Assumed.Contains("voltage.maximum")
            || thing.Part.Assumed.Contains("regulator.input-maximum")).Select(thing => thing.Part.Name).ToList();
        if (assumed.Count > 0)
            yield return $"The greatest voltage of {string.Join(", ", assumed)} was assumed, not read. Compare it with the "
                + "label or the maker's sheet before you plug anything in.";
    }
}
