using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The sheet of the day as a table: what happens, in the order of its begin.</summary>
internal static class DayTable
{
    private const string Since = "since midnight of the first day";

    private static readonly SheetColumn[] Columns =
    [
        new("day"), new("from"), new("to"), new("from", "h", Since), new("to", "h", Since), new("what"), new("name"),
        new("details"), new("charge at the begin", "%"), new("charge at the end", "%"), new("charge that comes off", "%"),
        new("charge that goes on", "%"),
    ];

    public static SheetTable Of(RigAnswer answer)
    {
        var times = new AnswerTimes(answer.Plan.Days);
        return new(Columns, [.. Blocks(answer, times).Concat(Swaps(answer)).Concat(Stops(answer))
            .Concat(PowerSections.Charges(answer).Select(charge => new Happening(charge.Span.Start, charge.Span.End, "charging",
                charge.Battery, "") { Begin = charge.Span.ChargeAtStart, End = charge.Span.ChargeAtEnd }))
            .OrderBy(happening => happening.From.Seconds).Select(happening => Row(happening, times, answer.Plan.Days.Count))]);
    }

    private sealed record Happening(Duration From, Duration? To, string What, string Name, string Details)
    {
        public Ratio? Begin { get; init; }

        public Ratio? End { get; init; }

        public Ratio? Off { get; init; }

        public Ratio? On { get; init; }
    }

    private static IEnumerable<Happening> Blocks(RigAnswer answer, AnswerTimes times)
    {
        foreach (var (i, day) in answer.Plan.Days.Index())
        {
            var begin = times.Start(i);
            foreach (var (name, block) in day.Blocks)
            {
                yield return new(begin, begin + block.Length, "block", block.Title ?? name,
                    GivenSections.States(answer.TheBuild, block));
                begin += block.Length;
            }
        }
    }

    private static IEnumerable<Happening> Swaps(RigAnswer answer) => answer.Simulation.Swaps.Select(swap =>
        new Happening(swap.Time, null, "swap", swap.On,
            $"{(swap.Off is { } off ? $"{off} comes off" : "nothing comes off")}{(swap.Forced ? "; the rig had stopped" : "")}")
        {
            Off = swap.ChargeOff, On = swap.ChargeOn,
        });

    private static IEnumerable<Happening> Stops(RigAnswer answer) => answer.Simulation.DownTimes
        .Where(down => !down.IsPlanned).Select(down => new Happening(down.Start, down.End, "without", down.Device,
            PowerSections.Reason(answer, down)));

    private static IReadOnlyList<SheetCell> Row(Happening happening, AnswerTimes times, int days)
    {
        var day = Enumerable.Range(0, days).Last(i => i == 0 || times.Start(i) - Duration.FromSeconds(1) <= happening.From);
        return
        [
            SheetCell.Of(day + 1m), SheetCell.Of(times.At(happening.From)),
            SheetCell.Of(happening.To is { } end ? times.At(end) : null), SheetCell.Of(happening.From.Hours),
            SheetCell.Of(happening.To?.Hours), SheetCell.Of(happening.What), SheetCell.Of(happening.Name),
            SheetCell.Of(happening.Details), SheetCell.Of(happening.Begin?.Percent), SheetCell.Of(happening.End?.Percent),
            SheetCell.Of(happening.Off?.Percent), SheetCell.Of(happening.On?.Percent),
        ];
    }
}
