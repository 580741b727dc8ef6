using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Tests.Days;

/// <summary>When a charger has power.</summary>
public sealed class DayChargerTests
{
    private static readonly DayCharger Charger = new(ElectricCurrent.FromAmperes(3));

    [Fact]
    public void Without_hours_it_always_has_power_and_with_a_limit_of_nothing_never()
    {
        Assert.True(Charger.HasPower(0));
        Assert.False((Charger with { WallLimit = Power.Zero }).HasPower(0));
        Assert.Equal(double.PositiveInfinity,
            (Charger with { WallLimit = Power.Zero, PowerHours = [new(new(12, 0), new(14, 0))] }).NextEdge(0));
    }

    [Fact]
    public void Hours_that_end_when_they_begin_are_refused() =>
        Assert.Contains("12:00 to 12:00",
            Assert.Throws<ArgumentException>(() => Charger with { PowerHours = [new(new(12, 0), new(12, 0))] }).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Hours_over_midnight_hold_on_both_sides_of_it()
    {
        var night = Charger with { PowerHours = [new(new(19, 0), new(7, 0))] };
        Assert.True(night.HasPower(3600));
        Assert.False(night.HasPower(12 * 3600));
        Assert.Equal(19 * 3600, night.NextEdge(12 * 3600), 1e-6);
    }

    [Fact]
    public void A_label_in_volt_amperes_gives_fewer_watts()
    {
        var rated = Charger with { SupplyRating = ElectricApparentPower.FromVoltamperes(150) };
        Assert.Null(Charger.LargestFromWall);
        Assert.Equal(90, (double)rated.LargestFromWall!.Value.Watts, 1e-9);
        Assert.Equal(147, (double)(rated with { PowerFactor = Ratio.FromPercent(98) }).LargestFromWall!.Value.Watts, 1e-9);
        Assert.Equal(60, (double)(rated with { WallLimit = Power.FromWatts(60) }).LargestFromWall!.Value.Watts, 1e-9);
        Assert.Equal(90, (double)(rated with { WallLimit = Power.FromWatts(120) }).LargestFromWall!.Value.Watts, 1e-9);
        Assert.NotEqual(Charger, rated);
        Assert.NotEqual(Charger, Charger with { Stands = "in the hall" });
        Assert.NotEqual(Charger, Charger with { PowerFrom = PowerSource.Vehicle });
        Assert.Throws<ArgumentOutOfRangeException>(() => Charger with { PowerFactor = Ratio.FromPercent(0) });
    }
}
