using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What the European agreement on the road (ADR), which many states outside of Europe follow too, says of rechargeable
/// lithium batteries.</summary>
public sealed record RoadRules
{
    /// <summary>Up to and including this a battery counts as small: special provision 188 holds in place of the other
    /// rules.</summary>
    public required Sourced<Energy> Small { get; init; }

    /// <summary>What is asked of small ones.</summary>
    public required Sourced<string> AskedOfSmall { get; init; }

    /// <summary>What is asked of small ones in a device.</summary>
    public required Sourced<string> AskedOfDevices { get; init; }

    /// <summary>Most mass of larger ones in a vehicle without the rules for the vehicle and its driver.</summary>
    public required Sourced<Mass> InOneVehicle { get; init; }

    /// <summary>What is asked of larger ones.</summary>
    public required Sourced<string> AskedOfLarge { get; init; }

    /// <summary>A crew's own batteries on the way to its own work, private ones, and the post.</summary>
    public required IReadOnlyList<Sourced<string>> Besides { get; init; }

    /// <summary>The rules that are held: the editions of 2023 and 2025 do not differ in them.</summary>
    public static RoadRules Held { get; } = new()
    {
        Small = new(Energy.FromWattHours(100), "Up to 100 Wh a battery and 20 Wh a cell special provision 188 holds by road.",
            RuleSources.Provision188),
        AskedOfSmall = new("contacts covered, each in an inner package and these in a strong outer one, the battery mark on it",
            "Special provision 188 (d) and (f).", RuleSources.Provision188),
        AskedOfDevices = new("the device protected from being switched on, in a strong outer package unless it protects its "
            + "battery itself", "Special provision 188 (e).", RuleSources.Provision188),
        InOneVehicle = new(Mass.FromKilograms(333), "1,000 points at 3 points a kilogram (1.1.3.6).", RuleSources.Points),
        AskedOfLarge = new("class 9: packing instruction P903, label 9A and papers",
            "Fully regulated above 100 Wh.", RuleSources.LargeByRoad),
        Besides =
        [
            new("By road, a crew's own batteries on the way to its own work: where ADR holds, its 1.1.3.1 (c) may lift the rules "
                + "up to 333 kg, if nothing can come loose or short-circuit. Not so for a hire company's delivery. Ask.",
                "Carriage that is ancillary to an enterprise's main activity.", RuleSources.OwnWork),
            new("By road: never leave batteries in the sun or in a parked car in the heat.", "Heat ages them and can set them "
                + "off.", RuleSources.ParkedCars),
            new("By post: the services that were read take none above 100 Wh, and hardly any without its device. Ask yours.",
                "Mail flies on passenger aircraft.", RuleSources.Post),
        ],
    };
}

/// <summary>Some equal batteries held against the rules of the road.</summary>
/// <param name="Battery">The batteries.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Entry">Their entry in the list of dangerous goods.</param>
/// <param name="Small">Whether special provision 188 holds for them.</param>
public sealed record RoadCheck(PackedBattery Battery, int Count, UnEntry Entry, bool Small)
{
    /// <summary>Holds batteries against the rules of the road.</summary>
    /// <param name="battery">The batteries.</param>
    /// <param name="rules">The rules.</param>
    public static RoadCheck Of(PackedBattery battery, RoadRules rules)
    {
        ArgumentNullException.ThrowIfNull(battery);
        ArgumentNullException.ThrowIfNull(rules);
        return new(battery, battery.Count, UnEntry.Of(LithiumKind.Ion, CargoCheck.FormOf(battery)),
            FlightCheck.AtMost(battery.Rated.Energy, rules.Small.Value));
    }
}
