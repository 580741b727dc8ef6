using MathNet.Numerics.Distributions;
using RigScenarios.Numerics;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

/// <summary>
/// A sum a·X + b·Y of two normal numbers above 0, guessed from X alone: one is wrong where the signs of X and of the sum differ,
/// which has the chance arctan(b/a)/π (W. F. Sheppard, "On the application of the theory of error to cases of normal distribution
/// and normal correlation", Philosophical Transactions A 192, 1899: the chance of a quadrant; worked by hand from it).
/// </summary>
public class GuessAfterMeasuringTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(1, 3)]
    public void One_is_wrong_as_often_as_the_signs_differ(double a, double b)
    {
        var (points, figure, yes) = Sums(4096, a, b, 0);

        var gain = GuessAfterMeasuring.Of(points, [0], figure, yes)!;

        var truth = Math.Atan(b / a) / Math.PI;
        Assert.Equal(0.5, gain.WrongNow.DecimalFractions, 0.03);
        // The rule of the nearest is never better than the best one, but for its standard error, and not much worse.
        Assert.InRange(gain.WrongThen.DecimalFractions, truth - (3 * gain.StandardError.DecimalFractions), truth + 0.03);
        Assert.Equal(gain.WrongNow.DecimalFractions - gain.WrongThen.DecimalFractions, gain.Gain.DecimalFractions, 1e-9);
    }

    [Fact]
    public void Several_coordinates_are_joined_to_what_tells_most()
    {
        var (points, figure, yes) = Sums(2048, 1, 1, 0.5);

        var both = GuessAfterMeasuring.Of(points, [0, 1], figure, yes)!;

        Assert.Equal(0, both.WrongThen.DecimalFractions, 0.02);
    }

    [Fact]
    public void What_has_no_part_in_it_helps_no_guess()
    {
        var helped = 0;
        for (var seed = 1; seed <= 100; seed++)
        {
            var (points, figure, yes) = Sums(512, 1, 1, 0.3, seed);
            helped += GuessAfterMeasuring.Of(points, [2], figure, yes)!.Gain.DecimalFractions > 0 ? 1 : 0;
        }

        Assert.Equal(0, helped);
    }

    [Fact]
    public void Where_all_runs_agree_nothing_can_be_gained()
    {
        var (points, figure, _) = Sums(64, 1, 1, 0);

        var gain = GuessAfterMeasuring.Of(points, [0], figure, [.. figure.Select(_ => true)])!;

        Assert.Equal((0.0, 0.0, 0.0), (gain.WrongNow.DecimalFractions, gain.WrongThen.DecimalFractions,
            gain.Gain.DecimalFractions));
    }

    [Fact]
    public void Too_few_runs_say_nothing()
    {
        var (points, figure, yes) = Sums(15, 1, 1, 0);

        Assert.Null(GuessAfterMeasuring.Of(points, [0], figure, yes));
    }

    private static (double[][] Points, double[] Figure, bool[] Yes) Sums(
        int count, double a, double b, double shift, long seed = 5)
    {
        var drawn = new SeededSequence(seed);
        double[][] points = [.. Enumerable.Range(0, count).Select(_ => new[] { drawn.Unit(), drawn.Unit(), drawn.Unit() })];
        double[] figure = [.. points.Select(point =>
            (a * Normal.InvCDF(0, 1, point[0])) + (b * Normal.InvCDF(0, 1, point[1])) + shift)];
        return (points, figure, [.. figure.Select(value => value > 0)]);
    }
}
