using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Sampling;

public sealed class SweepPlanTests
{
    private static readonly SamplingMethod[] Methods = Enum.GetValues<SamplingMethod>();

    private static readonly SweepPlan Plan = new()
    {
        Axes = [new("a", ["1", "2"]), new("b", ["x", "y", "z"])],
        Uncertain = [new("c", Spread.Uniform(0, 1)), new("d", Spread.Normal(Energy.FromWattHours(190), Energy.FromWattHours(8)))],
        Samples = 4,
    };

    [Fact]
    public void The_last_axis_is_fastest_and_all_samples_of_a_combination_follow_one_another()
    {
        Assert.Equal(24, Plan.Count);
        Assert.Equal(["a", "b", "c", "d"], Plan.Paths);
        var axes = Enumerable.Range(0, 24).Select(number => string.Concat(Plan.At(number).Values.Take(2)));
        Assert.Equal(["1x", "1y", "1z", "2x", "2y", "2z"], axes.Where((_, number) => number % 4 == 0));
        Assert.Equal(axes.Chunk(4).Select(same => string.Join(' ', same)),
            axes.Chunk(4).Select(same => string.Join(' ', Enumerable.Repeat(same[0], 4))));
    }

    [Fact]
    public void Every_combination_gets_the_same_samples() =>
        Each.Of(Enumerable.Range(0, 24), number => Assert.Equal(Plan.At(number % 4).Values.Skip(2),
            Plan.At(number).Values.Skip(2)));

    [Fact]
    public void Without_uncertain_fields_samples_mean_nothing()
    {
        Assert.Equal(6, (Plan with { Uncertain = [] }).Count);
        Assert.Equal(1, new SweepPlan { Samples = 1000 }.Count);
        Assert.Empty(new SweepPlan().At(0).Values);
        Assert.Empty(new SweepPlan().Unit(0));
    }

    [Fact]
    public void A_number_makes_the_same_scenario_in_any_order_and_on_any_number_of_cores()
    {
        Each.Of(Methods, method =>
        {
            var plan = Plan with { Method = method, Samples = 1000 };
            var inOrder = Enumerable.Range(0, 6000).Select(number => string.Join(' ', plan.At(number).Values)).ToArray();
            var other = new string[inOrder.Length];
            var again = Plan with { Method = method, Samples = 1000 };
            Parallel.For(0, other.Length, number => other[^(number + 1)] = string.Join(' ', again.At(5999 - number).Values));
            Assert.Equal(inOrder, other);
        });
    }

    [Fact]
    public void Another_seed_gives_other_samples_and_the_same_seed_the_same()
    {
        Each.Of(Methods, method =>
        {
            var plan = Plan with { Method = method, Seed = 7 };
            Assert.Equal(plan.Unit(1), (plan with { Samples = 4 }).Unit(1));
            Assert.NotEqual(plan.Unit(1), (plan with { Seed = 8 }).Unit(1));
            Assert.NotEqual(plan.Unit(1), (plan with { Seed = -7 }).Unit(1));
        });
    }

    [Fact]
    public void A_copy_with_other_fields_forgets_what_was_worked_out()
    {
        var first = Plan.At(3);
        var changed = Plan with { Uncertain = [Plan.Uncertain[1]] };
        Assert.Equal(["1", "x"], first.Values.Take(2));
        Assert.Equal(3, changed.At(3).Values.Count);
        Assert.Equal(Plan, Plan with { });
        Assert.NotEqual(Plan, changed);
        Assert.NotEqual(Plan, Plan with { Axes = [Plan.Axes[0]] });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(64)]
    [InlineData(1000)]
    [InlineData(1023)]
    public void A_Latin_hypercube_has_one_sample_in_each_slice_of_each_field(int samples)
    {
        var plan = Plan with { Axes = [], Method = SamplingMethod.LatinHypercube, Samples = samples };
        Each.Of([0, 1], field => Assert.Equal(Enumerable.Range(0, samples),
            Enumerable.Range(0, samples).Select(number => (int)Math.Floor(plan.Unit(number)[field] * samples)).Order()));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(99)]
    public void A_scrambled_Sobol_sequence_has_one_sample_in_each_slice_and_in_each_box_of_its_first_two_fields(long seed)
    {
        var plan = Plan with { Axes = [], Samples = 1024, Seed = seed };
        var points = Enumerable.Range(0, 1024).Select(number => plan.Unit(number)).ToList();
        Each.Of([0, 1], field => Assert.Equal(1024, points.Select(point => (int)(point[field] * 1024)).Distinct().Count()));
        Each.Of(Enumerable.Range(0, 11), wide => Assert.Equal(1024, points.Select(point =>
            ((int)(point[0] * (1 << wide)), (int)(point[1] * (1 << (10 - wide))))).Distinct().Count()));
        // The sequence itself begins in a corner.
        Each.Of(points, point => Assert.InRange(point.Min(), 1e-9, 1 - 1e-9));
    }

