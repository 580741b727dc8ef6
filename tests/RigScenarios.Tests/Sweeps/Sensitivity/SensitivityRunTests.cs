using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

/// <summary>Days whose runtime is energy over power, so that every chance and share can be worked out by hand: a flat battery of
/// 10 V and 10 Ah without resistance, a camera of 20 W, one block of 5 h.</summary>
public class SensitivityRunTests
{
    private const string Capacity = "parts.flat.battery.capacity";
    private const string Draw = "parts.camera.power.record";

    private static readonly Scenario Five = SmallScenario.Read(
        SmallScenario.Text(blocks: "{all: {length: 5 h, others: record}}"));

    [Fact]
    public void A_battery_evenly_around_the_day_lasts_every_second_time()
    {
        // T = 10 V · Q/20 W = Q/2 h, Q evenly from 8 to 12 Ah: T from 4 to 6 h, and 5 h are wanted.
        var found = Run(Question($"{Capacity}=between 8 Ah and 12 Ah"));

        Assert.Equal(0.5, found.Lasts!.Share!.Value.DecimalFractions, 0.04);
        Assert.Equal(0, found.Lasts.Unknown);
        Assert.Equal(0, found.Indices.Mean, 0.04);
        Assert.Equal(1.0 / 3, found.Indices.Variance, 0.03);
        Assert.Equal(-0.8, found.Bands.At(0.1)!.Value, 0.04);
        Assert.Equal(0.8, found.Bands.At(0.9)!.Value, 0.04);
        // It begins at 8 o'clock where nobody says.
        Assert.Equal(8 + 5, found.EndsAt!.At(0.5)!.Value, 0.07);
    }

    [Fact]
    public void Counts_and_shares_with_which_nothing_can_be_told_are_refused_by_name()
    {
        var question = Question($"{Capacity}=between 8 Ah and 12 Ah");
        (string Name, SensitivityQuestion Odd)[] odd =
        [
            (nameof(question.WholeSamples), question with { WholeSamples = -1 }),
            (nameof(question.SamplesAlong), question with { SamplesAlong = 0, Along = new(Draw, []) }),
            (nameof(question.Alone), question with { Alone = (0.9, 0.1) }),
            (nameof(question.Alone), question with { Alone = (double.NaN, 0.9) }),
            (nameof(question.Shares), question with { Shares = [] }),
            (nameof(question.Shares), question with { Shares = [0.5, 0.5] }),
            (nameof(question.Shares), question with { Shares = [0.5, 1.5] }),
        ];
        Each.Of(odd, one => Assert.Contains($"{one.Name} is ", Assert.Throws<ArgumentException>(() => Run(one.Odd)).Message,
            StringComparison.Ordinal));
    }

    [Fact]
    public void Knowing_the_only_unsure_figure_leaves_nothing_open()
    {
        var found = Run(Question($"{Capacity}=between 8 Ah and 12 Ah"));

        var gain = Assert.Single(found.Removals);
        Assert.Equal(1, gain.VarianceGone.Value, 0.02);
        Assert.Equal(0, gain.SpreadLeft, 0.09);
        Assert.Equal(0.5, gain.Lasts!.WrongNow.DecimalFractions, 0.04);
        Assert.Equal(0, gain.Lasts.WrongThen.DecimalFractions, 0.005);
    }

