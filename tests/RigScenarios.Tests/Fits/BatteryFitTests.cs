using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using UnitsNet;
using static RigScenarios.Tests.Fits.Noted;

namespace RigScenarios.Tests.Fits;

public sealed class BatteryFitTests
{
    [Fact]
    public void Without_data_the_answer_is_what_was_believed_before()
    {
        var result = Fit([]);

        Assert.True(result.Found);
        Assert.Equal(0, result.Data);
        Each.Of(result.Estimates, one =>
        {
            Assert.Equal(one.Prior.Mean, one.Log, 1e-9);
            Assert.Equal(one.Prior.Deviation, one.StandardError, 1e-9);
        }, atLeast: 3);
    }

    [Fact]
    public void Priors_of_an_age_are_as_wide_as_the_page_says()
    {
        var priors = FitPriors.Of(new Age(Ratio.FromPercent(80), 1.5));

        Assert.Equal(Math.Log(0.8), priors.Capacity.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(0.0025 + (0.25 * Math.Pow(Math.Log(0.8), 2))), priors.Capacity.Deviation, 1e-12);
        Assert.Equal(Math.Log(1.5), priors.Resistance.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(0.0625 + (0.25 * Math.Pow(Math.Log(1.5), 2))), priors.Resistance.Deviation, 1e-12);
        Assert.Equal(0.05, FitPriors.Of(Age.New).Capacity.Deviation, 1e-12);
    }

    [Fact]
    public void Long_runs_on_a_known_load_find_the_capacity()
    {
        var priors = Priors with { Load = null };
        var runs = Enumerable.Range(0, 12).Select(i => Run(20 + i, celsius: 25) with { Steady = true }).ToArray();

        var result = Fit(Exact(0.75, 1.3, runs), priors);

        // The prior says 0.88 with a deviation of 8 %: it pulls a little.
        Assert.Equal(0.75, result[UnknownKind.Capacity].Value, 0.01);
        Assert.InRange(result[UnknownKind.Capacity].StandardError, 0.002, 0.02);
        Assert.Equal(result[UnknownKind.Capacity].Value, result.Age.CapacityLeft.DecimalFractions, 1e-12);
    }

    [Fact]
    public void Capacity_and_one_scale_of_all_loads_are_told_as_inseparable()
    {
        var result = Fit(Exact(0.75, 1.2, Run(30), Run(40), Run(25)));

        var pair = Assert.Single(result.Inseparable);
        Assert.Equal((UnknownKind.Capacity, UnknownKind.Load), (pair.First.Kind, pair.Second.Kind));
        Assert.Equal((false, true), (pair.FirstIsMore, pair.SecondIsMore));
        Assert.True(result.Correlation[0][2] > 0.8);
    }

    [Fact]
    public void A_capacity_test_separates_them()
    {
        var result = Fit(Exact(0.75, 1.2, Run(30), Run(40), Run(25)), tests: [DoneTest.OfCapacity(0.75)]);

        Assert.Empty(result.Inseparable);
        Assert.Equal(0.75, result[UnknownKind.Capacity].Value, 0.005);
        Assert.Equal(1, result[UnknownKind.Load].Value, 0.03);
    }

    [Fact]
    public void A_note_that_fits_to_nothing_is_left_out_by_name()
    {
        var notes = Exact(0.85, 1.2, Run(30), Run(40), Run(25), Run(35)).ToList();
        notes[1] = notes[1] with { Runtime = notes[1].Runtime!.Value * 1.6 };

        var result = Fit(notes);

        var miss = Assert.Single(result.Outliers);
        Assert.Equal("n2", miss.Note);
        Assert.True(miss.Deleted > 3);
        Assert.True(result.Notes[1].LeftOut);
        Assert.Equal(3, result.Data);
    }

    [Fact]
    public void No_more_than_a_quarter_of_the_notes_goes()
    {
        var notes = Exact(0.85, 1.2, Run(30), Run(40), Run(25), Run(35)).ToList();
        notes[1] = notes[1] with { Runtime = notes[1].Runtime!.Value * 2 };
        notes[2] = notes[2] with { Runtime = notes[2].Runtime!.Value / 2 };

        var result = Fit(notes);

        Assert.Single(result.Outliers);
        Assert.NotEmpty(result.Doubtful);
        Assert.True(result.Inflation > 1);
    }

    [Fact]
    public void Of_two_notes_none_goes()
    {
        var notes = Exact(0.85, 1.2, Run(30), Run(40)).ToList();
        notes[1] = notes[1] with { Runtime = notes[1].Runtime!.Value * 2 };

        Assert.Empty(Fit(notes).Outliers);
    }

