using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Discharges;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Discharges;

/// <summary>Days as discharges, each run by the single run, against the simulation of the same days.</summary>
public sealed class DayEndsTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("winter-harbour.yaml", "tripod", "day-one")]
    [InlineData("winter-harbour.yaml", "shoulder", "day-two")]
    [InlineData("winter-harbour.yaml", "tripod", "day-one,day-two,day-three")]
    [InlineData("night-dolly.yaml", "heavy-lead", "night")]
    [InlineData("pottery-class.yaml", "tripod", "firing")]
    [InlineData("market-hall.yaml", "hand", "morning")]
    [InlineData("teaching-kit.yaml", "full-rig", "workshop")]
    public void Drawn_scenarios_of_the_demos_end_as_the_simulation_says(string file, string build, string days)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var names = days.Split(',');
        Shared.Drawn.Cases(100, 25, 12, (random, looked) => Compare(ScenarioPath.SetAll(scenario,
        [
            .. names.Select(day => ($"days.{day}.ambient", $"{Between(random, -15, 30)} °C")),
            ($"builds.{build}.battery.load-scale", Between(random, 0.7, 1.4)),
            ($"builds.{build}.battery.capacity-left", $"{Between(random, 60, 100)} %"),
            ($"builds.{build}.battery.charge", $"{Between(random, 20, 100)} %"),
        ]), build, names, looked));
    }

    // A battery without resistance: what ends a day, and what is missed, can be drawn at will.
    [Theory]
    [InlineData("{a: {length: 1 h, others: record}, b: {length: 2 h, others: off}, c: {length: 1 h, others: record}}")]
    [InlineData("{a: {length: 1 h, others: record}, b: {length: 1 h, states: {light: record}}, c: {length: 1 h, "
        + "states: {camera: standby}}}")]
    [InlineData("{a: {length: 2 h, others: record, cycle: {take: 3 min, reset: 7 min}}, b: {length: 1 h, others: off}}")]
    [InlineData("{a: {length: 30 min, others: record, rolling: yes}, b: {length: 2 h, states: {light: record}}}")]
    public void Drawn_days_end_as_the_simulation_says(string blocks)
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(
            devices: "{camera: {essential: yes}, light: {essential: yes, count: 2}}", build: "plate: plate", blocks: blocks));
        Shared.Drawn.Cases(1, 40, 30, (random, looked) => Compare(ScenarioPath.SetAll(scenario,
        [
            ("builds.one.battery.charge", $"{Between(random, 2, 100)} %"),
            ("builds.one.devices.light.essential", random.Next(2) == 0 ? "yes" : "no"),
            ("builds.one.battery.load-scale", Between(random, 0.5, 2)),
        ]), "one", ["day"], looked));
    }

    [Theory]
    [InlineData("island-crossing.yaml", "tripod", "Several batteries take turns.")]
    [InlineData("river-ferry.yaml", "tripod", "The temperature of the air changes through the day.")]
    public void What_is_more_than_a_discharge_says_why(string file, string build, string why) =>
        Assert.Equal(why, DayDischarges.WhyNot(Days(ScenarioFile.Read(Repository.Data("scenarios", file)), build, [])));

    [Fact]
    public void A_reserve_that_is_given_up_is_a_lower_bound_in_both()
    {
        var days = Days(SmallScenario.Read(SmallScenario.Text(
            devices: "{camera: {essential: yes, power: {record: 0.1 W}}}")), "one", []);
        var discharges = DayDischarges.Of(days, new ReducedRig(days))!;
        var read = new DayEnds(discharges).Read([EndOf(discharges, 0)])!;
        var simulated = DayFigures.Of(days.Run("one", Cancellation));
        Assert.Equal((true, true, null), (read.Lasts, read.ReserveIsLowerBound, read.StoppedBy));
        Assert.Equal((simulated.Lasts, simulated.ReserveIsLowerBound, simulated.StoppedBy),
            (read.Lasts, read.ReserveIsLowerBound, read.StoppedBy));
        Assert.Equal(simulated.Reserve!.Value, read.Reserve!.Value, 1e-6);
        Assert.Equal(simulated.Runtime!.Value, read.Runtime!.Value, 1e-6);
    }

    [Fact]
    public void Without_an_essential_device_nothing_can_be_missed() => Assert.Equal("No device is essential.",
        DayDischarges.WhyNot(Days(SmallScenario.Read(SmallScenario.Text(devices: "{camera: {}}")), "one", [])));

    [Fact]
    public void An_end_that_grazes_a_limit_says_nothing()
    {
        var days = Days(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")), "tripod", ["day-one"]);
        var discharges = DayDischarges.Of(days, new ReducedRig(days))!;
        var end = EndOf(discharges, 0);
        Assert.NotNull(new DayEnds(discharges).Read([end]));
        end.GrazesLimit = true;
        Assert.Null(new DayEnds(discharges).Read([end]));
    }

    private static void Compare(Scenario scenario, string build, string[] days, LookedAt looked)
    {
        var swept = Days(scenario, build, days);
        Assert.Null(DayDischarges.WhyNot(swept));
        if (DayDischarges.Of(swept, new ReducedRig(swept)) is not { } discharges)
            return;
        var ends = Enumerable.Range(0, discharges.Limits.Length).Select(day => EndOf(discharges, day)).ToArray();
        if (new DayEnds(discharges).Read(ends) is not { } read)
            return;
        looked.One();
        var simulated = DayFigures.Of(swept.Run(build, Cancellation));
        Assert.Equal((simulated.Lasts, simulated.StoppedBy, simulated.StoppedIn, simulated.ReserveIsLowerBound),
            (read.Lasts, read.StoppedBy, read.StoppedIn, read.ReserveIsLowerBound));
        // What the formula of a wiring with long cables is off by is the most of it.
        Assert.Equal(simulated.Runtime!.Value, read.Runtime!.Value, 3e-4 * (0.01 + simulated.Runtime.Value));
        Assert.Equal(simulated.Reserve!.Value, read.Reserve!.Value, 3e-4 * (0.01 + simulated.Runtime.Value));
        Assert.Equal(simulated.EndsAt!.Value, read.EndsAt!.Value, 3e-4 * (0.01 + simulated.Runtime.Value));
    }

    private static SweptDays Days(Scenario scenario, string build, string[] days) =>
        SweptDays.Of(scenario, build, days, null, Cancellation);

    private static string Between(Random random, double low, double high) =>
        (low + ((high - low) * random.NextDouble())).ToString("F3", System.Globalization.CultureInfo.InvariantCulture);

    // The single run watches one voltage: it goes from segment to segment.
    private static BatchCaseEnd EndOf(DayDischarges discharges, int day)
    {
        var one = discharges.CaseOf(day, new CurvesInUse().Of(discharges.Pack));
        var start = new DischargeStart
        {
            StateOfCharge = Ratio.FromDecimalFractions(one.Charge), Temperature = Temperature.FromKelvins(one.Kelvin),
        };
        for (var (segment, seconds) = (0, 0.0); ; segment++)
        {
            var i = segment % one.Demand.Lengths.Length;
            var pack = discharges.Pack with { CutoffVoltage = ElectricPotential.FromVolts(one.Demand.EndVoltages![i]) };
            var length = Math.Min(one.Demand.Lengths[i], one.TimeLimit - seconds);
            var run = new DischargeRun(new PackParameters(pack), Temperature.FromKelvins(one.AmbientKelvin), start,
                new DemandCursor([new TerminalDraw(one.Demand.Powers[i], one.Demand.Currents[i], one.Demand.Conductances[i])],
                    [length], 0),
                new DischargeOptions { TimeLimit = Duration.FromSeconds(length), SeriesPoints = 0 }, null, 0)
                .Run(Cancellation);
            seconds += run.EndTime.Seconds;
            if (run.Cause != EndCause.TimeLimit || seconds >= one.TimeLimit - 1e-6)
                return new() { Seconds = seconds, Cause = run.Cause, AtStep = run.AtStep, SegmentsFinished = segment };
            start = run.FinalState;
        }
    }
}
