using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Tests.Cells.Aging;

/// <summary>Each of the fourteen warnings has its name and comes when it should; the ends of a range are inside.</summary>
public sealed class AgingWarningTests
{
    [Fact]
    public void Fourteen_names_in_capital_letters() => Each.Of(
        Enum.GetValues<AgingWarning>().Select(one => one.Name()).Distinct(), name => Assert.Matches("^[A-Z_]+$", name),
        atLeast: 14);

    [Theory]
    [InlineData(34.9, true)]
    [InlineData(35, false)]
    [InlineData(50, false)]
    [InlineData(50.1, true)]
    public void The_ends_of_the_tested_storage_are_inside(double celsius, bool warns) =>
        Assert.Equal(warns, Of(new Storage(Days(100), Temperature.FromDegreesCelsius(celsius), Share(0.5)))
            .Contains(AgingWarning.CalendarTemperature));

    [Theory]
    [InlineData(500, false)]
    [InlineData(501, true)]
    public void Days_add_up_over_the_phases(double days, bool warns) => Assert.Equal(warns,
        BatteryLife.After(AgingSets.Nmc, false, [At(250), At(days - 250)]).Phases[^1].Warnings
            .Contains(AgingWarning.BeyondTests));

    // 1 - 0.8 is a hair more than 0.2 in binary fractions.
    [Fact]
    public void A_depth_at_the_end_of_the_range_is_inside() => Assert.DoesNotContain(AgingWarning.Depth,
        BatteryLife.After(AgingSets.Nmc811Silicon, false,
            [new Shooting(Days(100), Temperature.FromDegreesCelsius(20), Share(0.5), 5,
                [new CourseStretch(Duration.FromHours(5), Share(0.8), Share(1 - 0.8 + 0.4),
                    Temperature.FromDegreesCelsius(20))])])
            .Warnings);

    [Fact]
    public void Charging_in_the_cold_is_told_only_where_it_is_charged()
    {
        CourseStretch down = new(Duration.FromHours(5), Share(1), Share(0.5), Temperature.FromDegreesCelsius(0));
        CourseStretch up = new(Duration.FromHours(3), Share(0.5), Share(1), Temperature.FromDegreesCelsius(9.9));
        Assert.DoesNotContain(AgingWarning.ColdCharge, Of(Course(down)));
        Assert.Contains(AgingWarning.ColdCharge, Of(Course(down, up)));
        Assert.DoesNotContain(AgingWarning.ColdCharge,
            Of(Course(down, up with { Temperature = Temperature.FromDegreesCelsius(10) })));
    }

    [Fact]
    public void A_voltage_that_a_set_does_not_know_is_refused() => Assert.Contains("mean charge",
        Assert.Throws<ArgumentException>(() => BatteryLife.After(AgingSets.Lfp, false,
            [Cycling.AboutVoltage(Days(1), Temperature.FromDegreesCelsius(20), 1, Share(1), 1,
                ElectricPotential.FromVolts(3.3))]))
            .Message, StringComparison.Ordinal);

    private static IReadOnlyList<AgingWarning> Of(LifePhase phase) => BatteryLife.After(AgingSets.Nmc, false, [phase]).Warnings;

    private static Shooting Course(params CourseStretch[] course) =>
        new(Days(100), Temperature.FromDegreesCelsius(20), Share(0.5), 5, course);

    private static Storage At(double days) => new(Days(days), Temperature.FromDegreesCelsius(40), Share(0.5));

    private static Duration Days(double days) => Duration.FromDays(days);

    private static Ratio Share(double share) => Ratio.FromDecimalFractions(share);
}
