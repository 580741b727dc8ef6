using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>
/// What is taken where a label leaves a figure open. Each default stands with its reason in docs/own-rig.md; all are common
/// practice,
/// no source, and chosen on the side that makes the answer shorter rather than longer.
/// </summary>
internal static class OwnDefaults
{
    /// <summary>The nominal voltage of a brick on a camera rig: four groups of 3.6 V.</summary>
    public static readonly ElectricPotential BatteryVoltage = ElectricPotential.FromVolts(14.4);

    /// <summary>What a plate with a charge display draws.</summary>
    public static readonly Power PlateOwnDraw = Power.FromWatts(0.3);

    /// <summary>What a regulator draws with nothing behind it.</summary>
    public static readonly Power RegulatorOwnDraw = Power.FromWatts(0.3);

    /// <summary>Power out over power in of a small regulator.</summary>
    public static readonly Ratio RegulatorEfficiency = Ratio.FromPercent(85);

    /// <summary>The least input of a regulator made for bricks of 14.4 V.</summary>
    public static readonly ElectricPotential RegulatorInputMinimum = ElectricPotential.FromVolts(11.2);

    /// <summary>The greatest input of a regulator made for bricks of 14.4 V: the full brick, and no more.</summary>
    public static readonly ElectricPotential RegulatorInputMaximum = ElectricPotential.FromVolts(16.8);

    /// <summary>How far the plate of a middle head slides.</summary>
    public static readonly Length HeadSlide = Length.FromMillimeters(80);

    /// <summary>From the top of a middle head's camera plate down to its tilt axis.</summary>
    public static readonly Length HeadAxisBelowPlate = Length.FromMillimeters(60);

    /// <summary>The tilt drag of a middle head at 10 °/s, set for slow tilts.</summary>
    public static readonly Torque HeadDrag = Torque.FromNewtonMeters(2);

    /// <summary>How far a middle head tilts up.</summary>
    public static readonly Angle HeadTiltUp = Angle.FromDegrees(60);

    /// <summary>How far a middle head tilts down.</summary>
    public static readonly Angle HeadTiltDown = Angle.FromDegrees(75);

    /// <summary>Height of legs that are set for standing work.</summary>
    public static readonly Length LegsHeight = Length.FromMillimeters(1400);

    /// <summary>From the middle to a foot of legs that are spread as they usually are.</summary>
    public static readonly Length LegsFootRadius = Length.FromMillimeters(600);

    private const double NominalVoltsOfGroup = 3.6;
    private const double OtherNominalVoltsOfGroup = 3.7;
    private const double EmptyVoltsOfGroup = 3.0;
    private const double FullVoltsOfGroup = 4.2;
    private const double SupplyTolerance = 0.1;

    /// <summary>
    /// The voltages that a device with one voltage on its label takes. A label of 7.2, 7.4, 10.8, 11.1, 14.4 or 14.8 V means a
    /// lithium pack of
    /// two to four groups, so what such a pack gives from full to nearly empty; any other means a steady supply, so 10 % either
    /// way.
    /// </summary>
    public static (ElectricPotential Minimum, ElectricPotential Maximum) Window(ElectricPotential label)
    {
        var volts = label.Volts;
        for (var groups = 2; groups <= 4; groups++)
        {
            if (Math.Abs(volts - (groups * NominalVoltsOfGroup)) < 0.01
                || Math.Abs(volts - (groups * OtherNominalVoltsOfGroup)) < 0.01)
                return (Volts(groups * EmptyVoltsOfGroup), Volts(groups * FullVoltsOfGroup));
        }
        return (Volts(volts * (1 - SupplyTolerance)), Volts(volts * (1 + SupplyTolerance)));
    }

    /// <summary>The most that a head's counterbalance gives: what holds its rated load with the centre 100 mm over the axis; 8
    /// N·m with no rating.</summary>
    public static Torque CounterbalanceOf(Mass? ratedLoad) =>
        Torque.FromNewtonMeters(ratedLoad is { } load ? Math.Round(load.Kilograms * 9.80665 * 0.1, 1) : 8);

    /// <summary>A mass that is usual for the kind of thing; null for a cable, which weighs what its length makes.</summary>
    public static Mass? MassOf(Part part) => part.Kind switch
    {
        PartKind.Battery when part.Battery is { Energy: { Joules: > 0 } label } =>
            Mass.FromGrams(Math.Round(1000 * label.WattHours / CellChemistries.Nmc.SpecificEnergy.Value.WattHoursPerKilogram)),
        PartKind.Battery or PartKind.Cable => null,
        PartKind.Body => Mass.FromGrams(800),
        PartKind.Lens => Mass.FromGrams(1000),
        PartKind.Plate => Mass.FromGrams(220),
        PartKind.Monitor => Mass.FromGrams(450),
        PartKind.Transmitter => Mass.FromGrams(280),
        PartKind.Motor => Mass.FromGrams(220),
        PartKind.MotorController => Mass.FromGrams(200),
        PartKind.Regulator => Mass.FromGrams(130),
        PartKind.Head => Mass.FromGrams(2500),
        PartKind.Tripod => Mass.FromGrams(3500),
        _ => Mass.FromGrams(400),
    };

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(Math.Round(volts, 3));
}
