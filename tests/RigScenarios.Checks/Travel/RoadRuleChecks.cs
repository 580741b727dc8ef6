using RigScenarios.Travel;

namespace RigScenarios.Checks.Travel;

/// <summary>The rules of the road, case by case.</summary>
public class RoadRuleChecks
{
    private static RoadCheck ByRoad(PackedBattery battery) => Assert.Single(TravelPlan.For(new Journey("J", Batteries.Addendum,
        Travellers.One, [Leg.Road], [battery])).Road);

    // "a lithium ion battery has a rated energy of at most 100 Wh": special provision 188 (b).
    [Source(SourceKind.Regulation, "United Nations Economic Commission for Europe, ADR, special provision 188; second-hand, read "
        + "in Swedish at safepaconline.com")]
    [Theory]
    [InlineData(98, true)]
    [InlineData(100, true)]
    [InlineData(100.5, false)]
    [InlineData(190, false)]
    public void Small_is_up_to_100_watt_hours(double wattHours, bool small) =>
        Assert.Equal(small, ByRoad(Batteries.Spare(wattHours)).Small);

    // P. 86 and 114: UN 3480 for batteries on their own, UN 3481 in equipment; p. 122: packed with it.
    [Source(SourceKind.Handbook, "Lithium Batteries 2023 and 2024 (handbook of transport rules), p. 86, 114 and 122; read in the "
        + "source")]
    [Theory]
    [InlineData(false, false, 3480)]
    [InlineData(true, false, 3481)]
    [InlineData(false, true, 3481)]
    public void Entries_by_road(bool withEquipment, bool installed, int number) =>
        Assert.Equal(number, ByRoad(Batteries.Spare(150) with { WithEquipment = withEquipment, Installed = installed })
            .Entry.Number);

    // 1.1.3.6: 1,000 points; lithium batteries are of transport category 2, 3 points a kilogram: 333 kg. The handbook prints it.
    [Source(SourceKind.Handbook, "Lithium Batteries 2023 (handbook of transport rules), p. 35: 333 kg; read in the source")]
    [Fact]
    public void A_thousand_points_at_three_a_kilogram() =>
        Assert.Equal(Math.Floor(1000.0 / 3), RoadRules.Held.InOneVehicle.Value.Kilograms);
}
