using RigScenarios.Days;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Tests.Files;

namespace RigScenarios.Tests.Simulation;

/// <summary>
/// Copper in air that warms or cools: one run through a straight line of air must agree with many short pieces of constant air.
/// The battery of this rig
/// has no resistance and knows no temperature, so that copper alone makes the difference.
/// </summary>
public sealed class SlopingAirTests
{
    private const int Pieces = 240;

    [Theory]
    [InlineData(-15, 35)]
    [InlineData(30, -20)]
    public void A_straight_line_of_air_is_many_short_pieces_of_constant_air(double from, double to)
    {
        var line = Run([new(Clock(0), Plans.Celsius(from)), new(Clock(7200), Plans.Celsius(to))]);
        var pieces = Run([.. Enumerable.Range(0, Pieces).SelectMany(i =>
        {
            var (start, end) = (7200.0 * i / Pieces, 7200.0 * (i + 1) / Pieces);
            var middle = Plans.Celsius(from + ((to - from) * (i + 0.5) / Pieces));
            return new AmbientPoint[] { new(Clock(start + 0.001), middle), new(Clock(end - 0.001), middle) };
        })]);
        var room = Run([new(Clock(0), Plans.Celsius(20))]);

        Assert.Equal(Left(pieces), Left(line), 1e-7);
        Assert.Equal(pieces.FromPacks.WattHours, line.FromPacks.WattHours, 1e-4);
        Assert.True(Math.Abs(Left(room) - Left(line)) > 1e-4, "copper at 20 °C would do as well");
    }

    // A camera and a regulator with a light behind one cable of 3 m.
    private static SimulationResult Run(AmbientPoint[] air)
    {
        const string regulator =
            "  reg: {kind: regulator, name: Reg, regulator: {input-minimum: 8 V, input-maximum: 20 V, output-voltage: 12 V, "
                + "efficiency: 85 %, own-draw: 0.2 W}}\n  short: ";
        var text = WiredScenario.Text().ReplaceLineEndings("\n")
            .Replace("  short: {kind", regulator + "{kind", StringComparison.Ordinal)
            .Replace("kit: {flat", "kit: {reg: {part: reg}, flat", StringComparison.Ordinal)
            .Replace("    devices:", "    regulators: {reg: {fed-by: box, outlet: two}}\n    devices:", StringComparison.Ordinal)
            .Replace("light: {outlet: b}", "light: {fed-by: reg}", StringComparison.Ordinal);
        var (powered, plan) = ScenarioPlan.Of(SmallScenario.Read(text), "one", []);
        plan = plan with { Days = [plan.Days[0] with { AmbientPoints = air }] };
        return DaySimulation.Run(powered, plan, new SimulationOptions(FindsReserve: false), null,
            TestContext.Current.CancellationToken);
    }

    private static double Left(SimulationResult result) => result.Batteries["flat"].ChargeLeft.DecimalFractions;

    private static TimeOnly Clock(double seconds) => new TimeOnly(8, 0).Add(TimeSpan.FromSeconds(seconds));
}
