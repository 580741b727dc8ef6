using RigScenarios.Answers;
using RigScenarios.Charts.Lines;
using RigScenarios.Wiring;
using UnitsNet.Units;

namespace RigScenarios.Charts.Wiring;

/// <summary>The voltage at each device over the day, with the lowest of each marked and the least that it takes.</summary>
public static class VoltageChart
{
    /// <summary>The chart: one panel for what hangs on the battery, one for each regulator's outlet that feeds devices.</summary>
    /// <param name="wiring">A day's wiring.</param>
    /// <param name="title">What the chart answers; null for a plain one.</param>
    /// <exception cref="ArgumentException">Nothing could be delivered at any moment, so that there is nothing to draw.</exception>
    public static Figure Of(WiringOfDay wiring, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        if (wiring.Moments.Count == 0)
            throw new ArgumentException("Nothing could be delivered at any moment of the day, so there is no voltage to draw.", nameof(wiring));
        var first = wiring.Day.Starts?.ToTimeSpan().TotalHours ?? 0;
        var groups = wiring.Powered.Devices.Keys.GroupBy(device => Source(wiring, device)).OrderBy(group => group.Key is null ? 0 : 1).ToList();
        var panels = groups.Select(group => Panel(wiring, group.Key, [.. group], first)).ToList();
        var start = 0.0;
        var blocks = new List<ChartBlock>();
        foreach (var (number, block) in wiring.Day.Blocks.Values.Index())
        {
            blocks.Add(new ChartBlock(Rounding.Text(number + 1, 6), first + start, first + start + block.Length.Hours));
            start += block.Length.Hours;
        }
        return new LineChart
        {
            Slug = "voltage-at-each-device",
            Title = title ?? "Voltage at each device",
            Caption = $"{LowestWords(wiring)} The numbers along the top are the blocks of the day: {string.Join(", ", wiring.Day.Blocks.Index().Select(block => $"({block.Index + 1})\u00a0{block.Item.Value.Title ?? block.Item.Key}"))}.",
            Cautions = ["Steady voltages: starts and motor peaks dip below these for moments; the table of limits counts them."],
            X = wiring.Day.Starts is null ? new ChartAxis("time from the start of the day", "h") : ChartAxis.ClockTime(),
            Blocks = blocks,
            Panels = panels,
        }.ToFigure();
    }

    private static ChartPanel Panel(WiringOfDay wiring, string? source, IReadOnlyList<string> devices, double first)
    {
        var axis = ChartAxis.Of(source is null ? "voltage at the inlets" : $"voltage behind the {wiring.NameOf(source)}", ElectricPotentialUnit.Volt);
        var hours = wiring.Moments.Select(moment => first + moment.At.Hours).ToList();
        var lines = new List<ChartLine>();
        if (source is null)
            lines.Add(new ChartLine("battery", hours, [.. wiring.Moments.Select(moment => moment.Point.Terminals.Volts)]));
        foreach (var device in devices)
        {
            var stop = wiring.Run.Devices[device];
            lines.Add(new ChartLine(wiring.NameOf(device), hours, [.. wiring.Moments.Select(moment => moment.Point.Elements[device].Inlet is { Volts: > 0 } inlet ? inlet.Volts : double.NaN)])
            {
                EndCause = stop.Because is { } cause ? cause == device ? "drops out" : $"{wiring.NameOf(cause)} stops" : null,
            });
        }
        var lowest = devices.Select(wiring.LowestOf).Where(point => point is not null).Select(point => point!.Value).ToList();
        if (lowest.Count > 0)
            lines.Add(new ChartLine("lowest of each", [.. lowest.Select(point => first + point.At.Hours)], [.. lowest.Select(point => point.Inlet.Volts)]) { Kind = LineKind.Points });
        // Only limits that are near: others would stretch the axis until nothing is seen.
        var limits = devices.Select(device => (Name: wiring.NameOf(device), wiring.Powered.Devices[device].Voltage?.Minimum, wiring.LowestOf(device)?.Inlet))
            .Where(limit => limit is { Minimum: { } least, Inlet: { } low } && low.Volts < 1.25 * least.Volts)
            .GroupBy(limit => limit.Minimum!.Value.Volts).Select(group => new LimitLine($"least for {string.Join(", ", group.Select(limit => limit.Name))}, {TradeUnits.Text(group.First().Minimum!.Value)}", group.Key)).ToList();
        return new ChartPanel(axis, lines) { Limits = limits };
    }

    private static string? Source(WiringOfDay wiring, string device)
    {
        var elements = wiring.Network.Elements.ToDictionary(element => element.Name, StringComparer.Ordinal);
        for (var at = elements[device].FedBy; at is not null; at = elements[at].FedBy)
        {
            if (elements[at] is Regulator)
                return at;
        }
        return null;
    }

    private static string LowestWords(WiringOfDay wiring)
    {
        var words = wiring.Powered.Devices.Select(device => (Name: wiring.NameOf(device.Key), device.Value.Voltage?.Minimum, Lowest: wiring.LowestOf(device.Key))).Where(item => item.Lowest is not null)
            .Select(item => $"{item.Name} {TradeUnits.Text(item.Lowest!.Value.Inlet)} at {WiringWords.Clock(wiring, item.Lowest.Value.At)}{(item.Minimum is { } least ? $" (takes no less than {TradeUnits.Text(least)})" : "")}");
        return $"Lowest: {string.Join("; ", words)}.";
    }
}