    [Fact]
    public void Shares_of_a_quotient_are_those_of_the_closed_form()
    {
        // T = 10·Q/P with Q evenly from 8 to 12 Ah, P evenly from 15 to 25 W, independent: with m = E[1/P] = ln(25/15)/10 and
        // E[1/P²] = 1/(15·25), Var(E[T|Q]) = 100·m²·Var(Q), Var(E[T|P]) = 100·E[Q]²·Var(1/P), and the rest is both together.
        var (meanQ, varianceQ) = (10.0, 16.0 / 12);
        var mean = Math.Log(25.0 / 15) / 10;
        var variance = (1.0 / (15 * 25)) - (mean * mean);
        var (byQ, byP) = (100 * mean * mean * varianceQ, 100 * meanQ * meanQ * variance);
        var all = byQ + byP + (100 * variance * varianceQ);

        var found = Run(Question($"{Capacity}=between 8 Ah and 12 Ah", $"{Draw}=between 15 W and 25 W") with
        {
            Options = new() { Rows = 4096, Redraws = 200 },
        });

        Assert.Equal(10 * meanQ * mean, found.Indices.Mean + 5, 0.02);
        Assert.Equal(1, found.Indices.Variance / all, 0.04);
        Assert.Equal([Draw, Capacity], found.Indices.Things.Select(thing => thing.Name));
        Assert.Equal(byP / all, found.Indices.Things[0].FirstOrder.Value, 0.05);
        Assert.Equal((all - byQ) / all, found.Indices.Things[0].Total.Value, 0.05);
        Assert.Equal(byQ / all, found.Indices.Things[1].FirstOrder.Value, 0.05);
        Assert.Equal((all - byP) / all, found.Indices.Things[1].Total.Value, 0.05);
    }

    [Fact]
    public void Alone_each_figure_goes_from_one_end_to_the_other_with_the_rest_in_the_middle()
    {
        var found = Run(Question($"{Capacity}=between 8 Ah and 12 Ah", $"{Draw}=between 15 W and 25 W"));

        Assert.Equal(0, found.Tornado.Middle, 1e-3);
        var (draw, capacity) = (found.Tornado.Bars[0], found.Tornado.Bars[1]);
        Assert.Equal((Draw, "16 W", "24 W"), (draw.Path, draw.LowText, draw.HighText));
        Assert.Equal((100.0 / 16) - 5, draw.AtLow, 1e-3);
        Assert.Equal((100.0 / 24) - 5, draw.AtHigh, 1e-3);
        Assert.Equal((84.0 / 20) - 5, capacity.AtLow, 1e-3);
        Assert.Equal((116.0 / 20) - 5, capacity.AtHigh, 1e-3);
    }

    [Fact]
    public void Figures_that_go_together_are_one_thing_and_alone_still_two_bars()
    {
        var together = Run(Question($"{Capacity}=between 8 Ah and 12 Ah", $"{Draw}=between 15 W and 25 W") with
        {
            Uncertain = UsualUncertainty.Only([UncertainField.Parse(Five, $"{Capacity}=between 8 Ah and 12 Ah"),
                UncertainField.Parse(Five, $"{Draw}=between 15 W and 25 W")], [new(Capacity, Draw, 0.8)]),
        });

        var thing = Assert.Single(together.Indices.Things);
        Assert.Equal([Capacity, Draw], thing.Paths);
        Assert.Equal(1, thing.FirstOrder.Value, 0.05);
        Assert.Equal(2, together.Tornado.Bars.Count);
        // Bars are those of each figure by itself: the other does not move with it.
        Assert.Equal((84.0 / 20) - 5, together.Tornado.Bars[1].AtLow, 1e-3);
    }

    [Fact]
    public void Bands_along_a_field_hold_the_spread_at_each_of_its_values()
    {
        var found = Run(Question($"{Capacity}=between 8 Ah and 12 Ah") with
        {
            Along = new SweepAxis(Draw, ["10 W", "20 W"]), SamplesAlong = 512, Shares = [0.25, 0.5],
        });

        Assert.Equal(Draw, found.Along!.Path);
        Assert.Equal(["10 W", "20 W"], found.Along.Places.Select(place => place.At));
        Assert.Equal(9 - 5, found.Along.Places[0].Values[0], 0.05);
        Assert.Equal(10 - 5, found.Along.Places[0].Values[1], 0.05);
        Assert.Equal(4.5 - 5, found.Along.Places[1].Values[0], 0.05);
        Assert.Equal(512, found.Along.Places[1].Known);
    }

    [Fact]
    public void The_same_seed_gives_the_same_answer()
    {
        var question = Question($"{Capacity}=10 Ah +- 1 Ah", $"{Draw}=20 W +- 2 W") with { WholeSamples = 16 };

        Assert.Equal(MattersShape.Of(Run(question)).ToJsonString(), MattersShape.Of(Run(question)).ToJsonString());
    }

