using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Wiring;

/// <summary>What a fuse carries for hours: rating times steady share times (1 - less per kelvin of air above 25 °C).</summary>
public sealed class FuseTests
{
    // By hand: 5 A × 75 % = 3.75 A up to 25 °C; at 35 °C 10 K × 0.5 % less: 3.5625 A.
    [Theory]
    [InlineData(-20, 3.75)]
    [InlineData(14, 3.75)]
    [InlineData(25, 3.75)]
    [InlineData(35, 3.5625)]
    [InlineData(300, 0)]
    public void Warm_air_takes_from_it_and_cold_air_is_not_counted_in_its_favour(double celsius, double amperes) =>
        Assert.Equal(amperes, new FuseData(ElectricCurrent.FromAmperes(5))
            .SteadyAt(Temperature.FromDegreesCelsius(celsius)).Amperes, 1e-9);

    // By hand: 5 A up to 20 °C; at 35 °C 15 K × 1 % less: 4.25 A; at 120 °C nothing is left.
    [Theory]
    [InlineData(-20, 5)]
    [InlineData(20, 5)]
    [InlineData(35, 4.25)]
    [InlineData(120, 0)]
    public void A_resettable_one_holds_all_of_its_rating_and_less_when_warm(double celsius, double amperes) =>
        Assert.Equal(amperes, new FuseData(ElectricCurrent.FromAmperes(5), Kind: FuseKind.Resettable)
            .SteadyAt(Temperature.FromDegreesCelsius(celsius)).Amperes, 1e-9);

    [Fact]
    public void Its_own_figures_go_before_the_usual_ones() =>
        Assert.Equal(4 * 1.0 * (1 - (0.002 * 20)),
            new FuseData(ElectricCurrent.FromAmperes(4), Ratio.FromPercent(100), Ratio.FromPercent(0.2))
            .SteadyAt(Temperature.FromDegreesCelsius(45)).Amperes, 1e-9);
}
