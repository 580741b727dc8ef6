using RigScenarios.Batteries;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>Where a run ends, and in which order the causes count.</summary>
public class DischargeEventTests
{
    [Fact]
    public void Watched_voltage_stops_the_run_and_it_can_go_on_with_less()
    {
        var watch = new DischargeOptions { WatchedVoltage = ElectricPotential.FromVolts(13) };

        var first = Packs.Default.Run(0, Packs.Takes, options: watch);

        Assert.Equal(EndCause.WatchedVoltage, first.Cause);
        if (!first.AtStep)
            Assert.Equal(13, first.EndVoltage!.Value.Volts, 1e-9);
        Assert.InRange(first.FinalState.DemandOffset.Seconds, 0, Packs.Takes.Period.Seconds);

        var lighter =
            new Demand(Packs.Takes.Segments.Select(segment => segment with { ConstantPower = segment.ConstantPower / 4 }));
        var second = Packs.Default.Run(0, lighter, first.FinalState, watch);
        Assert.True(second.EndTime > Duration.Zero);
        Assert.Equal(EndCause.WatchedVoltage, second.Cause);
    }

    [Fact]
    public void Watched_voltage_right_after_a_step_comes_before_the_cutoff_and_after_the_power_limit()
    {
        var demand = new Demand([Packs.Watts(100, 1), Packs.Watts(100, 130)]);
        var full = Packs.Default.Run(20, demand, options: new DischargeOptions { TimeLimit = Duration.FromSeconds(150) });
        var dip = full.Series.First(point => point.Power.As(UnitsNet.Units.PowerUnit.Watt) > 100).Voltage;
        var strict = Packs.Default with { CutoffVoltage = dip + ElectricPotential.FromVolts(0.1) };
        var watch = new DischargeOptions { WatchedVoltage = dip + ElectricPotential.FromVolts(0.05) };

        var watched = strict.Run(20, demand, options: watch);
        Assert.Equal((EndCause.WatchedVoltage, true, 100.0), (watched.Cause, watched.AtStep, watched.EndTime.Seconds));
        var cut = strict.Run(20, demand);
        Assert.Equal((EndCause.VoltageCutoff, true, 100.0), (cut.Cause, cut.AtStep, cut.EndTime.Seconds));
        var impossible = strict.Run(20, new Demand([Packs.Watts(100, 1), Packs.Watts(100, 5000)]), options: watch);
        Assert.Equal((EndCause.PowerLimit, true, 100.0), (impossible.Cause, impossible.AtStep, impossible.EndTime.Seconds));
        Assert.Null(impossible.EndVoltage);
    }

    [Fact]
    public void Voltage_that_only_grazes_the_cutoff_ends_the_run()
    {
        // A cold pack that warms itself: its voltage falls, rises again, and falls in the end. Flat open-circuit voltage, strong
        // cold.
        var pack = PackModel.From(Packs.Label with { NearShare = 1 }, null, null, null).Pack with
        {
            OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 0.02, 1], [3.0, 3.6, 3.7]),
            ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(45),
            HeatCapacity = Entropy.FromJoulesPerKelvin(150),
            CutoffVoltage = ElectricPotential.FromVolts(6),
            UsableCapacity = UsableCapacity.Full,
        };
        var demand = Demand.OfPower(Power.FromWatts(50));
        var series = pack.Run(-20, demand).Series;
        var volts = series.Select(point => point.Voltage.Volts).ToArray();
        var i = Enumerable.Range(1, volts.Length - 2).First(k => volts[k] < volts[k - 1] && volts[k] < volts[k + 1]);

        // The least voltage between the points, from finer runs: well below the lowest point of this one.
        var until = series[i + 1].Time.Seconds;
        var least = new[] { 1e-7, 1e-8, 1e-9, 1e-10 }.Min(tolerance => pack
            .Run(-20, demand, options: new DischargeOptions { RelativeTolerance = tolerance, SeriesPoints = 100_000 })
            .Series.Where(point => point.Time.Seconds < until).Min(point => point.Voltage.Volts));
        Assert.True(volts[i] - least > 5e-4, "the lowest point is the minimum itself: choose another pack");

        var grazed = pack with { CutoffVoltage = ElectricPotential.FromVolts(least + (0.1 * (volts[i] - least))) };
        var result = grazed.Run(-20, demand);
        Assert.Equal(EndCause.VoltageCutoff, result.Cause);
        Assert.InRange(result.EndTime.Seconds, series[i - 1].Time.Seconds, until);
        Assert.Equal(grazed.CutoffVoltage.Volts, result.EndVoltage!.Value.Volts, 1e-9);

        var missed = pack with { CutoffVoltage = ElectricPotential.FromVolts(least - (0.5 * (volts[i] - least))) };
        Assert.True(missed.Run(-20, demand).EndTime.Seconds > 10 * until);
    }

    [Fact]
    public void Condition_at_the_start_ends_the_run_at_once()
    {
        var empty = Packs.Default.Run(20, Packs.Takes, DischargeStart.Full with { StateOfCharge = Ratio.Zero });
        Assert.Equal(0, empty.EndTime.Seconds);
        Assert.True(empty.AtStep);

        var hot = Packs.Default.Run(20, Packs.Takes,
            DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(60) });
        Assert.Equal((EndCause.OverTemperature, 0.0), (hot.Cause, hot.EndTime.Seconds));
    }

    [Fact]
    public void Current_that_equals_the_limit_ends_the_run_and_less_does_not()
    {
        var pack = Packs.Default with { MaximumCurrent = ElectricCurrent.FromAmperes(3) };

        Assert.Equal(EndCause.OverCurrent, pack.Run(20, Demand.OfCurrent(ElectricCurrent.FromAmperes(3))).Cause);
        Assert.NotEqual(EndCause.OverCurrent, pack.Run(20, Demand.OfCurrent(ElectricCurrent.FromAmperes(2.999999))).Cause);
    }

    [Fact]
    public void Time_limit_comes_before_the_segment_that_would_begin_then()
    {
        var demand = new Demand([Packs.Watts(100, 1), Packs.Watts(100, 5000)]);

        var result = Packs.Default.Run(20, demand, options: new DischargeOptions { TimeLimit = Duration.FromSeconds(100) });

        Assert.Equal((EndCause.TimeLimit, 100.0), (result.Cause, result.EndTime.Seconds));
        Assert.Equal(EndCause.PowerLimit, Packs.Default.Run(20, demand, result.FinalState).Cause);
    }

    [Fact]
    public void Rest_ends_at_the_longest_run()
    {
        var result = Packs.Default.Run(20, Demand.OfPower(Power.Zero));

        Assert.Equal(EndCause.TimeLimit, result.Cause);
        Assert.Equal(DischargeOptions.LongestRun.Seconds, result.EndTime.Seconds);
    }

    [Fact]
    public void Pack_that_rests_on_an_edge_of_the_cold_table_runs_on()
    {
        // 25 °C is a point of the default cold table, and the reference temperature.
        var result = Packs.Default.Run(25, new Demand([Packs.Watts(60, 0), Packs.Watts(60, 20)]));

        Assert.Contains(result.Cause, new[] { EndCause.VoltageCutoff, EndCause.Empty });
    }

    [Fact]
    public void Cancelled_run_stops()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => Discharge.Run(
            Packs.Default, Temperature.FromDegreesCelsius(20), DischargeStart.Full, Packs.Takes,
            DischargeOptions.Default, source.Token));
    }
}
