using RigScenarios.Search.Choices;

namespace RigScenarios.Tests.Search.Choices;

public sealed class NextGainTests
{
    // Money, minus hours, mass: the third entry is dearer than the second and runs shorter; of the last the runtime is not known.
    private static readonly FrontResult Front = new(
        [Entry(0, 900, -4, 3), Entry(1, 1000, -6, 4), Entry(2, 1050, -5, 1), Entry(3, 1400, -9, 5),
            Entry(4, 1100, double.NaN, 2)],
        true, 10, 0, [double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity], 5, 5);

    [Fact]
    public void Along_the_front_each_step_is_dearer_and_better() =>
        Assert.Equal([(0, 1, 100, 2), (1, 3, 400, 3)], NextGain.Along(Front, money: 0, goal: 1)
            .Select(step => (step.From!.Choice[0], step.To.Choice[0], step.Extra, step.Gain)));

    [Theory]
    [InlineData(900, 100, 0, 1, 2)]
    [InlineData(950, 100, 0, 1, 2)]
    [InlineData(1000, 399, 1, 1, 0)]
    [InlineData(1000, 400, 1, 3, 3)]
    [InlineData(5000, 100, 3, 3, 0)]
    public void More_money_buys_the_best_that_it_reaches(double budget, double extra, int from, int to, double gain)
    {
        var found = NextGain.Within(Front, 0, 1, budget, extra)!;
        Assert.Equal((from, to, gain), (found.From!.Choice[0], found.To.Choice[0], found.Gain));
    }

    [Fact]
    public void Below_the_cheapest_more_money_opens_the_first_or_nothing()
    {
        var first = NextGain.Within(Front, 0, 1, 850, 50)!;
        Assert.Null(first.From);
        Assert.Equal((0, 900, double.NaN), (first.To.Choice[0], first.Extra, first.Gain));
        Assert.Null(NextGain.Within(Front, 0, 1, 800, 50));
        Assert.Throws<ArgumentOutOfRangeException>(() => NextGain.Within(Front, 0, 1, 800, double.NaN));
    }

    private static FrontEntry Entry(int number, params double[] goals) => new(goals, [new Choice([number])], true);
}
