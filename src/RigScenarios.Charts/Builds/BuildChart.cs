using RigScenarios.Builds;
using RigScenarios.Charts.Bars;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Builds;

/// <summary>A build as a picture: what each of its devices draws when everything records.</summary>
public static class BuildChart
{
    /// <summary>The figure: a bar for each device, from the draw on standby to the draw in record where both are known.</summary>
    /// <param name="build">A build with its parts; at least one device whose draw in record or on standby is known.</param>
    /// <param name="title">What the chart answers; null names the build.</param>
    /// <exception cref="ArgumentException">No draw of any device is known.</exception>
    public static Figure Of(PoweredBuild build, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(build);
        var axis = ChartAxis.Of("power drawn at the device", PowerUnit.Watt) with { FromZero = true };
        var known = build.Devices.Values.Where(device => (device.Draw.Record ?? device.Draw.Standby) is not null).ToList();
        if (known.Count == 0)
            throw new ArgumentException("No draw of any device of this build is known.", nameof(build));
        var bars = known.Select((device, i) => new ChartBar(Name(device, i, known), Watts(device))
        {
            Note = Note(device),
        });
        var sum = Power.FromWatts(known.Sum(Watts));
        return new BarChart
        {
            Slug = "build-power",
            Title = title ?? $"What draws how much: {build.Build.Title ?? "this build"}",
            Caption = $"All in record together: {TradeUnits.Text(sum)} at the devices. The battery gives more, because "
                + "regulators and the plate take their part. "
                + $"It is {build.Battery.Name}"
                + $"{(build.Battery.Battery is { } battery ? $", {TradeUnits.Text(battery.Energy)} on its label" : "")}.",
            Value = axis,
            Bars = [.. bars.OrderByDescending(bar => bar.To)],
        }.ToFigure();
    }

    private static double Watts(PoweredDevice device) =>
        (double)(device.Count * (device.Draw.Record ?? device.Draw.Standby)!.Value).As(PowerUnit.Watt);

    private static string Note(PoweredDevice device) => (device.Draw.Record, device.Draw.Standby) switch
    {
        ({ } record, { } standby) =>
            $"{TradeUnits.Text(device.Count * record)} in record, {TradeUnits.Text(device.Count * standby)} on standby",
        ({ } record, null) => $"{TradeUnits.Text(device.Count * record)} in record",
        _ => $"{TradeUnits.Text(device.Count * device.Draw.Standby!.Value)} on standby",
    };

    // Two monitors of one kind are two bars, which need names of their own.
    private static string Name(PoweredDevice device, int index, List<PoweredDevice> all)
    {
        var count = device.Count > 1 ? $" ({device.Count})" : "";
        var before = all.Take(index).Count(other => other.Name == device.Name);
        return before == 0 ? device.Name + count : $"{device.Name}{count}, no. {before + 1}";
    }
}
