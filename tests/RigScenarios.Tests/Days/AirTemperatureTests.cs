using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Tests.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Days;

/// <summary>The air's points stand in their order; a clock time that is not later than the one before lies on the next
/// day.</summary>
public sealed class AirTemperatureTests
{
    private const double Hour = 3600;

    // Invented: a night from 19:00 to 03:00.
    private static readonly ShootingDay Night = new()
    {
        Starts = new TimeOnly(19, 0),
        AmbientPoints = [Point(20, 10), Point(23, 4), Point(2, -2), Point(5, -8)],
        Blocks = new([new("work", new DayBlock { Length = Duration.FromHours(8), Others = PowerState.Record })]),
    };

    [Theory]
    [InlineData(19, 10)] // flat before the first point
    [InlineData(21.5, 7)] // halfway from 10 to 4
    [InlineData(24, 2)] // a third of the way from 4 at 23:00 to -2 at 02:00
    [InlineData(26.5, -3)] // half an hour past 02:00 of 3 h from -2 to -8
    public void A_day_passes_midnight_and_so_does_its_air(double hour, double celsius) =>
        Assert.Equal(celsius, At(AirTemperature.OfDay(Night, 300, 0, 19 * Hour, 27 * Hour), hour), 1e-9);

    [Fact]
    public void The_air_of_a_plan_is_that_of_each_day_from_its_own_midnight_and_the_nights_between()
    {
        var air = AirTemperature.Of(
            new DayPlan { Days = [Night, Night], NightTemperature = Plans.Celsius(16) },
            [(0, 19 * Hour, 27 * Hour), (24 * Hour, 43 * Hour, 51 * Hour)]);
        Assert.Equal(2, At(air, 24), 1e-9);
        Assert.Equal(16, At(air, 30), 1e-9);
        Assert.Equal(10, At(air, 43.5), 1e-9);
        Assert.Equal(2, At(air, 48), 1e-9);
    }

    [Fact]
    public void Points_that_need_more_midnights_than_the_day_are_taken_as_they_stand()
    {
        // 22:00, 10:00 of the next day, 10:00 of the day after: two midnights for a day that sees one.
        var day = Night with { AmbientPoints = [Point(22, 0), Point(10, 12), Point(10, 36)] };
        var air = AirTemperature.OfDay(day, 300, 0, 19 * Hour, 27 * Hour);
        Assert.Equal(0, At(air, 21), 1e-9);
        Assert.Equal(5, At(air, 27), 1e-9);
    }

    private static double At(AirTemperature air, double hour) => air.At(hour * Hour).Kelvin - 273.15;

    private static AmbientPoint Point(int hour, double celsius) => new(new TimeOnly(hour, 0), Plans.Celsius(celsius));
}
