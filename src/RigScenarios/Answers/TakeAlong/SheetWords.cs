using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>Short words that several sheets share.</summary>
internal static class SheetWords
{
    /// <summary>The build's name for people.</summary>
    public static string Build(RigAnswer answer) => answer.TheBuild.Title ?? answer.Build;

    /// <summary>A line for each question; what the headline has told already is not told twice.</summary>
    public static IReadOnlyList<QuestionLine> Questions(RigAnswer answer)
    {
        var headline = AnswerSentences.Headline(answer);
        // What it costs is the shopping list's; on a sheet for the crew it stands only where it decides something.
        return [.. AnswerSentences.Questions(answer)
            .Where(line => line is not { Kind: QuestionKind.Cost, Verdict: Verdict.Holds }).Select(line =>
            headline.Contains(line.Words.TrimEnd('.'), StringComparison.OrdinalIgnoreCase) ? line with { Words = "As above." }
            : line)];
    }

    /// <summary>How much of it nobody gave.</summary>
    public static string Foot(RigAnswer answer) => answer.Assumed.Count == 0
        ? "Every figure that this rests on was given."
        : $"This rests on {answer.Assumed.Count} figures that nobody gave and that are assumed: rigscenarios run tells those "
            + "that matter most.";

    /// <summary>"The crossing: call time 07:00, wrap 17:30, air 1 to 8 °C."</summary>
    public static IReadOnlyList<string> Days(RigAnswer answer)
    {
        var times = new AnswerTimes(answer.Plan.Days);
        return [.. answer.Plan.Days.Select((day, i) =>
        {
            var number = answer.Plan.Days.Count > 1 ? $"Day {i + 1}, " : "";
            var clock = day.Starts is null ? AnswerTimes.Length(day.Length)
                : $"call time {DayPlanWords.Clock(times.Start(i), 1)}, wrap {DayPlanWords.Clock(times.Wrap(i), 1)}";
            return $"{number}{day.Title ?? answer.Days[i]}: {clock}, {Air(day, answer.Plan.Ambient)}.";
        })];
    }

    /// <summary>"11:31 to 12:14 on day 2", "22:10 on day 1 to 00:20 on day 2".</summary>
    public static string Span(AnswerTimes times, Duration from, Duration to)
    {
        var (start, end) = (times.At(from), times.At(to));
        var day = end.IndexOf(" on day ", StringComparison.Ordinal);
        return day > 0 && start.EndsWith(end[day..], StringComparison.Ordinal)
            ? $"{start[..^(end.Length - day)]} to {end}" : $"{start} to {end}";
    }

    /// <summary>A thing of the kit as people write it.</summary>
    public static string Thing(string name) => LimitSentences.Element(name);

    /// <summary>Whole percent.</summary>
    public static string Percent(Ratio share) => $"{share.Percent:0} %";

    /// <summary>A way in whole millimetres; below zero with a minus.</summary>
    public static string Millimetres(Length? way) => Math.Round((way ?? Length.Zero).Millimeters) is var rounded && rounded == 0
        ? "0" : $"{rounded:0}";

    /// <summary>What a state is called in a list of devices.</summary>
    public static string State(PowerState state) => state switch
    {
        PowerState.Record => "recording",
        PowerState.Standby => "standby",
        _ => "off",
    };

    private static string Air(ShootingDay day, Temperature otherwise)
    {
        var air = day.AmbientPoints.Select(point => point.Temperature.DegreesCelsius)
            .DefaultIfEmpty((day.Ambient ?? otherwise).DegreesCelsius).ToList();
        return air.Min() < air.Max() ? $"air {air.Min():0.#} to {air.Max():0.#} °C" : $"air {air[0]:0.#} °C";
    }
}
