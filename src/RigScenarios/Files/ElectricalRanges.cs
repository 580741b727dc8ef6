using RigScenarios.Files.Formats;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>Electrical ranges that any part of a camera rig keeps to; wide enough for the odd one, narrow enough to catch a slip
/// of units.</summary>
internal static class ElectricalRanges
{
    public static readonly QuantityFormat<Power> Watts = new(Power.FromWatts(0), Power.FromWatts(2000), "15 W");

    public static readonly QuantityFormat<ElectricPotential> Volts = new(ElectricPotential.FromVolts(0.5),
        ElectricPotential.FromVolts(60), "14.4 V");

    public static readonly QuantityFormat<ElectricCurrent> Amperes = new(ElectricCurrent.FromAmperes(0.001),
        ElectricCurrent.FromAmperes(200), "10 A");

    public static readonly QuantityFormat<Ratio> Shares = new(Ratio.FromPercent(1), Ratio.FromPercent(100), "92 %");

    /// <summary>Capacity left over that of the label: one that was measured may hold more.</summary>
    public static readonly QuantityFormat<Ratio> CapacityLeft = new(Ratio.FromPercent(1), Ratio.FromPercent(120), "92 %");

    /// <summary>Resistance over that of a new battery: one that was measured may have less.</summary>
    public static readonly NumberFormat ResistanceGrowth = new(0.5, 20);
}
