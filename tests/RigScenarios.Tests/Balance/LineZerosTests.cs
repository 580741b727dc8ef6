using CsCheck;
using RigScenarios.Numerics;

namespace RigScenarios.Tests.Balance;

/// <summary>Every place where a function passes through zero is found once, also two that lie between neighbouring
/// samples.</summary>
public class LineZerosTests
{
    private static readonly double[] Samples = [.. Enumerable.Range(0, 33).Select(i => i / 32.0)];

    [Fact]
    public void Two_zeros_are_found_however_close() =>
        Gen.Select(Gen.Double[0.001, 0.999], Gen.Double[-4, -1.3], Gen.Bool).Holds(
        (middle, exponent, below, looked) =>
        {
            var half = Math.Pow(10, exponent);
            var sign = below ? 1 : -1;
            double[] expected = [.. new[] { middle - half, middle + half }.Where(x => x is > 0 and < 1)];

            var found = LineZeros.Of(x => sign * (((x - middle) * (x - middle)) - (half * half)), Samples);

            Assert.Equal(expected.Length, found.Count);
            Each.Pair(expected, found, (one, other) => Assert.Equal(one, other, 1e-9));
            if (expected.Length == 2)
                looked.One();
        },
        cases: 20_000, atLeast: 19000);

    [Theory]
    [InlineData(1 / 64.0)]
    [InlineData(63 / 64.0)]
    [InlineData(31 / 64.0)]
    [InlineData(0.5)]
    public void Midway_between_samples_and_on_one_each_is_found_once(double middle) =>
        Assert.Equal(2, LineZeros.Of(x => ((x - middle) * (x - middle)) - 1e-4, Samples).Count);

    [Fact]
    public void A_function_without_zeros_has_none() => Gen.Double[1e-6, 5].Holds(
        least => Assert.Empty(LineZeros.Of(x => ((x - 0.4321) * (x - 0.4321)) + least, Samples)), cases: 200);
}
