using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Tests.Batteries;

/// <summary>What the browser works out lane by lane is what vectors give elsewhere, to a rounding.</summary>
public class PlainCircuitTests
{
    // The last one asks for more than the pack can give.
    [Theory]
    [InlineData(0, 3, 0.1)]
    [InlineData(60, 0, 0)]
    [InlineData(60, 1, 0.2)]
    [InlineData(20_000, 0, 0)]
    public void The_circuit_is_alike(double watts, double amperes, double siemens)
    {
        var pack = new PackParameters(Packs.Default);
        var start = new PackState(0.62, 0.01, 0.02, 268, pack.HasFarWell ? 0.03 : 0);
        var pieces = new SmoothRange(pack, start, 1e-10).At(start);
        var draw = new TerminalDraw(watts, amperes, siemens);
        var states = StateLanes.Same(start) with
        {
            Charge = Vector512.Create(0.62, 0.619, 0.617, 0.61, 0.605, 0.6, 0.618, 0.612),
            Kelvin = Vector512.Create(268.0, 268.1, 268.2, 268.4, 268.8, 269, 268.05, 268.3),
        };

        Circuit.Solve(pack, pieces, draw, states, Vector512.Create(265.0), out var vectors);
        PlainCircuit.Solve(pack, pieces, draw, states, Vector512.Create(265.0), Vector512<double>.Count, out var plain);
        PlainCircuit.Solve(pack, pieces, draw, StateLanes.Same(start), Vector512.Create(265.0), 1, out var one);

        Assert.Equal(watts > 1000, vectors.PowerMargin[0] < 0);
        for (var lane = 0; lane < Vector512<double>.Count; lane++)
        {
            Same(vectors, lane, plain, lane);
            Same(vectors, 0, one, lane);
        }

        void Same(in CircuitLanes expected, int place, in CircuitLanes actual, int lane)
        {
            Assert.Equal(expected.Voltage[place], actual.Voltage[lane], Off(expected.Voltage[place]));
            Assert.Equal(expected.Current[place], actual.Current[lane], Off(expected.Current[place]));
            Assert.Equal(expected.Watched[place], actual.Watched[lane], Off(expected.Watched[place]));
            Assert.Equal(expected.PairDriver[place], actual.PairDriver[lane], Off(expected.PairDriver[place]));
            Assert.Equal(expected.ChargeRate[place], actual.ChargeRate[lane], Off(expected.ChargeRate[place]));
            Assert.Equal(expected.Heat[place], actual.Heat[lane], Off(expected.Heat[place]));
            Assert.Equal(expected.ChemicalPower[place], actual.ChemicalPower[lane], Off(expected.ChemicalPower[place]));
            if (watts > 0)
                Assert.Equal(expected.PowerMargin[place], actual.PowerMargin[lane], Off(expected.PowerMargin[place]));
            else
                Assert.True(double.IsPositiveInfinity(actual.PowerMargin[lane]));
            if (pack.HasFarWell)
                Assert.Equal(expected.ExchangeRate[place], actual.ExchangeRate[lane], Off(expected.ExchangeRate[place]));
        }
    }

    [Theory]
    [InlineData(0.013)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void A_state_within_a_step_is_alike(double theta)
    {
        var pack = new PackParameters(Packs.Default);
        var step = new DischargeStep(pack, ambientSlope: 1e-4);
        var start = new PackState(0.81, 0.01, 0.02, 280, pack.HasFarWell ? 0.02 : 0);
        step.Hold(new SmoothRange(pack, start, 1e-10).At(start), new TerminalDraw(40, 0, 0), 278);
        step.Begin(start);
        Assert.True(step.TrySolve(16, 1e-10, out _));

        var (vectors, plain) = (step.StateAt(theta), step.PlainStateAt(theta));

        Assert.Equal(vectors.Charge, plain.Charge, 1e-14);
        Assert.Equal(vectors.Voltage1, plain.Voltage1, 1e-14);
        Assert.Equal(vectors.Voltage2, plain.Voltage2, 1e-14);
        Assert.Equal(vectors.Kelvin, plain.Kelvin, 1e-11);
        Assert.Equal(vectors.Lag, plain.Lag, 1e-14);
        Assert.NotEqual(start, plain);
    }

    [Fact]
    public void The_lag_within_a_step_is_alike()
    {
        var pack = new PackParameters(Packs.Default);
        Assert.True(pack.HasFarWell);
        var lag = new LagBranch(pack);
        Circuit.SolveOne(pack, new SmoothRange(pack, new(0.6, 0, 0, 280, 0.02), 1e-10).At(new(0.6, 0, 0, 280, 0.02)),
            new TerminalDraw(40, 0, 0), new(0.6, 0, 0, 280, 0.02), 280, out var first);
        lag.Begin();
        lag.Set(0.02, first);
        lag.Guess(20, first);

        Each.Of([0.1, 0.4, 1], theta => Assert.Equal(lag.At(theta), lag.PlainAt(theta), 1e-14));
    }

    private static double Off(double value) => 1e-12 * Math.Max(1e-6, Math.Abs(value));
}
