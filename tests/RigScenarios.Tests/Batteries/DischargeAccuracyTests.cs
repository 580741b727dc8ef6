using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using RigScenarios.Numerics;

namespace RigScenarios.Tests.Batteries;

/// <summary>The error follows the tolerance, and the step its order.</summary>
public class DischargeAccuracyTests
{
    [Theory]
    [InlineData(-15)]
    [InlineData(5)]
    [InlineData(30)]
    public void End_time_converges_with_the_tolerance(double celsius)
    {
        var exact = End(celsius, 1e-10);

        Assert.Equal(exact, End(celsius, 1e-3), 1e-5 * exact);
        Assert.Equal(exact, End(celsius, 1e-6), 1e-8 * exact);
        Assert.Equal(exact, End(celsius, 1e-8), 1e-10 * exact);
    }

    [Fact]
    public void Deviation_from_the_polynomials_is_of_sixth_order()
    {
        var pack = new PackParameters(Packs.Default);
        var step = new DischargeStep(pack, ambientSlope: 0);
        var start = new PackState(0.81, 0, 0, 280, pack.HasFarWell ? 0.02 : 0);
        step.Hold(new SmoothRange(pack, start, 1e-10).At(start), new TerminalDraw(40, 0, 0), 280);
        step.Begin(start);

        Assert.True(step.TrySolve(16, 1e-10, out var coarse));
        Assert.True(step.TrySolve(8, 1e-10, out var fine));

        Assert.InRange(Math.Log2(coarse / fine), 5.5, 6.5);
    }

    // y' = -y/tau + θ^m from 0: y = ∫ u^m exp(-x(1-u)) du, by Simpson's rule with 20000 parts; the driver θ^m is met exactly up
    // to m = 5.
    [Theory]
    [InlineData(0)]
    [InlineData(1e-6)]
    [InlineData(0.04)]
    [InlineData(0.49)]
    [InlineData(0.51)]
    [InlineData(3)]
    [InlineData(40)]
    [InlineData(3000)]
    public void Response_of_a_branch_is_its_integral(double x)
    {
        Span<Vector512<double>> weights = stackalloc Vector512<double>[Collocation.Count];
        Collocation.Branch(Vector512.Create(1.0), x, weights, out var decay);
        Assert.Equal(Math.Exp(-x), decay[0], 1e-15);
        for (var m = 0; m < Collocation.Count; m++)
        {
            double sum = 0, response = 0;
            for (var k = 0; k <= 20_000; k++)
            {
                var u = k / 20_000.0;
                var weight = k is 0 or 20_000 ? 1 : k % 2 == 1 ? 4 : 2;
                sum += weight * Math.Pow(u, m) * Math.Exp(-x * (1 - u));
            }

            for (var j = 0; j < Collocation.Count; j++)
                response += weights[j][0] * Math.Pow(Collocation.Nodes[j], m);
            Assert.Equal(sum / 60_000, response, 1e-5 * Math.Max(1e-6, response) * (x > 1000 ? 1 : 1e-4));
        }
    }

    private static double End(double celsius, double tolerance) =>
        Packs.Default.Run(celsius, Packs.Takes, options: new DischargeOptions { RelativeTolerance = tolerance }).EndTime.Seconds;
}