    [Fact]
    public void A_battery_that_still_ran_is_not_smaller_than_that()
    {
        var run = Run(30);
        var expected = Minutes(run, 0.88, 1.2);

        var longer = Fit([Still("n1", run, 1.25 * expected)]);
        var shorter = Fit([Still("n1", run, 0.5 * expected)]);

        Assert.True(longer[UnknownKind.Capacity].Value > 0.89);
        Assert.Equal(0.88, shorter[UnknownKind.Capacity].Value, 1e-4);
        Assert.Equal(0, longer.Data);
        Assert.True(longer.Cost > longer.ChiSquared);
    }

    [Fact]
    public void A_percentage_that_was_shown_counts()
    {
        var run = Run(30);
        var half = 0.5 * Minutes(run, 0.88, 1.2);

        var result = Fit([Still("n1", run, half, percent: 20)]);

        Assert.Equal(1, result.Data);
        Assert.True(result[UnknownKind.Capacity].Value < 0.87);
    }

    [Fact]
    public void An_interval_that_is_not_normal_is_taken_from_the_profile()
    {
        var result = Fit([Still("n1", Run(30), 1.25 * Minutes(Run(30), 0.88, 1.2))], checks: true);

        Each.Of(result.Estimates, one => Assert.NotNull(one.ProfileCheck), atLeast: 3);
        Each.Of(result.Estimates.Where(one => one.ByProfile), one => Assert.True(one.LogLow < one.Log && one.Log < one.LogHigh),
            atLeast: 0);
    }

    [Fact]
    public void What_cannot_be_fitted_is_told_all_at_once()
    {
        var nothing = Note("n1", Run(0), 60);
        var both = Note("n1", Run(20), 60) with { StillRunning = Duration.FromMinutes(10) };
        var endless = Note("n3", Run(20) with { Stretches = [new RunStretch(Duration.FromHours(1), [])] }, 60);

        var error = Assert.Throws<ArgumentException>(() => new FitProblem(Pack, Priors, [nothing, both, endless], null,
            [DoneTest.OfMeter("lamp", 1), DoneTest.OfCapacity(-1)]));

        string[] wanted = ["Two notes are called n1", "n1 draws nothing", "n1 has both", "Note n3, stretch 1", "gave -1"];
        Each.Of(wanted, part => Assert.Contains(part, error.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_run_that_no_such_battery_could_begin_is_left_out_and_not_believed()
    {
        var notes = Exact(0.85, 1.2, Run(30), Run(40), Run(25)).Append(Note("n4", Run(5000), 60)).ToList();

        var result = Fit(notes);

        Assert.Equal("n4", Assert.Single(result.Outliers).Note);
        Assert.Equal(1, result.Notes[3].Predicted.Seconds, 1e-9);
        Assert.True(result.Found);
    }

    [Fact]
    public void A_log_without_a_current_is_refused_with_the_other_problems()
    {
        var log = new PowerLog { Id = "l1", Rows = LogRows.Of([0, 60, 120], [16, 16, 16], [0, 0, 0]),
            Ambient = Temperature.FromDegreesCelsius(20) };

        var error = Assert.Throws<ArgumentException>(() => new FitProblem(Pack, Priors, [Note("n1", Run(0), 60)], [log]));

        Assert.Contains("Log l1: No current", error.Message, StringComparison.Ordinal);
        Assert.Contains("n1 draws nothing", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_ends_with_all_of_it_and_a_cancelled_fit_stops()
    {
        var told = new List<double>();
        var problem = new FitProblem(Pack, Priors, Exact(0.8, 1.2, Run(30), Run(40)));

        BatteryFit.Find(problem, new Told(told), TestContext.Current.CancellationToken);

        Assert.Equal(1, told[^1]);
        Each.Step(told, (one, next) => Assert.True(next >= one));
        Assert.ThrowsAny<OperationCanceledException>(() => BatteryFit.Find(problem, null, new CancellationToken(canceled: true)));
    }

    [Fact]
    public void Known_devices_do_not_scale()
    {
        var priors = Priors with { KnownDevices = ["camera"] };

        var result = Fit(Exact(0.75, 1.2, Run(30), Run(40)), priors);

        Assert.Equal(0, result[UnknownKind.Load].Log, 1e-9);
        Assert.Empty(result.Inseparable);
    }

    [Fact]
    public void Air_that_was_colder_than_stated_is_found_where_it_is_asked()
    {
        var priors = Priors with { AmbientDeviation = TemperatureDelta.FromKelvins(2) };
        var cold = Run(30, celsius: -10);
        var warm = Run(30, celsius: 20);

        var notes = new[]
        {
            Note("n1", warm, Minutes(warm, 0.88, 1.2)), Note("n2", cold, Minutes(Run(30, celsius: -16), 0.88, 1.2)),
        };

        var result = Fit(notes, priors);

        Assert.True(result[UnknownKind.AmbientOffset].Value < -0.1);
    }

    private sealed class Told(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
