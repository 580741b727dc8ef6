using RigScenarios.Numerics;

namespace RigScenarios.Tests.Numerics;

public sealed class NormalTailTests
{
    /// <summary>Φ: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), tables 26.1 and 26.2: -log10 of the
    /// tail at 5, 10, 20, 30, 50 (from memory).</summary>
    [Theory]
    [InlineData(5, 6.54265)]
    [InlineData(10, 23.11805)]
    [InlineData(20, 88.56010)]
    [InlineData(30, 197.30921)]
    [InlineData(50, 544.96634)]
    public void Far_out_the_logarithm_is_that_of_the_table(double u, double minusLog10) =>
        Assert.Equal(-minusLog10, NormalTail.LogBelow(-u) / Math.Log(10), 1e-5);

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.8413447461)]
    [InlineData(1.959964, 0.975)]
    [InlineData(-1.959964, 0.025)]
    public void Near_the_middle_the_probability_is_that_of_the_table(double u, double probability) =>
        Assert.Equal(probability, Math.Exp(NormalTail.LogBelow(u)), 1e-8);

    [Fact]
    public void The_slope_is_the_derivative_without_a_jump_where_the_formulas_meet()
    {
        double[] places = [-60, -30.001, -29.999, -5, -1e-6, 1e-6, 1, 3.71, 3.73, 8];
        Each.Of(places, u =>
        {
            var step = 1e-4;
            var difference = (NormalTail.LogBelow(u + step) - NormalTail.LogBelow(u - step)) / (2 * step);
            Assert.Equal(NormalTail.Slope(u), difference, 1e-6 * (1 + Math.Abs(difference)));
        });
    }
}
