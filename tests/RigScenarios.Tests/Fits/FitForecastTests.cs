using RigScenarios.Fits;
using UnitsNet;
using static RigScenarios.Tests.Fits.Noted;

namespace RigScenarios.Tests.Fits;

public sealed class FitForecastTests
{
    private static readonly FitResult Fitted = Fit(Exact(0.8, 1.3, Run(30), Run(45), Run(22, celsius: 2)));

    [Fact]
    public void A_run_is_foreseen_as_the_fitted_battery_runs()
    {
        var run = Run(35, celsius: 5);

        var forecast = Fitted.Forecast(run, TestContext.Current.CancellationToken);

        var minutes = Minutes(run, Fitted[UnknownKind.Capacity].Value, Fitted[UnknownKind.Resistance].Value,
            Fitted[UnknownKind.Load].Value);
        Assert.Equal(minutes, forecast.Runtime.Minutes, 1e-4 * minutes);
    }

    [Fact]
    public void The_day_errs_by_use_model_and_start()
    {
        // docs/calibration.md: 0.04 for use, 0.02 for the model from 0 °C up, 0.01 for a full battery.
        Assert.Equal(Math.Sqrt(0.0016 + 0.0004 + 0.0001), Day(Run(30)), 1e-12);
        Assert.Equal(Math.Sqrt(0.0001 + 0.0004 + 0.0001), Day(Run(30) with { Steady = true }), 1e-12);
        Assert.Equal(Math.Sqrt(0.0016 + 0.0009 + 0.0001), Day(Run(30, celsius: -5)), 1e-12);
        Assert.Equal(Math.Sqrt(0.0016 + 0.0025 + 0.0001), Day(Run(30, celsius: -15)), 1e-12);
        Assert.Equal(Math.Sqrt(0.0016 + 0.0025 + 0.0001), Day(Run(90)), 1e-12);
        Assert.Equal(Math.Sqrt(0.0016 + 0.0004 + (0.05 / 0.8 * (0.05 / 0.8))), Day(Run(30, charge: 0.8)), 1e-12);

        static double Day(BatteryRun run) => Fitted.Forecast(run, TestContext.Current.CancellationToken).DayDeviation;
    }

    [Fact]
    public void The_chance_is_a_half_at_the_forecast_and_falls_with_the_time()
    {
        var forecast = Fitted.Forecast(Run(30), TestContext.Current.CancellationToken);

        Assert.Equal(0.5, forecast.ChanceToLast(forecast.Runtime).DecimalFractions, 1e-9);
        Assert.Equal(0.975, forecast.ChanceToLast(forecast.Low).DecimalFractions, 1e-6);
        Assert.Equal(0.025, forecast.ChanceToLast(forecast.High).DecimalFractions, 1e-6);
        Assert.True(forecast.IsClose(forecast.Runtime * 1.02));
        Assert.False(forecast.IsClose(forecast.Low * 0.99));
        Assert.InRange(forecast.ShareOfBattery.DecimalFractions, 0, 1);
        Assert.Throws<ArgumentOutOfRangeException>(() => forecast.ChanceToLast(Duration.Zero));
    }

    [Fact]
    public void A_test_leaves_what_was_promised_of_it()
    {
        var run = Run(30);
        var promised = Fitted.NextTest(run, [new CandidateBenchTest("scale", BenchQuantity.Capacity, null, 0.015)],
            TestContext.Current.CancellationToken);

        var after = Fit(Fitted.Problem.Notes, tests: [DoneTest.OfCapacity(Fitted[UnknownKind.Capacity].Value)]);

        // A straight line promised it, the fit is curved a little.
        var kept = after.Forecast(run, TestContext.Current.CancellationToken).BatteryDeviation;
        Assert.Equal(kept, promised.Tests[0].BatteryDeviationAfter, 0.01 * kept);
        Assert.True(promised.Best!.Gain >= Duration.Zero);
    }

    [Fact]
    public void The_first_of_about_equal_tests_is_advised()
    {
        var twice = new CandidateRun("one", Run(30));

        var next = Fitted.NextTest(Run(30), [new CandidateBenchTest("nothing", BenchQuantity.DevicePower, "lamp", 5), twice,
            new CandidateRun("other", Run(30))], TestContext.Current.CancellationToken);

        Assert.Equal("one", next.Best!.Test);
        Assert.Null(Fitted.NextTest(Run(30), [], TestContext.Current.CancellationToken).Best);
    }

    [Fact]
    public void A_run_that_draws_nothing_is_refused() => Assert.Throws<ArgumentException>(() =>
        Fitted.Forecast(Run(0), TestContext.Current.CancellationToken));
}
