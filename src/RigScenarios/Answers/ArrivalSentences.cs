using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What the batteries that stay behind cost the days, in words.</summary>
public static class ArrivalSentences
{
    /// <summary>What does not get to the days and what that costs, two sentences; null where everything arrives.</summary>
    /// <param name="answer">The answer, of what arrives.</param>
    /// <param name="everything">The same with <see cref="AnswerOptions.EverythingArrives"/>.</param>
    public static string? Cost(RigAnswer answer, RigAnswer everything)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(everything);
        if (Without(answer) is not { } missing)
            return null;
        if (answer.NothingArrives)
            return $"{AnswerSentences.Upper(NothingArrives(answer))}.";
        var less = everything.Reserve.Time - answer.Reserve.Time;
        var cost = everything.Simulation.Completes && answer.Simulation.Completes && Math.Abs(less.Minutes) >= 1
            ? $", {AnswerTimes.Length(less)} less" : "";
        return $"With {missing}: {AnswerSentences.Lasts(everything)}. "
            + $"Without {(answer.Staying.Count == 1 ? "it" : "them")}: {AnswerSentences.Outcome(answer)}{cost}{Down(answer)}.";
    }

    /// <summary>How long an essential device is down in all, planned swaps aside; empty where none is.</summary>
    private static string Down(RigAnswer answer)
    {
        var down = answer.Simulation.DownTimes.Where(down => !down.IsPlanned).GroupBy(down => down.Device)
            .Select(device => device.Sum(down => (down.End - down.Start).Seconds)).DefaultIfEmpty().Max();
        return down < 60 ? "" : $"; in all it is down for {AnswerTimes.Length(Duration.FromSeconds(down))}";
    }

    /// <summary>"the Brick 190 Wh", "the Brick 190 Wh and 2 × Brick 98 Wh"; null where everything arrives, or nothing.</summary>
    internal static string? Without(RigAnswer answer) => answer.Staying.Count == 0 ? null
        : string.Join(" and ", answer.Staying.GroupBy(battery => battery.Title)
            .Select(same => same.Count() == 1 ? $"the {same.Key}" : $"{same.Count()} × {same.Key}"));

    /// <summary>Why the rig stops, before the words of when; empty where everything arrives, or nothing.</summary>
    internal static string Cause(RigAnswer answer) => answer.NothingArrives || Without(answer) is not { } missing ? ""
        : $"{missing} {(answer.Staying.Count == 1 ? "stays" : "stay")} behind, and without "
            + $"{(answer.Staying.Count == 1 ? "it" : "them")} ";

    /// <summary>"no battery gets there: the Brick 190 Wh stays behind on "The flight out"".</summary>
    internal static string NothingArrives(RigAnswer answer) =>
        $"no battery gets there: {Without(answer)} {(answer.Staying.Count == 1 ? "stays" : "stay")} behind on "
        + string.Join(", ", answer.Staying.Select(battery => $"\"{battery.Journey}\"").Distinct());
}
