using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Tests.Cells.Aging;

/// <summary>What holds of every history, whatever the set: where it is cut, in which order it comes, how warm it was.</summary>
public sealed class HistoryTests
{
    private const double Tolerance = 1e-9;

    private const int Lives = 60;

    [Fact]
    public void Cutting_a_phase_anywhere_changes_nothing() => Drawn.Cases(31, Lives, random =>
    {
        var (set, phases) = (AnySet(random), AnyPhases(random, 3));
        var cut = random.NextDouble();
        var pieces = phases.SelectMany(phase => new[] { Part(phase, cut), Part(phase, 1 - cut) });
        Same(set, phases, [.. pieces]);
    });

    [Fact]
    public void Cutting_a_stretch_of_a_day_changes_nothing() => Drawn.Cases(32, Lives, random =>
    {
        var set = AnySet(random);
        var (from, to, cut) = (random.NextDouble(), random.NextDouble(), random.NextDouble());
        var middle = from + (cut * (to - from));
        CourseStretch[] whole = [Stretch(6, from, to)];
        CourseStretch[] pieces = [Stretch(6 * cut, from, middle), Stretch(6 * (1 - cut), middle, to)];
        Same(set, [Days(whole)], [Days(pieces)]);
    });

    [Fact]
    public void The_order_of_the_phases_does_not_matter_to_the_end() => Drawn.Cases(33, Lives, random =>
    {
        var (set, phases) = (AnySet(random), AnyPhases(random, 4));
        Same(set, phases, [.. phases.Reverse()]);
    });

    [Fact]
    public void Warmer_storage_never_leaves_more() => Drawn.Cases(34, Lives, random =>
    {
        var set = AnySet(random);
        var (days, charge) = (Duration.FromDays(1500 * random.NextDouble()), AnyShare(random));
        var celsius = -10 + (50 * random.NextDouble());
        var cool = After(set, new Storage(days, Temperature.FromDegreesCelsius(celsius), charge));
        var warm = After(set, new Storage(days, Temperature.FromDegreesCelsius(celsius + 5), charge));
        Assert.True(warm.Age.CapacityLeft <= cool.Age.CapacityLeft);
        Assert.True(warm.Age.ResistanceFactor >= cool.Age.ResistanceFactor);
    });

    [Fact]
    public void What_goes_on_is_the_same_as_one_phase_more() => Drawn.Cases(35, Lives, random =>
    {
        var (set, phases) = (AnySet(random), AnyPhases(random, 2));
        LifePhase[] measured = [.. phases, new Measured(Ratio.FromDecimalFractions(0.7 + (0.29 * random.NextDouble())))];
        var life = BatteryLife.After(set, false, measured);
        var further = life.After(phases[^1].Length);
        var more = BatteryLife.After(set, false, [.. measured, phases[^1]]).Age;
        Assert.Equal(more.CapacityLeft.DecimalFractions, further.CapacityLeft.DecimalFractions, Tolerance);
        Assert.Equal(more.ResistanceFactor, further.ResistanceFactor, Tolerance);
        if (life.TimeTo(LifeResult.Replaced) is { } time && time > Duration.Zero)
            Assert.Equal(0.8, life.After(time).CapacityLeft.DecimalFractions, 1e-6);
    });

    [Fact]
    public void A_measurement_is_what_is_left_then() => Drawn.Cases(36, Lives, random =>
    {
        var measured = Ratio.FromDecimalFractions(0.5 + (0.5 * random.NextDouble()));
        var growth = 1 + random.NextDouble();
        foreach (var known in new[] { true, false })
        {
            var age = BatteryLife.After(AgingSets.Nmc, false,
                [.. AnyPhases(random, 2), new Measured(measured, growth, known)]).Age;
            Assert.Equal(measured.DecimalFractions, age.CapacityLeft.DecimalFractions, Tolerance);
            Assert.Equal(growth, age.ResistanceFactor, Tolerance);
        }
    });

    private static void Same(AgingSet set, IReadOnlyList<LifePhase> some, IReadOnlyList<LifePhase> others)
    {
        var (one, other) = (BatteryLife.After(set, false, some).Age, BatteryLife.After(set, false, others).Age);
        Assert.Equal(one.CapacityLeft.DecimalFractions, other.CapacityLeft.DecimalFractions, Tolerance);
        Assert.Equal(one.ResistanceFactor, other.ResistanceFactor, Tolerance);
    }

    private static LifeResult After(AgingSet set, LifePhase phase) => BatteryLife.After(set, false, [phase]);

    private static AgingSet AnySet(Random random) => AgingSets.All[random.Next(AgingSets.All.Count)];

    private static Ratio AnyShare(Random random) => Ratio.FromDecimalFractions(random.NextDouble());

    private static LifePhase[] AnyPhases(Random random, int count) =>
        [.. Enumerable.Range(0, count).Select(_ => AnyPhase(random))];

    private static LifePhase AnyPhase(Random random)
    {
        var length = Duration.FromDays(30 + (300 * random.NextDouble()));
        var temperature = Temperature.FromDegreesCelsius(50 * random.NextDouble());
        var charge = AnyShare(random);
        return random.Next(3) switch
        {
            0 => new Storage(length, temperature, charge),
            1 => new Cycling(length, temperature, 100 * random.NextDouble(), AnyShare(random), random.NextDouble(), charge),
            _ => new Shooting(length, temperature, charge, length.Days * random.NextDouble() / 2, AnyShare(random)),
        };
    }

    private static LifePhase Part(LifePhase phase, double share) => phase switch
    {
        Storage one => new Storage(one.Length * share, one.Temperature, one.Charge),
        Cycling one => new Cycling(one.Length * share, one.Temperature, one.FullCycles * share, one.Depth, one.RatePerHour,
            one.MeanCharge!.Value),
        Shooting one => new Shooting(one.Length * share, one.ShelfTemperature, one.Charge, one.Days * share, one.Depth!.Value),
        _ => phase,
    };

    private static CourseStretch Stretch(double hours, double from, double to) => new(Duration.FromHours(hours),
        Ratio.FromDecimalFractions(from), Ratio.FromDecimalFractions(to), Temperature.FromDegreesCelsius(15));

    private static Shooting Days(IReadOnlyList<CourseStretch> course) => new(Duration.FromDays(100),
        Temperature.FromDegreesCelsius(20), Ratio.FromDecimalFractions(0.5), 40, course);
}