    [Fact]
    public void Of_days_that_begin_charged_the_tightest_counts()
    {
        var two = SmallScenario.Read(SmallScenario.Text(blocks: "{all: {length: 5 h, others: record}}")
            + "\n  short:\n    blocks: {all: {length: 1 h, others: record}}\n");
        var spread = UsualUncertainty.Only([UncertainField.Parse(two, $"{Capacity}=between 8 Ah and 12 Ah")], []);

        var found = Run(new(two, "one", []) { Uncertain = spread, WholeSamples = 0, Options = new() { Rows = 128 } });

        // The last day alone would always last.
        Assert.Equal(0.5, found.Lasts!.Share!.Value.DecimalFractions, 0.1);
        Assert.Equal(0, found.Bands.At(0.5)!.Value, 0.15);
        Assert.Null(found.EndsAt);
    }

    [Fact]
    public void A_figure_of_the_rig_at_rest_rests_on_what_weighs()
    {
        var spread = UsualUncertainty.Only([UncertainField.Parse(Five, "parts.flat.mass=between 900 g and 1100 g")], []);

        var found = Run(new SensitivityQuestion(Five, "one", []) { Uncertain = spread, Figure = "mass_kg", WholeSamples = 0 });

        Assert.Null(found.Lasts);
        Assert.Null(found.EndsAt);
        Assert.Null(found.Removals[0].Lasts);
        Assert.Equal(1.0, found.Bands.At(0.5)!.Value, 0.02);
        Assert.Equal(0.04 / 12, found.Indices.Variance, 0.0005);
    }

    [Fact]
    public void Progress_rises_to_its_end_and_the_work_can_be_stopped()
    {
        var told = new List<double>();
        var question = Question($"{Capacity}=between 8 Ah and 12 Ah") with { WholeSamples = 8, Options = new() { Rows = 32 } };

        SensitivityRun.Of(question, new Told(told), TestContext.Current.CancellationToken);

        Each.Step(told, (one, next) => Assert.True(one <= next, $"{one}, {next}"), 2);
        Assert.Equal(1, told[^1], 0.02);
        Assert.Throws<OperationCanceledException>(() => SensitivityRun.Of(question, null, new CancellationToken(true)));
    }

    [Theory]
    [InlineData("resrve_h", "There is no column \"resrve_h\".")]
    [InlineData("stopped_by", "\"stopped_by\" is no number.")]
    [InlineData("mass_kg", "Nothing that \"mass_kg\" rests on is uncertain.", true)]
    public void What_cannot_be_asked_is_refused_in_words(string figure, string words, bool isOfDays = false)
    {
        var spread = UsualUncertainty.Only([UncertainField.Parse(Five, $"{Capacity}=between 8 Ah and 12 Ah")], []);
        if (isOfDays)
            spread = spread with { Figures = [.. spread.Figures.Select(one => one with { OnlyInDays = true })] };

        var problem = Assert.Throws<ScenarioProblemsException>(() =>
            Run(new SensitivityQuestion(Five, "one", []) { Figure = figure, Uncertain = spread }));

        Assert.StartsWith(words, problem.Problems[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_that_goes_together_must_be_uncertain_itself()
    {
        var spread = UsualUncertainty.Only([UncertainField.Parse(Five, $"{Capacity}=between 8 Ah and 12 Ah")],
            [new(Capacity, "parts.camera.power.recrd", 0.5)]);

        var problem = Assert.Throws<ScenarioProblemsException>(() =>
            Run(new SensitivityQuestion(Five, "one", []) { Uncertain = spread }));

        Assert.Contains("\"parts.camera.power.recrd\" is not uncertain", problem.Problems[0].Problem, StringComparison.Ordinal);
    }

    private static SensitivityQuestion Question(params string[] spreads) => new(Five, "one", [])
    {
        Uncertain = UsualUncertainty.Only([.. spreads.Select(text => UncertainField.Parse(Five, text))], []),
        WholeSamples = 0, Options = new() { Rows = 512, Redraws = 100 },
    };

    private static SensitivityAnswer Run(SensitivityQuestion question) =>
        SensitivityRun.Of(question, null, TestContext.Current.CancellationToken);

    private sealed class Told(List<double> all) : IProgress<double>
    {
        public void Report(double value) => all.Add(value);
    }
}
