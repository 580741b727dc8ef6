using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>What is done with the batteries and when: swaps, times without an essential device, charging.</summary>
internal static class PowerSections
{
    public static IEnumerable<SheetSection> Of(RigAnswer answer)
    {
        var times = new AnswerTimes(answer.Plan.Days);
        yield return Swaps(answer, times);
        if (Stops(answer, times) is { Rows.Count: > 0 } stops)
            yield return stops;
        if (answer.Plan.Chargers.Values.Any(charger => charger.Bays > 0))
            yield return Charging(answer, times);
    }

    private static SheetSection Swaps(RigAnswer answer, AnswerTimes times)
    {
        var swaps = answer.Simulation.Swaps;
        if (swaps.Count == 0)
            return new("Swaps", SheetForm.Sentences, [["No battery is swapped."], .. Batteries(answer)]);
        return new("Swaps", SheetForm.Table,
            [.. swaps.Select(swap => new[]
            {
                times.At(swap.Time), times.Title(swap.Day, swap.Block) + (swap.Forced ? " (the rig had stopped)" : ""),
                swap.Off is { } off ? $"{SheetWords.Thing(off)}, {SheetWords.Percent(swap.ChargeOff ?? Ratio.Zero)}" : "none",
                $"{SheetWords.Thing(swap.On)}, {SheetWords.Percent(swap.ChargeOn)}",
            })])
        {
            Columns = ["When", "In", "Comes off", "Goes on"],
            Note = answer.Balance is { } balance && BalanceWords.BeforeSwap(balance) is { } before
                ? $"At every swap: {before}" : "",
            GoesAs = 5, Keeps = 6, Things = "swaps",
        };
    }

    private static IEnumerable<IReadOnlyList<string>> Batteries(RigAnswer answer) => answer.EachDayBeginsAnew
        ? [["No charger is planned: every day is to begin with charged batteries."]] : [];

    private static SheetSection Stops(RigAnswer answer, AnswerTimes times) => new("Times without an essential device",
        SheetForm.Table, [.. answer.Simulation.DownTimes.Where(down => !down.IsPlanned).Select(down => new[]
        {
            SheetWords.Span(times, down.Start, down.End), answer.Simulation.Devices[down.Device].Title,
            Reason(answer, down),
        })])
    {
        Columns = ["When", "Without", "Reason"], GoesAs = 4, Keeps = 2, Things = "times without a device",
    };

    /// <summary>Why a device is down, and what it waits for.</summary>
    internal static string Reason(RigAnswer answer, DownTime down) => AnswerSentences.Because(answer, down.Reason)
        + (down.Awaits is { } awaits ? $"; {AnswerSentences.Because(new(awaits))}" : "");

    /// <summary>Each stretch of charging, with its battery's name in the kit.</summary>
    internal static IEnumerable<(string Battery, BatterySpan Span)> Charges(RigAnswer answer) =>
        answer.Simulation.Batteries.SelectMany(battery => Charges(battery.Value).Select(span => (battery.Key, span)));

    private static SheetSection Charging(RigAnswer answer, AnswerTimes times)
    {
        var rows = Charges(answer).OrderBy(charge => charge.Span.Start.Seconds).Select(charge => new[]
        {
            SheetWords.Thing(charge.Battery), SheetWords.Span(times, charge.Span.Start, charge.Span.End),
            $"{charge.Span.ChargeAtStart.Percent:0} to {SheetWords.Percent(charge.Span.ChargeAtEnd)}",
        }).ToList();
        return new("Charging", rows.Count == 0 ? SheetForm.Sentences : SheetForm.Table,
            rows.Count == 0 ? [["No battery is charged."]] : [.. rows])
        {
            Columns = rows.Count == 0 ? [] : ["Battery", "When", "Charge"],
            Note = string.Join(" ", ChargerWords.Given(answer.Plan)),
            GoesAs = 3, Keeps = 4, Things = "times of charging",
        };
    }

    // One stretch may be kept in pieces that follow each other.
    private static IEnumerable<BatterySpan> Charges(BatteryTimeline battery)
    {
        BatterySpan? last = null;
        foreach (var span in battery.Spans.Where(span => span.Place == BatteryPlace.Charging))
        {
            if (last is not null && Math.Abs((span.Start - last.End).Seconds) < 1)
            {
                last = last with { End = span.End, ChargeAtEnd = span.ChargeAtEnd };
                continue;
            }
            if (last is not null)
                yield return last;
            last = span;
        }
        if (last is not null)
            yield return last;
    }
}
