using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using RigScenarios.Batteries;

namespace RigScenarios.Tests.Batteries;

/// <summary>A battery at rest in air that warms or cools, against the equations of docs/discharge.md stepped by another solver
/// (the Runge-Kutta of MathNet.Numerics).</summary>
public sealed class PackRestTests
{
    private static readonly PackParameters Parameters = new(Packs.Default);

    [Theory]
    [InlineData(-5, 20, 0, 1, 1800)]
    [InlineData(20, -10, 5, 1, 7200)]
    [InlineData(12, 12, -8, 3, 14400)]
    [InlineData(30, 5, 0.5, 0.2, 43200)]
    public void It_follows_the_air(double celsius, double air, double kelvinAnHour, double factor, double seconds)
    {
        var start = Rested(celsius);
        var after = PackRest.After(Parameters, start, 273.15 + air, kelvinAnHour / 3600, factor, seconds);
        var stepped = Stepped(start, 273.15 + air, kelvinAnHour / 3600, factor, seconds);
        Assert.Equal(stepped[0], after.Kelvin, 1e-6);
        Assert.Equal(stepped[1], after.Charge, 1e-9);
        Assert.Equal(stepped[2], after.Voltage1, 1e-9);
        Assert.Equal(stepped[3], after.Voltage2, 1e-9);
        Assert.Equal(stepped[4], after.Lag, 1e-7);
    }

    [Theory]
    [InlineData(20, -10, 6, 1)]
    [InlineData(-15, 15, -4, 2)]
    public void Two_rests_after_each_other_are_one(double celsius, double air, double kelvinAnHour, double factor)
    {
        var (slope, first, second) = (kelvinAnHour / 3600, 2700, 5400);
        var whole = PackRest.After(Parameters, Rested(celsius), 273.15 + air, slope, factor, first + second);
        var half = PackRest.After(Parameters, Rested(celsius), 273.15 + air, slope, factor, first);
        var both = PackRest.After(Parameters, half, 273.15 + air + (slope * first), slope, factor, second);
        Assert.Equal(whole.Kelvin, both.Kelvin, 1e-9);
        Assert.Equal(whole.Charge, both.Charge, 1e-10);
        Assert.Equal(whole.Lag, both.Lag, 1e-8);
    }

    // Air that turns the battery round: it cools first and warms with the morning, so that the window is met on the way back.
    [Theory]
    [InlineData(-10, 25, 0, 1, 5, 40)]
    [InlineData(50, 20, 0, 2, 0, 40)]
    [InlineData(-2, -20, 12, 1, 0, 45)]
    [InlineData(-12, 20, -10, 1, 0, 45)]
    [InlineData(2, -9, 12, 1, 3, 45)]
    public void The_moment_at_which_it_may_be_charged_is_that_of_the_stepped_course(double celsius, double air,
        double kelvinAnHour, double factor, double low, double high)
    {
        const double length = 6 * 3600;
        var slope = kelvinAnHour / 3600;
        var found = PackRest.TimeUntilWithin(Parameters, 273.15 + celsius, 273.15 + air, slope, factor, 273.15 + low,
            273.15 + high, length);
        double At(double seconds) => seconds == 0 ? celsius
            : Stepped(Rested(celsius), 273.15 + air, slope, factor, seconds)[0] - 273.15;
        Assert.InRange(found, 1, length);
        Assert.Equal(celsius < low ? low : high, At(found), 1e-3);
        // And at none before.
        var before = Enumerable.Range(0, 50).Select(part => At(found * part / 50.5)).ToList();
        Assert.DoesNotContain(before, kelvin => kelvin > low && kelvin < high);
    }

    [Fact]
    public void A_place_that_never_gets_warm_enough_gives_no_moment()
    {
        double Until(double celsius, double air, double slope, double seconds) => PackRest.TimeUntilWithin(
            Parameters, 273.15 + celsius, 273.15 + air, slope, 1, 278.15, 313.15, seconds);
        Assert.Equal(double.PositiveInfinity, Until(-10, 4, 0, 1e6));
        Assert.Equal(double.PositiveInfinity, Until(-10, 25, 0, 60));
        Assert.Equal(0, Until(10, -20, -1e-3, 3600));
    }

    private static PackState Rested(double celsius) => new(0.6, -0.05, -0.11, 273.15 + celsius, 0.002);

    // T' = k (Ta + s t - T) / C, z' = -d 2^((T - 20 °C) / 10 K), v' = -v / tau, l' = -l / tau(T).
    private static Vector<double> Stepped(PackState start, double air, double slope, double factor, double seconds)
    {
        Vector<double> Rates(double time, Vector<double> state) => Vector<double>.Build.DenseOfArray(
        [
            Parameters.HeatConductance * factor / Parameters.HeatCapacity * (air + (slope * time) - state[0]),
            -0.03 / (30 * 86400.0) * Math.Pow(2, (state[0] - 293.15) / 10),
            -state[2] / Parameters.TimeConstant1,
            -state[3] / Parameters.TimeConstant2,
            -state[4] * Parameters.ExchangeRateAt(state[0]),
        ]);
        var steps = Math.Max(400, (int)Math.Ceiling(seconds / (0.05 * Parameters.TimeConstant1)));
        return RungeKutta.FourthOrder(Vector<double>.Build.DenseOfArray(
            [start.Kelvin, start.Charge, start.Voltage1, start.Voltage2, start.Lag]), 0, seconds, steps, Rates)[^1];
    }
}