    [Fact]
    public void A_hundred_million_samples_need_no_memory_and_the_last_is_had_at_once()
    {
        Each.Of(Methods, method =>
        {
            var plan = Plan with { Method = method, Samples = 100_000_000 };
            plan.At(0);
            var before = GC.GetAllocatedBytesForCurrentThread();
            var last = plan.At(plan.Count - 1);
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 20_000);
            Assert.Equal(600_000_000, plan.Count);
            Assert.Equal(["2", "z"], last.Values.Take(2));
        });
    }

    [Fact]
    public void Numbers_outside_the_plan_and_points_of_the_wrong_size_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.At(24));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.At(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.Unit(24));
        Assert.Throws<ArgumentException>(() => Plan.FromUnit([0.5], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.FromUnit([0.5, 1.5], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan.FromUnit([0.5, double.NaN], 0));
    }

    [Fact]
    public void A_point_of_one_s_own_choice_gives_the_medians_and_the_ends()
    {
        Assert.Equal(["1", "x", "0.5", "190 Wh"], Plan.FromUnit([0.5, 0.5], 0).Values);
        Assert.Equal(["2", "z", "0", "230 Wh"], Plan.FromUnit([0, 1], 23).Values);
        Assert.Equal(23, Plan.FromUnit([0, 1], 23).Number);
    }

    [Fact]
    public void Fields_that_go_together_keep_their_own_spread_and_their_medians()
    {
        var plan = Plan with { Axes = [], Correlations = [new("d", "c", 0.9)], Samples = 4096 };
        Assert.Equal(["0.5", "190 Wh"], plan.FromUnit([0.5, 0.5], 0).Values);
        Assert.Equal(["0", "150 Wh"], plan.FromUnit([0, 0], 0).Values);
        var energies = Enumerable.Range(0, 4096).Select(number => double.Parse(plan.At(number).Values[1][..^3],
            CultureInfo.InvariantCulture)).Order().ToList();
        Assert.InRange(energies[2048], 189.5, 190.5);
        // 84.1 % lie below one deviation above.
        Assert.InRange(energies[3446], 197.5, 198.5);
    }

    [Fact]
    public void Correlations_that_can_t_be_are_refused_in_words_before_any_sample()
    {
        var wrong = Plan with { Correlations = [new("c", "d", 1)] };
        Assert.Contains("above -1 and below 1", Assert.ThrowsAny<ArgumentException>(() => wrong.At(0)).Message,
            StringComparison.Ordinal);
    }

    /// <summary>The example of docs/what-if.md, as it stands there.</summary>
    [Fact]
    public void The_example_of_the_documentation_runs()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var cancellation = TestContext.Current.CancellationToken;

        // docs/what-if.md: begin
        var plan = new SweepPlan
        {
            Axes = [SweepAxis.Parse(scenario, "kit.brick.part=brick-98wh | brick-190wh")],
            Uncertain =
            [
                new UncertainField("days.day-one.ambient",
                    Spread.Normal(Temperature.FromDegreesCelsius(-8), TemperatureDelta.FromDegreesCelsius(2))),
                UncertainField.Parse(scenario, "builds.tripod.battery.capacity-left=88 % +- 3 %, at most 100 %"),
            ],
            Samples = 256,
        };
        PlanCheck.Run(plan, scenario, cancellation);
        var last = plan.At(plan.Count - 1);
        Console.WriteLine($"Scenario {last.Number + 1} of {plan.Count}: {string.Join(", ", last.Values)}");
        // docs/what-if.md: end

        Assert.Equal(512, plan.Count);
        Assert.Equal("brick-190wh", last.Values[0]);
        var source = Lines(Path.Combine(
            Repository.Root, "tests", "RigScenarios.Tests", "Sweeps", "Sampling", "SweepPlanTests.cs"));
        var example = source[(source.IndexOf("// docs/what-if.md: begin") + 1)..source.IndexOf("// docs/what-if.md: end")];
        Assert.Contains(string.Join('\n', example), string.Join('\n', Lines(Path.Combine(Repository.Root, "docs", "what-if.md"))),
            StringComparison.Ordinal);
    }

    /// <summary>Every axis and every spread of the page is one that the program reads.</summary>
    [Fact]
    public void The_axes_and_spreads_of_the_documentation_are_read()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var rows = Lines(Path.Combine(Repository.Root, "docs", "what-if.md"))
            .Where(line => line.StartsWith("| `", StringComparison.Ordinal))
            .Select(line => line[3..line.IndexOf('`', 3)].Replace("\\|", "|", StringComparison.Ordinal)).ToList();

        Each.Of(rows.Where(row => row.Contains('=', StringComparison.Ordinal)),
            row => Assert.InRange(SweepAxis.Parse(scenario, row).Values.Count, 2, 9), 14);
        Each.Of(rows.Where(row => row.Contains("+-", StringComparison.Ordinal)
                || row.StartsWith("between", StringComparison.Ordinal)),
            row => UncertainField.Parse(scenario, $"{(row.Contains("Wh", StringComparison.Ordinal)
                ? "parts.brick-190wh.battery.energy" : "builds.tripod.battery.resistance-growth")}={row}"), 5);
    }

    [Fact]
    public void Numbers_are_short_and_read_back_to_the_last_digit()
    {
        var plan = Plan with { Axes = [], Samples = 2000 };
        Each.Of(Enumerable.Range(0, 2000), number =>
        {
            var text = plan.At(number).Values[0];
            Assert.InRange(text.Length, 1, 16);
            Assert.Equal(text, double.Parse(text, CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture));
        });
    }

    private static List<string> Lines(string file) => [.. File.ReadLines(file).Select(line => line.Trim())];
}
