using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words how the days of a plan went.</summary>
public static class DayPlanWords
{
    /// <summary>A time from midnight of the first day as people say it: <c>14:05</c>, with several days <c>day 2,
    /// 14:05</c>.</summary>
    public static string Clock(Duration time, int days)
    {
        // A time of 23:59:40 is told as 00:00, of the day after.
        var day = (long)Math.Floor((time.Hours / 24) + (0.5 / (24 * 60))) + 1;
        return days > 1 ? $"day {day}, {AnswerTimes.Clock(time)}" : AnswerTimes.Clock(time);
    }

    /// <summary>Where the days break first, as a clause; empty if they complete.</summary>
    public static string FirstBreak(SimulationResult result, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plan);
        var first = result.DownTimes.FirstOrDefault(down => !down.IsPlanned);
        if (first is null)
            return "";
        return $"{Clock(first.Start, result.Days.Count)}, in {DayMoments.Of(first, result, plan)}, "
            + $"{result.Devices[first.Device].Title} stops: "
            + AnswerSentences.Because(first.Reason);
    }

    /// <summary>The least kit in a sentence or two.</summary>
    /// <param name="least">What the search found.</param>
    /// <param name="wish">What was to be left over.</param>
    public static string Least(LeastKitResult least, KitWish wish)
    {
        ArgumentNullException.ThrowIfNull(least);
        ArgumentNullException.ThrowIfNull(wish);
        List<string> wishes = [];
        if (wish.LeastAtSwap is { } charge)
            wishes.Add($"each battery coming off with {charge.Percent:0.#} % or more");
        if (wish.TimeLeft is { } time)
            wishes.Add($"{AnswerTimes.Length(time)} left at the end");
        var wanted = wishes.Count > 0 ? $", {string.Join(" and ", wishes)}" : "";
        if (least.Least is not { } kit)
            return $"No kit from these batteries and bays lasts the days{wanted}: "
                + $"{(least.Tried.Count == 1 ? "the only one fails" : $"all {least.Tried.Count} fail")}.";
        var smaller = least.Tried.Count - 1;
        var proof = smaller switch { 0 => "There is no smaller one.", 1 => "The one smaller kit was tried and fails.",
            _ => $"The {smaller} kits tried before it, smaller or of the same size, all fail." };
        var bays = kit.BayCount switch { 0 => "no charger", 1 => "one bay", var count => $"{count} bays" };
        var batteries = kit.Batteries.Count == 1 ? "One battery" : $"{kit.Batteries.Count} batteries";
        return $"{batteries} ({string.Join(", ", kit.Batteries)}) and {bays} last the days{wanted}. {proof}";
    }

    /// <summary>What keeps a device down, in words: "planned swap", "drop-out", "nothing left", "waiting for charge".</summary>
    public static string CauseInWords(StopReason reason, StopKind? awaits)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return awaits is { } kind ? new StopReason(kind).ToString() : reason.Kind is StopKind.PlannedSwap or StopKind.NothingLeft
            or StopKind.WaitingForCharge ? reason.ToString() : "drop-out";
    }
}
