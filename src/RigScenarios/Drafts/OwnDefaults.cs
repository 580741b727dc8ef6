using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;
using ElectricPower = UnitsNet.Power;

namespace RigScenarios.Drafts;

/// <summary>
/// What is taken where a label leaves a figure open. Each default stands with its reason in docs/own-rig.md; all are common practice,
/// no source, and chosen on the side that makes the answer shorter rather than longer.
/// </summary>
internal static class OwnDefaults
{
    /// <summary>The nominal voltage of a brick on a camera rig: four groups of 3.6 V.</summary>
    public static readonly ElectricPotential BatteryVoltage = ElectricPotential.FromVolts(14.4);

    /// <summary>What a plate with a charge display draws.</summary>
    public static readonly ElectricPower PlateOwnDraw = ElectricPower.FromWatts(0.3);

    /// <summary>What a regulator draws with nothing behind it.</summary>
    public static readonly ElectricPower RegulatorOwnDraw = ElectricPower.FromWatts(0.3);

    /// <summary>Power out over power in of a small regulator.</summary>
    public static readonly Ratio RegulatorEfficiency = Ratio.FromPercent(85);

    /// <summary>The least input of a regulator made for bricks of 14.4 V.</summary>
    public static readonly ElectricPotential RegulatorInputMinimum = ElectricPotential.FromVolts(11.2);

    /// <summary>The greatest input of a regulator made for bricks of 14.4 V: the full brick, and no more.</summary>
    public static readonly ElectricPotential RegulatorInputMaximum = ElectricPotential.FromVolts(16.8);

    private const double NominalVoltsOfGroup = 3.6;
    private const double OtherNominalVoltsOfGroup = 3.7;
    private const double EmptyVoltsOfGroup = 3.0;
    private const double FullVoltsOfGroup = 4.2;
    private const double SupplyTolerance = 0.1;

    /// <summary>
    /// The voltages that a device with one voltage on its label takes. A label of 7.2, 7.4, 10.8, 11.1, 14.4 or 14.8 V means a lithium pack of
    /// two to four groups, so what such a pack gives from full to nearly empty; any other means a steady supply, so 10 % either way.
    /// </summary>
    public static (ElectricPotential Minimum, ElectricPotential Maximum) Window(ElectricPotential label)
    {
        var volts = label.Volts;
        for (var groups = 2; groups <= 4; groups++)
        {
            if (Math.Abs(volts - (groups * NominalVoltsOfGroup)) < 0.01 || Math.Abs(volts - (groups * OtherNominalVoltsOfGroup)) < 0.01)
                return (Volts(groups * EmptyVoltsOfGroup), Volts(groups * FullVoltsOfGroup));
        }
        return (Volts(volts * (1 - SupplyTolerance)), Volts(volts * (1 + SupplyTolerance)));
    }

    /// <summary>The label voltages that would give a window, the likeliest first.</summary>
    public static IEnumerable<ElectricPotential> LabelsOf(VoltageWindow window)
    {
        if (window is not { Minimum: { } low, Maximum: { } high })
            return [];
        var groups = Math.Round(high.Volts / FullVoltsOfGroup);
        return ((double[])[groups * NominalVoltsOfGroup, groups * OtherNominalVoltsOfGroup, high.Volts / (1 + SupplyTolerance)])
            .Select(Volts).Where(label => label.Volts is >= 0.5 and <= 60 && Window(label).Equals((low, high)));
    }

    /// <summary>A mass that is usual for the kind of thing.</summary>
    public static Mass MassOf(RigRole role, Energy? energy) => role switch
    {
        RigRole.Battery when energy is { } label => Mass.FromGrams(Math.Round(1000 * label.WattHours / CellChemistries.Nmc.SpecificEnergy.Value.WattHoursPerKilogram)),
        RigRole.Camera => Mass.FromGrams(800),
        RigRole.Lens => Mass.FromGrams(1000),
        RigRole.Plate => Mass.FromGrams(220),
        RigRole.Monitor => Mass.FromGrams(450),
        RigRole.Transmitter => Mass.FromGrams(280),
        RigRole.Motor => Mass.FromGrams(220),
        RigRole.MotorController => Mass.FromGrams(200),
        RigRole.Regulator => Mass.FromGrams(130),
        _ => Mass.FromGrams(400),
    };

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(Math.Round(volts, 3));
}
