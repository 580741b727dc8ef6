using RigScenarios.Answers;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Lines;
using RigScenarios.Wiring;
using UnitsNet.Units;

namespace RigScenarios.Charts.Wiring;

/// <summary>The voltage at each device over the days, with the lowest of each marked and the least that it takes.</summary>
public static class VoltageChart
{
    /// <summary>The chart: one panel for what hangs on the battery, one for each regulator's outlet that feeds devices.</summary>
    /// <param name="answer">An answer with its series.</param>
    /// <param name="title">What the chart answers; null for a plain one.</param>
    /// <exception cref="ArgumentException">Nothing could be delivered at any moment, so that there is nothing to draw, or the
    /// answer has no series.</exception>
    public static Figure Of(RigAnswer answer, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var view = new WiringView(answer);
        if (view.Moments.Count == 0)
            throw new ArgumentException("Nothing could be delivered at any moment, so there is no voltage to draw.",
                nameof(answer));
        var time = new TimeOfDays(answer);
        var groups = answer.Powered.Devices.Keys.GroupBy(device => Source(answer, device))
            .OrderBy(group => group.Key is null ? 0 : 1).ToList();
        return new LineChart
        {
            Slug = "voltage-at-each-device",
            Title = title ?? "Voltage at each device",
            Caption = $"{LowestWords(view)} {time.Key}",
            Cautions = ["Steady voltages: starts and motor peaks dip below these for moments; the table of limits counts them."],
            X = time.Axis,
            Blocks = time.Blocks,
            Panels = [.. groups.Select(group => Panel(view, time, group.Key, [.. group]))],
        }.ToFigure();
    }

    private static ChartPanel Panel(WiringView view, TimeOfDays time, string? source, IReadOnlyList<string> devices)
    {
        var axis = ChartAxis.Of(source is null ? "voltage at the inlets" : $"voltage behind the {WiringView.NameOf(source)}",
            ElectricPotentialUnit.Volt);
        var hours = view.Moments.Select(moment => time.Hour(moment.Point.Time)).ToList();
        var lines = new List<ChartLine>();
        if (source is null)
            lines.Add(new ChartLine("battery", hours, [.. view.Moments.Select(moment => moment.At.Terminals.Volts)]));
        foreach (var device in devices)
        {
            var volts = view.Moments.Select(moment => moment.At.Elements[device].Inlet is { Volts: > 0 } inlet
                ? inlet.Volts : double.NaN);
            lines.Add(new ChartLine(WiringView.NameOf(device), hours,
                [.. volts]) { EndCause = view.StopsItself(device) ? "stops" : null });
        }
        var lowest = devices.Select(view.LowestOf).Where(point => point is not null).Select(point => point!.Value).ToList();
        if (lowest.Count > 0)
        {
            lines.Add(new ChartLine("lowest of each", [.. lowest.Select(point => time.Hour(point.At))],
                [.. lowest.Select(point => point.Inlet.Volts)])
            {
                Kind = LineKind.Points,
            });
        }
        // Only limits that are near: others would stretch the axis until nothing is seen.
        var limits = devices.Select(device => (Name: WiringView.NameOf(device),
            Least: view.Answer.Powered.Devices[device].Voltage?.Minimum, Low: view.LowestOf(device)?.Inlet))
            .Where(limit => limit is { Least: { } least, Low: { } low } && low.Volts < 1.25 * least.Volts)
                .GroupBy(limit => limit.Least!.Value.Volts)
            .Select(group => new LimitLine($"least for {string.Join(", ", group.Select(limit => limit.Name))}, "
                + $"{TradeUnits.Text(group.First().Least!.Value)}", group.Key));
        return new ChartPanel(axis, lines) { Limits = [.. limits] };
    }

    private static string? Source(RigAnswer answer, string device)
    {
        var elements = answer.Simulation.Network.Elements.ToDictionary(element => element.Name, StringComparer.Ordinal);
        for (var at = elements[device].FedBy; at is not null; at = elements[at].FedBy)
        {
            if (elements[at] is Regulator)
                return at;
        }
        return null;
    }

    private static string LowestWords(WiringView view)
    {
        var words = view.Answer.Powered.Devices.Select(device => (Name: WiringView.NameOf(device.Key),
            device.Value.Voltage?.Minimum, Lowest: view.LowestOf(device.Key)))
            .Where(item => item.Lowest is not null)
            .Select(item => $"{item.Name} {TradeUnits.Text(item.Lowest!.Value.Inlet)} {view.Times.When(item.Lowest.Value.At)}"
                + (item.Minimum is { } least ? $" (takes no less than {TradeUnits.Text(least)})" : ""));
        return $"Lowest: {string.Join("; ", words)}.";
    }
}
