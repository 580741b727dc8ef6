using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Tests.Files;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>That the worst of a run is found wherever it lies: also between the moments at which a step is solved, and with a
/// limit that moves.</summary>
public sealed class LimitTrackerTests
{
    /// <summary>
    /// A battery of flat voltage with 50 mΩ at once and 80 mΩ more within half a minute, both several times as large in the cold:
    /// its voltage sags, and comes
    /// back as warm air thaws it, so that the worst lies in the middle of a block. Held to half of the 1 mV and 1 mA that whole
    /// days are compared to.
    /// </summary>
    [Theory]
    [InlineData(-20, true)]
    [InlineData(-5, true)]
    [InlineData(60, false)]
    public void The_worst_in_the_middle_of_a_step_is_that_of_a_dense_series(double celsius, bool inMiddle)
    {
        var text = SmallScenario.Text(
            battery: FormattableString.Invariant($", start-temperature: {celsius} °C"), day: "ambient: 30 °C",
            blocks: "{all: {length: 20 min, others: record}}")
            .Replace("resistance-0: 0 mΩ, resistance-1: 0 mΩ", "resistance-0: 50 mΩ, resistance-1: 80 mΩ",
                StringComparison.Ordinal)
            .Replace("activation-energy: 0 kJ/mol", "activation-energy: 40 kJ/mol", StringComparison.Ordinal)
            .Replace("heat-conductance: 0.5 W/K", "heat-conductance: 3 W/K", StringComparison.Ordinal);
        var result = SmallScenario.Run(text, new SimulationOptions(SeriesPoints: 20_000, FindsReserve: false));

        var least = result.Series.MinBy(point => point.Voltage.Volts)!;
        var cutOff = Assert.Single(result.Limits, limit => limit is { Kind: LimitKind.CutOff, Case: LoadCase.Steady });
        Assert.Equal(least.Voltage.Volts, ((ElectricPotential)cutOff.Worst).Volts, 5e-4);
        Assert.Equal(least.Time.Seconds, cutOff.At!.Time.Seconds, 30.0);
        Assert.True(
            inMiddle == (least.Time.Seconds > result.Days[0].Start.Seconds + 2
                && least.Time < result.Days[0].End - Duration.FromMinutes(1)),
            $"{least.Time.Hours:F4} h, {least.Voltage.Volts:F3} V, first {result.Series[0].Voltage.Volts:F3} V, last "
                + $"{result.Series[^1].Voltage.Volts:F3} V");
        var current = Assert.Single(result.Limits,
            limit => limit is { Kind: LimitKind.Current, Element: "battery", Case: LoadCase.Steady });
        Assert.Equal(result.Series.Max(point => point.Current.Amperes), ((ElectricCurrent)current.Worst).Amperes, 5e-4);
    }

    /// <summary>
    /// By hand: 20 W at the feed's 14 V are 1.4286 A of constant current. The fuse of 4 A carries 75 % of it up to 25 °C and 0.5
    /// % less for each kelvin more
    /// (common practice, no source): at 45 °C 2.7 A. So the worst is where the air is warmest, though the current is always the
    /// same.
    /// </summary>
    [Fact]
    public void A_fuse_is_held_against_what_it_carries_in_the_air_of_the_moment()
    {
        var (powered, plan) = ScenarioPlan.Of(SmallScenario.Read(WiredScenario.Text(camera: ", power: {load: current}")), "one",
            []);
        plan = plan with
        {
            Days =
            [
                plan.Days[0] with
                {
                    AmbientPoints = [new(new(8, 0), Plans.Celsius(20)), new(new(9, 30), Plans.Celsius(45)),
                        new(new(10, 0), Plans.Celsius(30))],
                },
            ],
        };
        var result = DaySimulation.Run(powered, plan, null, null, TestContext.Current.CancellationToken);

        var fuse = Assert.Single(result.Limits, limit => limit.Kind == LimitKind.Fuse);
        Assert.Equal(20 / 14.0, ((ElectricCurrent)fuse.Worst).Amperes, 1e-9);
        Assert.Equal(2.7, ((ElectricCurrent)fuse.Allowed!).Amperes, 1e-9);
        Assert.Equal(9.5, fuse.At!.Time.Hours, 1e-6);
    }

    [Fact]
    public void No_limit_counts_in_the_reserve()
    {
        // After the day the battery is emptied: its voltage falls further than it ever did by day.
        var result = SmallScenario.Run(WiredScenario.Text(blocks: "{all: {length: 30 min, others: record}}"));
        Assert.True(result.Reserve.Time.Hours > 1);
        Each.Of(result.Limits, limit => Assert.InRange(limit.At!.Time.Hours, 8, 8.5 + 1e-9));
        var cutOff = Assert.Single(result.Limits, limit => limit is { Kind: LimitKind.CutOff, Case: LoadCase.Steady });
        Assert.True(((ElectricPotential)cutOff.Worst).Volts > 13);
    }

    [Fact]
    public void Without_limits_kept_there_are_none_and_nothing_else_changes()
    {
        var scenario = SmallScenario.Read(WiredScenario.Text());
        var (kept, ends) = (SmallScenario.RunOne(scenario, "one", "day"),
            SmallScenario.RunOne(scenario, "one", "day", SimulationOptions.EndOnly));
        Assert.Empty(ends.Limits);
        Assert.NotEmpty(kept.Limits);
        Assert.Equal(kept.Reserve.Time.Seconds, ends.Reserve.Time.Seconds, 1e-6);
        Assert.Equal(kept.FromPacks.WattHours, ends.FromPacks.WattHours, 1e-9);
    }
}
