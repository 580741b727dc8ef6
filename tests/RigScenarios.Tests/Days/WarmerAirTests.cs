using RigScenarios.Days;
using RigScenarios.Scenarios;
using RigScenarios.Tests.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Days;

/// <summary>A warmer or colder day moves all of its air: one temperature, or every point of a course.</summary>
public sealed class WarmerAirTests
{
    // Invented.
    private static readonly ShootingDay Course = new()
    {
        Ambient = Plans.Celsius(9),
        AmbientPoints = [new(new TimeOnly(20, 0), Plans.Celsius(4)), new(new TimeOnly(5, 0), Plans.Celsius(-8.5))],
    };

    private static readonly Scenario Week = new()
    {
        Conditions = new Conditions(Plans.Celsius(12), Plans.Celsius(18)),
        Days = new([
            new("course", Course), new("cold", new ShootingDay { Ambient = Plans.Celsius(-3) }),
            new("plain", new ShootingDay())]),
    };

    [Fact]
    public void A_course_keeps_its_times_and_its_shape()
    {
        var colder = Course.Warmer(TemperatureDelta.FromKelvins(-6));
        Assert.Equal(Course.AmbientPoints.Select(point => point.Time), colder.AmbientPoints.Select(point => point.Time));
        Assert.Equal([-2, -14.5], colder.AmbientPoints.Select(point => point.Temperature.DegreesCelsius));
        Assert.Equal(Course.Ambient, colder.Ambient);
    }

    [Fact]
    public void No_difference_is_the_day_itself()
    {
        Assert.Same(Course, Course.Warmer(TemperatureDelta.Zero));
        Assert.Same(Week, Week.Warmer(TemperatureDelta.Zero));
    }

    [Fact]
    public void It_ends_at_what_a_file_may_say()
    {
        Assert.Equal(-50, WarmerAir.Of(Plans.Celsius(-45), TemperatureDelta.FromKelvins(-20)).DegreesCelsius);
        Assert.Equal(60, WarmerAir.Of(Plans.Celsius(55), TemperatureDelta.FromKelvins(20)).DegreesCelsius);
    }

    [Fact]
    public void All_days_move_and_what_holds_for_all_days_moves_once()
    {
        var warmer = Week.Warmer(TemperatureDelta.FromKelvins(5));
        Assert.Equal([9, 2, 17], warmer.Days.Values.Select(day => warmer.AmbientOn(day).DegreesCelsius));
        Assert.Equal(18, warmer.Conditions.Night!.Value.DegreesCelsius);
    }

    [Fact]
    public void One_day_moves_alone()
    {
        var warmer = Week.Warmer(TemperatureDelta.FromKelvins(5), "plain");
        Assert.Equal([4, -3, 17], warmer.Days.Values.Select(day => warmer.AmbientOn(day).DegreesCelsius));
        Assert.Throws<ScenarioProblemsException>(() => Week.Warmer(TemperatureDelta.FromKelvins(5), "plane"));
    }
}
