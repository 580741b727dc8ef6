using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Tests.Travel;

/// <summary>Invented journeys and batteries for the tests of this folder.</summary>
internal static class TravelCases
{
    public static readonly DateOnly Date = new(2026, 12, 3);

    public static Journey Flight(int travellers, IReadOnlyList<PackedBattery> batteries) =>
        new("J", Date, Travellers.Of(travellers), [Leg.Flight], batteries);

    public static PackedBattery Some(string name, double wattHours, int count) =>
        new() { Name = name, Title = name, Rated = new RatedEnergy(Energy.FromWattHours(wattHours), WattHourBasis.Label),
            Count = count };

    public static List<PackedBattery> RandomBatteries(Random random, int groups, int most) =>
    [
        .. Enumerable.Range(0, groups).Select(group => Some($"b{group}", random.Next(2, 17) * 10.5, random.Next(1, most + 1)) with
        {
            PowerBank = random.Next(2) == 0, Installed = random.Next(4) == 0, ContactsCovered = random.Next(8) > 0,
        }),
    ];
}
