using System.Globalization;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using RigScenarios.Limits;

namespace RigScenarios.Answers.Fitted;

/// <summary>What a fit says, in sentences: the same in every face, changed here and nowhere else.</summary>
public static class FitSentences
{
    /// <summary>What the battery is: "Your battery holds 86 % of its label (80 to 92)." and how it resists, what the devices
    /// draw. The answer, first.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Battery(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Result.Estimates.Select(Estimate)];
    }

    /// <summary>A planned day: "Friday: it lasts until wrap at 17:40 with 12 min left, give or take 25 min: close."</summary>
    /// <param name="day">The day.</param>
    public static string Day(DayForecast day)
    {
        ArgumentNullException.ThrowIfNull(day);
        var chance = day.Chance.Percent;
        var likely = chance is > 2.5 and < 97.5
            ? string.Create(CultureInfo.InvariantCulture, $" {Likely(chance)}") : "";
        return $"{day.Title}: {AnswerSentences.Outcome(day.Answer)}, give or take {AnswerTimes.Length(day.Within)}: "
            + $"{day.Verdict.InWords()}.{likely}";
    }

    /// <summary>What that rests on: "Rests on 5 notes and 1 log of this battery. …"</summary>
    /// <param name="answer">The answer.</param>
    public static string RestsOn(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var forecast = answer.Nearest.Forecast;
        var battery = forecast.ShareOfBattery.Percent;
        return $"Rests on {Fits.Notes.FittedScenario.From(answer.Result)} of this battery. "
            + (battery > 50
                ? "Most of what is open is the battery and its loads: more notes and tests narrow it."
                : "Most of what is open is the day, for no two are alike: more notes hardly narrow it.");
    }

    /// <summary>What was measured against what the fitted battery does, one line a note.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Notes(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Result.Notes.Zip(answer.Result.Problem.Notes, Note)];
    }

    /// <summary>What was found of each log.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Logs(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Result.Logs.Select(log => Log(answer.Input.Readings[log.Log], log))];
    }

    /// <summary>Notes that were left out, and those that fit badly and were left in; never silently.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Misses(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return
        [
            .. answer.Result.Outliers.Select(miss => $"\"{miss.Note}\" is left out: {Missed(answer, miss)}. Was the battery "
                + "full, was it this one, did something else run?"),
            .. answer.Result.Doubtful.Select(miss => $"\"{miss.Note}\" is doubtful, but left in: {Missed(answer, miss)}."),
        ];
    }

    /// <summary>What the data cannot tell, and what would; what is far from what was expected; what scatters.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Open(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Open(answer.Result);
    }

    /// <summary>What the data cannot tell, and what would; what is far from what was expected; what scatters.</summary>
    internal static IReadOnlyList<string> Open(FitResult result)
    {
        return
        [
            .. result.Found ? [] : (string[])["The best values were not found: take these figures for a hint, and look for a "
                + "slip "
                + "in the notes."],
            .. result.Inseparable.Select(Pair),
            .. result.FarFromPrior.Select(unknown =>
                $"{AnswerSentences.Upper(Thing(unknown))} far from what label, parts and age "
                + "say. Is it the battery of the scenario, and are the parts' figures right?"),
            .. result.Inflation > 1 ? [Scatter(result.Inflation)] : (string[])[],
        ];
    }

    /// <summary>The test to make next, with what it gains.</summary>
    /// <param name="answer">The answer.</param>
    public static string Next(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Next.Best is not { } best || best.Gain.Minutes < 0.5)
            return $"Next test: none that would narrow \"{answer.Nearest.Title}\" by a minute.";
        return $"Next test: {Candidates.Words(best.Test)}. That would narrow \"{answer.Nearest.Title}\" by "
            + $"{AnswerTimes.Length(best.Gain)} either way.";
    }

    /// <summary>The cautions.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Cautions(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return
        [
            .. WornOut(answer.Result),
            "A test empties or loads the battery: stay with it, on a plate that does not burn, within the maker's limits of "
            + "current, voltage and temperature, and never bridge contacts to measure.",
            AnswerCautions.Predicted(answer.Nearest.Answer.Simulation.ExpectedError),
            AnswerCautions.Always,
        ];
    }

    /// <summary>What is said of a battery that has lost much.</summary>
    internal static IEnumerable<string> WornOut(FitResult result)
    {
        if (result[UnknownKind.Capacity].Value < Worn || result[UnknownKind.Resistance].Value > Resisting)
        {
            yield return "A battery that has lost so much can fail without notice. One that is swollen, dented, hot by itself "
                + "or was "
                + "recalled comes out of use: take it to be recycled by local rules.";
        }
    }

    // Common practice of those who retire batteries, no source.
    private const double Worn = 0.7;
    private const double Resisting = 2;

    private static string Scatter(double times) => string.Create(CultureInfo.InvariantCulture,
        $"The data scatter {times:0.0} times as much as they usually do; everything here is told that much wider.");

    private static string Likely(double chance) =>
        string.Create(CultureInfo.InvariantCulture,
            $"It lasts until wrap with a chance of about {Math.Round(chance / 5) * 5:0} %.");

    /// <summary>One unknown with its interval.</summary>
    internal static string Estimate(FitEstimate estimate) => estimate.Unknown.Kind switch
    {
        UnknownKind.Capacity => $"Your battery holds {Percent(estimate.Value)} % of its label ({Percent(estimate.Low)} to "
            + $"{Percent(estimate.High)}).",
        UnknownKind.Resistance => $"It resists {Times(estimate.Value)} times as much as a new one ({Times(estimate.Low)} to "
            + $"{Times(estimate.High)}).",
        UnknownKind.Load when estimate.Unknown.Of is { } device =>
            $"The {LimitSentences.Element(device)} draws {More(estimate)}.",
        UnknownKind.Load => $"Your devices together draw {More(estimate)}.",
        _ => string.Create(CultureInfo.InvariantCulture, $"The air was {Math.Abs(estimate.Value):0.0} °C "
            + $"{(estimate.Value < 0 ? "colder" : "warmer")} than noted ({estimate.Low:0.0} to {estimate.High:0.0}).")
            .Replace("-", "−", StringComparison.Ordinal),
    };

    private static string More(FitEstimate estimate)
    {
        var (low, high) = (100 * (estimate.Low - 1), 100 * (estimate.High - 1));
        var by = 100 * (estimate.Value - 1);
        var range = string.Create(CultureInfo.InvariantCulture, $"({low:0} to {high:0} %)").Replace("-", "−",
            StringComparison.Ordinal);
        return Math.Abs(by) < 0.5 ? $"what the parts say {range}"
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(by):0} % {(by < 0 ? "less" : "more")} than the parts say ")
                + range;
    }

    private static string Note(FittedNote fitted, FieldNote note)
    {
        var predicted = AnswerTimes.Length(fitted.Predicted);
        var words = note.Runtime is { } lasted
            ? $"lasted {AnswerTimes.Length(lasted)}, predicted {predicted} ({Off(lasted / fitted.Predicted)})"
            : $"still ran after {AnswerTimes.Length(note.StillRunning!.Value)}, predicted {predicted}";
        if (note.PercentShown is { } shown && fitted.PredictedCharge is { } charge)
            words += string.Create(CultureInfo.InvariantCulture, $"; showed {shown.Percent:0} %, predicted {charge.Percent:0} %");
        return $"{note.Id}: {words}{(fitted.LeftOut ? "; left out" : "")}.";
    }

    private static string Off(double ratio)
    {
        var percent = 100 * (ratio - 1);
        return Math.Abs(percent) < 0.5 ? "as predicted" : string.Create(CultureInfo.InvariantCulture,
            $"{Math.Abs(percent):0} % {(percent < 0 ? "shorter" : "longer")}");
    }

    /// <summary>What was found of a log, and what was done to it.</summary>
    internal static string Log(LogReading reading, FittedLog log)
    {
        var counts = reading.Counts;
        List<string> done =
        [
            .. Count(counts.Dropped, "row without a number left out", "rows without a number left out"),
            .. Count(counts.Resets, "restart of its clock", "restarts of its clock"),
            .. Count(counts.Duplicates, "row of the same time", "rows of the same time"),
            .. Count(reading.Rows.Gaps, "gap", "gaps"),
            .. counts.Flipped ? ["its current taken with the other sign"] : (string[])[],
            .. reading.Parts.Count > 1 ? ["what follows a charge left out"] : (string[])[],
        ];
        var off = Math.Sqrt(log.BlockMisses.Select(miss => miss * miss).DefaultIfEmpty(0).Average());
        var length = AnswerTimes.Length(UnitsNet.Duration.FromSeconds(reading.Rows.LengthSeconds));
        return string.Create(CultureInfo.InvariantCulture, $"{log.Log}: {reading.Rows.Count} rows of {length} count as "
            + $"{log.Blocks} voltages that are independent of each other; they miss the prediction by {off:0.0} times what is "
            + $"usual")
            + (done.Count > 0 ? $"; {string.Join(", ", done)}." : ".");
    }

    private static IEnumerable<string> Count(int count, string one, string several)
    {
        if (count > 0)
            yield return $"{count} {(count == 1 ? one : several)}";
    }

    private static string Missed(FittedAnswer answer, NoteMiss miss)
    {
        var note = answer.Result.Problem.Notes.First(note => note.Id == miss.Note);
        var did = (note.Runtime is not null, miss.Deleted < 0) switch
        {
            (true, true) => "lasted shorter",
            (true, false) => "lasted longer",
            (false, true) => "showed less",
            _ => "showed more",
        };
        return string.Create(CultureInfo.InvariantCulture,
            $"it {did} than all others together say, by {Math.Abs(miss.Deleted):0.0} times what is usual");
    }

    private static string Pair(InseparablePair pair) => $"Either {Side(pair.First, pair.FirstIsMore)} or "
        + $"{Side(pair.Second, pair.SecondIsMore)}: the data fix only the two together, and both intervals rest on what was "
            + "assumed "
        + $"before. {WouldTell(pair)}";

    private static string WouldTell(InseparablePair pair)
    {
        FitUnknown[] both = [pair.First, pair.Second];
        var load = both.Where(unknown => unknown.Kind == UnknownKind.Load).ToList();
        var isCapacity = both.Any(unknown => unknown.Kind == UnknownKind.Capacity);
        if (load is [{ Of: null }] && isCapacity)
            return "A meter on the cable, a capacity test or a load that is known would tell; another run at another load "
                + "would not, "
                + "for one scale stands for all devices.";
        if (load.Count > 0)
            return $"A meter on the {string.Join(" or the ", load.Select(unknown => unknown.Of is { } device
                ? LimitSentences.Element(device) : "cable"))} would tell.";
        return both.Any(unknown => unknown.Kind == UnknownKind.AmbientOffset)
            ? "A thermometer beside the battery, or a run in a room whose temperature is known, would tell."
            : "A capacity test, a pulse test or a run on a much heavier load would tell.";
    }

    private static string Side(FitUnknown unknown, bool isMore) => unknown.Kind switch
    {
        UnknownKind.Capacity => $"the battery holds {(isMore ? "more" : "less")}",
        UnknownKind.Resistance => $"it resists {(isMore ? "more" : "less")}",
        UnknownKind.Load => unknown.Of is { } device
            ? $"the {LimitSentences.Element(device)} draws {(isMore ? "more" : "less")}"
            : $"the devices draw {(isMore ? "more" : "less")}",
        _ => $"the air was {(isMore ? "warmer" : "colder")}",
    };

    private static string Thing(FitUnknown unknown) => unknown.Kind switch
    {
        UnknownKind.Capacity => "what the battery holds is",
        UnknownKind.Resistance => "what it resists is",
        UnknownKind.Load => unknown.Of is { } device ? $"the draw of the {LimitSentences.Element(device)} is" : "the draws are",
        _ => "the air is",
    };

    private static string Percent(double value) => (100 * value).ToString("0", CultureInfo.InvariantCulture);

    private static string Times(double value) => value.ToString(value < 10 ? "0.0#" : "0", CultureInfo.InvariantCulture);
}
