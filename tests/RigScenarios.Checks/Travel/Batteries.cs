using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Checks.Travel;

/// <summary>Batteries and editions that the checks of this folder share.</summary>
internal static class Batteries
{
    public static readonly DateOnly December2025 = new(2025, 12, 31);
    public static readonly DateOnly January2026 = new(2026, 1, 1);
    public static readonly DateOnly BeforeAddendum = new(2026, 3, 26);
    public static readonly DateOnly Addendum = new(2026, 3, 27);

    public static TransportRules Rules2026 => RuleEditions.On(Addendum).Rules;

    public static PackedBattery Spare(RatedEnergy rated) => new() { Name = "b", Title = "B", Rated = rated };

    public static PackedBattery Spare(double wattHours, int count = 1) =>
        Spare(new RatedEnergy(Energy.FromWattHours(wattHours), WattHourBasis.Label)) with { Count = count };

    public static TravelAnswer Fly(DateOnly date, int travellers, params PackedBattery[] batteries) =>
        TravelPlan.For(new Journey("J", date, Travellers.Of(travellers), [Leg.Flight], batteries));

    public static CargoCheck Ship(DateOnly date, PackedBattery battery) =>
        TravelPlan.For(new Journey("J", date, Travellers.One, [Leg.Cargo], [battery])).Consignment.Single();
}
