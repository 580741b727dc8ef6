using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Tests.Sweeps.Sampling;

public sealed class PlanCheckTests
{
    private const string Energy = "parts.brick-190wh.battery.energy=190 Wh +- 8 Wh";
    private const string Charge = "builds.tripod.battery.charge=95 % +- 2 %, at most 100 %";
    private const string Left = "builds.tripod.battery.capacity-left=88 % +- 2 %";

    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    [Fact]
    public void A_sound_plan_passes()
    {
        var plan = PlanText.Read(Harbour, ["days.day-one.ambient=-10 °C..10 °C:3", "kit.brick.part=each battery in the library"],
            [Energy, Charge, Left], ["builds.tripod.battery.charge with builds.tripod.battery.capacity-left=-0.5"]);
        // The parts that the builds can't take are told; that one can be.
        var fitting = plan.Axes[1].Values
            .Where(part => Problems(plan with { Axes = [new("kit.brick.part", [part])] }).Count == 0);
        Assert.Contains("brick-190wh", fitting);
        PlanCheck.Run(plan with { Axes = [plan.Axes[0]], Samples = 100_000_000 }, Harbour, TestContext.Current.CancellationToken);
    }

    [Fact]
    public void All_problems_of_all_texts_are_told_at_once()
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => PlanText.Read(Harbour,
            ["days.day-one.ambient=cold", "kit.brick.part=each batery in the library", "kit.brik.part=brick-98wh | brick-190wh"],
            ["title=1", "builds.tripod.battery.charge=98 % +- 2 %"], ["a and b"])).Problems;
        Assert.Equal(["days.day-one.ambient=cold", "kit.brick.part", "title", "a and b", "kit.brik.part",
            "builds.tripod.battery.charge"], problems.Select(problem => problem.Path));
        Assert.Equal([null, "battery", null, null, "brick", null], problems.Select(problem => problem.Nearest));
    }

    [Fact]
    public void An_unknown_path_is_told_with_the_nearest_name_however_many_values_it_has()
    {
        var problem = Assert.Single(Problems(PlanText.Read(Harbour, ["builds.tripod.batery.charge=50 %..90 %:5"], [], [])));
        Assert.Equal("battery", problem.Nearest);
        problem = Assert.Single(Problems(PlanText.Read(Harbour, [], ["days.day-on.ambient=2 °C +- 1 °C"], [])));
        Assert.Equal("day-one", problem.Nearest);
    }

    [Fact]
    public void Ends_of_a_spread_that_the_field_doesn_t_take_are_told_with_the_cure()
    {
        var problem = Assert.Single(Problems(PlanText.Read(Harbour, [], ["builds.tripod.battery.charge=98 % +- 2 %"], [])));
        Assert.StartsWith("\"98 % +- 2 %\" goes up to 108 %: Found \"108 %\", which is outside the range.", problem.Problem,
            StringComparison.Ordinal);
        Assert.Contains("at most VALUE", problem.Problem, StringComparison.Ordinal);
        Assert.Empty(Problems(PlanText.Read(Harbour, [], ["builds.tripod.battery.charge=98 % +- 2 %, at most 100 %"], [])));
    }

    [Fact]
    public void A_value_that_something_else_doesn_t_fit_is_named()
    {
        var axis = SweepAxis.Parse(Harbour, "kit.brick.part=each battery in the library");
        var problems = Problems(new SweepPlan { Axes = [axis] });
        Each.Of(problems, problem => Assert.StartsWith("With kit.brick.part=", problem.Problem, StringComparison.Ordinal));
        Assert.Empty(Problems(new SweepPlan
        {
            Axes = [SweepAxis.Parse(Harbour, "kit.brick.part=each fitting battery in the library")],
        }));
    }

    [Theory]
    [InlineData("0.9 +- 0.2, at least 1")]
    [InlineData("1.2 +- 0.1, at least 1")]
    [InlineData("between 1 and 2")]
    public void A_number_that_may_have_a_fraction_is_no_count_wherever_it_begins(string spread) =>
        Assert.Contains('.',
            UncertainField.Parse(Harbour, $"builds.tripod.battery.resistance-growth={spread}").Spread.TextAt(0.9));

    [Fact]
    public void Five_problems_of_one_field_are_enough()
    {
        var below = Enumerable.Range(1, 2000).Select(count => $"-{count}");
        var problems = Problems(new SweepPlan { Axes = [new("kit.brick.count", [.. below])] });
        Assert.Equal(6, problems.Count);
        Assert.Contains("were not tried", problems[5].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_is_varied_once_and_not_before_the_whole_that_holds_it()
    {
        var air = new SweepAxis("days.day-one.ambient", ["1 °C", "2 °C"]);
        Assert.Contains("varied twice", Assert.Single(Problems(new SweepPlan { Axes = [air, air] })).Problem,
            StringComparison.Ordinal);
        var whole = new SweepAxis("kit.brick", ["{part: brick-190wh}"]);
        var count = new SweepAxis("kit.brick.count", ["1", "2"]);
        Assert.Empty(Problems(new SweepPlan { Axes = [whole, count] }));
        Assert.Contains("The whole of kit.brick", Assert.Single(Problems(new SweepPlan { Axes = [count, whole] })).Problem,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Too_many_scenarios_too_few_samples_and_empty_axes_are_refused()
    {
        var many = new SweepAxis("kit.brick.count", [.. Enumerable.Repeat("1", 2000)]);
        var plan = PlanText.Read(Harbour, [], [Energy], []);
        var problem = Assert.Single(Problems(plan with { Axes = [many], Samples = 1_000_000 }));
        Assert.Contains("2E+09 scenarios", problem.Problem, StringComparison.Ordinal);
        Assert.Contains("Found 0.", Assert.Single(Problems(plan with { Samples = 0 })).Problem, StringComparison.Ordinal);
        Assert.Contains("no values", Assert.Single(Problems(new SweepPlan { Axes = [new("kit.brick.count", [])] })).Problem,
            StringComparison.Ordinal);
    }

    [Fact]
    public void More_uncertain_fields_than_a_Sobol_sequence_has_are_for_another_method()
    {
        var plan = new SweepPlan
        {
            Uncertain = [.. Enumerable.Range(0, 102).Select(i => new UncertainField($"kit.thing-{i}", Spread.Uniform(0, 1)))],
        };
        Assert.Contains(Problems(plan),
            problem => problem.Problem.Contains("up to 101 uncertain fields", StringComparison.Ordinal));
        Assert.DoesNotContain(Problems(plan with { Method = SamplingMethod.LatinHypercube }),
            problem => problem.Problem.Contains("Sobol", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("battery.charge with battery.capacity-left=1", "above -1 and below 1")]
    [InlineData("battery.charge with battery.capacity-left=1.5", "above -1 and below 1")]
    [InlineData("battery.charge with battery.capacity-left=NaN", "above -1 and below 1")]
    [InlineData("battery.charge with battery.charge=0.5", "with itself")]
    [InlineData("battery.charge with battery.capacity-lef=0.5", "no uncertain field")]
    public void Silly_correlations_are_refused_in_words(string together, string reason)
    {
        var plan = PlanText.Read(Harbour, [], [Energy, Charge, Left],
            [together.Replace("battery.", "builds.tripod.battery.", StringComparison.Ordinal)]);
        var problem = Assert.Single(Problems(plan));
        Assert.Contains(reason, problem.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pair_said_twice_is_refused_also_the_other_way_round()
    {
        var plan = PlanText.Read(Harbour, [], [Energy, Charge, Left], []);
        var (one, other) = (plan.Uncertain[0].Path, plan.Uncertain[1].Path);
        Assert.Contains("said twice", Assert.Single(Problems(plan with { Correlations = [new(one, other, 0.1),
            new(other, one, 0.1)] })).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Correlations_that_contradict_each_other_are_named()
    {
        var plan = PlanText.Read(Harbour, [], [Energy, Charge, Left], []);
        string[] paths = [.. plan.Uncertain.Select(field => field.Path)];
        Correlation[] contradicting = [new(paths[0], paths[1], 0.9), new(paths[1], paths[2], 0.9), new(paths[0], paths[2], -0.9)];

        var problem = Assert.Single(Problems(plan with { Correlations = contradicting }));

        Assert.Contains("contradicts itself", problem.Problem, StringComparison.Ordinal);
        Each.Of(contradicting, pair => Assert.Contains(pair.ToString(), problem.Problem, StringComparison.Ordinal));
        Assert.Empty(Problems(plan with { Correlations = [contradicting[0], contradicting[1], new(paths[0], paths[2], 0.7)] }));
    }

    [Theory]
    [InlineData("a with b")]
    [InlineData("a=0.5")]
    [InlineData("a with b=much")]
    [InlineData(" with b=0.5")]
    public void What_doesn_t_say_what_goes_together_is_refused(string text) =>
        Assert.Single(Assert.Throws<ScenarioProblemsException>(() => Correlation.Parse(text)).Problems);

    [Fact]
    public void A_check_can_be_stopped()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var plan = PlanText.Read(Harbour, ["days.day-one.ambient=-10 °C..10 °C:3"], [], []);
        Assert.ThrowsAny<OperationCanceledException>(() => PlanCheck.Run(plan, Harbour, source.Token));
    }

    private static IReadOnlyList<Diagnostic> Problems(SweepPlan plan)
    {
        try
        {
            PlanCheck.Run(plan, Harbour, TestContext.Current.CancellationToken);
            return [];
        }
        catch (ScenarioProblemsException exception)
        {
            return exception.Problems;
        }
    }
}
