using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>A device or regulator that would see more voltage than it takes.</summary>
/// <param name="Element">Its name.</param>
/// <param name="Voltage">What stands at its inlet without load.</param>
/// <param name="Maximum">What it takes at most.</param>
/// <param name="From">Where that voltage comes from, in words.</param>
public sealed record OverVoltage(string Element, ElectricPotential Voltage, ElectricPotential Maximum, string From)
{
    /// <summary>The finding in one sentence.</summary>
    public override string ToString() =>
        $"WRONG VOLTAGE: {Element} takes at most {Maximum.Volts:0.##} V, but {From} puts {Voltage.Volts:0.##} V on it. Do not "
            + "connect it: it may be destroyed or catch fire. Put a regulator between, and check its maker's limits.";
}

/// <summary>What a network can take and deliver.</summary>
internal static class WiringLimits
{
    public static OperatingPoint? BehindSource(
        WiringNetwork network, double source, double resistance, Func<string, string> stateOf,
        double airKelvin = Cable.ReferenceKelvin)
    {
        var draw = new WiringDraw(network, stateOf, new bool[network.Count]);
        var point = default(CircuitLanes);
        draw.Solve(Vector512.Create(source), Vector512.Create(resistance), Vector512.Create(airKelvin), ref point);
        return point.PowerMargin[0] >= 0 && draw.At(point.Voltage[0], airKelvin) is { } figures
            ? new OperatingPoint(network, point.Voltage[0], figures, airKelvin) : null;
    }

    public static double LoadFactorAtEdge(WiringNetwork network, double terminals, Func<string, string> stateOf)
    {
        var (low, high) = (0.0, 1000.0);
        if (IsSolvable(high))
            return double.PositiveInfinity;
        while (high - low > 1e-13 * high)
        {
            var middle = low + ((high - low) / 2);
            if (IsSolvable(middle))
                low = middle;
            else
                high = middle;
        }

        return low;

        bool IsSolvable(double factor) => new WiringDraw(network, stateOf, new bool[network.Count], factor)
            .At(terminals, Cable.ReferenceKelvin) is not null;
    }

    public static IReadOnlyList<OverVoltage> OverVoltages(WiringNetwork network, double highest)
    {
        var found = new List<OverVoltage>();
        for (var i = 0; i < network.Count; i++)
        {
            var maximum = network[i] switch
            {
                Regulator regulator => regulator.InputMaximum?.Volts,
                Device device => device.MaximumVoltage?.Volts,
                _ => null,
            };
            var source = network.SourceOf(i) < 0 ? null : (Regulator)network[network.SourceOf(i)];
            var volts = source?.Output.Volts ?? highest;
            if (maximum is { } limit && volts > limit)
            {
                found.Add(new OverVoltage(network[i].Name, ElectricPotential.FromVolts(volts), ElectricPotential.FromVolts(limit),
                    source is null ? "the full battery without load" : $"the regulator {source.Name}"));
            }
        }

        return [.. found.OrderByDescending(one => one.Voltage.Volts / one.Maximum.Volts)];
    }
}
