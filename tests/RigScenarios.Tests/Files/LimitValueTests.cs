using System.Text.RegularExpressions;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>What the formats accept comes to an end: figures of the demos at both ends of their ranges, alone and together, and
/// the whole answer run.</summary>
public sealed partial class LimitValueTests
{
    // Far more than any answer takes, so that only one without an end is stopped, on a busy machine too.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    public static TheoryData<string> Demos => ["winter-harbour", "island-crossing"];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Both_ends_of_every_range_are_answered_or_refused_in_words(string demo)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", demo + ".yaml"));
        var answered = Fields(scenario).SelectMany(field => Ends(scenario, field))
            .Count(end => IsAnswered(scenario, [end]));
        Assert.True(answered > 300, $"Only {answered} were answered.");
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Ends_of_ranges_together_are_answered_or_refused_in_words(string demo)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", demo + ".yaml"));
        var ends = Fields(scenario).Select(field => Ends(scenario, field)).Where(both => both.Count > 0).ToList();
        Drawn.Cases(firstSeed: 40, cases: 60, atLeast: 10, (random, looked) =>
        {
            var some = random.GetItems(ends.ToArray(), 2 + random.Next(5)).DistinctBy(both => both[0].Path)
                .Select(both => both[random.Next(both.Count)]);
            if (IsAnswered(scenario, [.. some]))
                looked.One();
        });
    }

    [Theory]
    [InlineData("days.day.blocks.all.length", "0 min", "0.1 min to 48 h")]
    [InlineData("days.day.blocks.all.length", "-5 min", "0.1 min to 48 h")]
    [InlineData("days.day.blocks.all.length", "99999999 h", "0.1 min to 48 h")]
    [InlineData("days.day.blocks.all.length", "1e300 h", "0.1 min to 48 h")]
    [InlineData("kit.light.count", "0", "1 to 100")]
    [InlineData("kit.light.count", "2147483648", "1 to 100")]
    [InlineData("kit.light.count", "2.5", "1 to 100")]
    [InlineData("builds.one.battery.charge", "101 %", "to 100 %")]
    [InlineData("swaps.reserve", "99.9 %", "0 % to 95 %")]
    [InlineData("swaps.swap-time", "3 h", "to 2 h")]
    [InlineData("chargers.one={bays: 99, current: 2 A}", null, "0 to 16")]
    public void What_nobody_can_do_is_refused_at_its_field_with_what_is_accepted(string path, string? text, string accepted)
    {
        var (field, value) = text is null ? (path.Split('=')[0], path.Split('=')[1]) : (path, text);
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(
            () => ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text()), field, value)).Problems);
        Assert.StartsWith(field, problem.Path, StringComparison.Ordinal);
        Assert.Contains(accepted, problem.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{a: {length: 48 h, others: record}, b: {length: 48 h, others: record}, c: {length: 48 h, others: record}, "
        + "d: {length: 48 h, others: record}}", "days.day.blocks", "192 h")]
    [InlineData("{a: {length: 12 h, others: record, cycle: {take: 1 s, reset: 1 s}}}", "days.day.blocks.a.cycle", "21,600 takes")]
    public void Figures_that_are_too_much_together_are_refused_before_anything_runs(string blocks, string path, string found)
    {
        var (scenario, problems) = ScenarioFile.TryReadText(SmallScenario.Text(blocks: blocks), "long.yaml");
        Assert.Null(scenario);
        var problem = Assert.Single(problems, one => one.Severity == Severity.Error);
        Assert.Equal(path, problem.Path);
        Assert.Contains(found, problem.Problem, StringComparison.Ordinal);
        Assert.StartsWith("at most ", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void More_days_than_anybody_plans_are_refused()
    {
        var text = SmallScenario.Text() + string.Concat(Enumerable.Range(1, 100).Select(
            day => $"\n  day-{day}: {{blocks: {{all: {{length: 2 h, others: record}}}}}}"));
        Assert.Contains("at most 100", Assert.Single(ScenarioFile.TryReadText(text, "days.yaml").Problems).Accepted,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Swaps_without_end_are_stopped_in_words()
    {
        // Twenty batteries with a warning just under the voltage of a full one, bays for nearly all of them, and no time lost.
        var text = SmallScenario.Text(parts: """
              label: {kind: battery, name: Label, mass: 700 g, battery: {energy: 98 Wh, voltage: 14.4 V}}
            """, blocks: "{all: {length: 12 h, others: record}}")
            .Replace("flat: {part: flat}", "flat: {part: label, count: 20}", StringComparison.Ordinal)
            + $"\nbatteries: {{{string.Join(", ", Enumerable.Range(1, 20).Select(one => $"b{one}: {{item: flat}}"))}}}"
            + "\nchargers: {one: {bays: 16, current: 10 A}}"
            + "\nswaps: {warning-voltage: 16.7 V, swap-time: 0 s, restart: 0 s, least-charge: 1 %, allowed: any-time}";
        var (scenario, problems) = ScenarioFile.TryReadText(text, "swaps.yaml");
        Assert.True(scenario is not null, string.Join('\n', problems));
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() =>
            RigAnswer.Of(scenario, "one", [], cancellation: TestContext.Current.CancellationToken)).Problems);
        Assert.Equal(("swaps", true), (problem.Path, problem.Problem.Contains("1,000 swaps", StringComparison.Ordinal)));
    }

    private static bool IsAnswered(Scenario scenario, IReadOnlyList<(string Path, string Text)> fields)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        stop.CancelAfter(Patience);
        try
        {
            var answer = RigAnswer.Of(ScenarioPath.SetAll(scenario, fields), scenario.Builds.Keys.First(), [],
                new AnswerOptions { SeriesPoints = 0 }, null, stop.Token);
            Assert.NotEmpty(AnswerSentences.Headline(answer));
            return true;
        }
        catch (ScenarioProblemsException problems)
        {
            Each.Of(problems.Problems, problem => Assert.NotEmpty(problem.Problem));
            return false;
        }
        catch (OperationCanceledException) when (!TestContext.Current.CancellationToken.IsCancellationRequested)
        {
            Assert.Fail($"{string.Join(", ", fields)} has no end.");
            return false;
        }
    }

    // Of the build that is run, and of what all share.
    private static IEnumerable<(string Path, string Text)> Fields(Scenario scenario) =>
        ScenarioPath.NumericFields(scenario).Where(field => !field.Path.StartsWith("builds.", StringComparison.Ordinal)
            || field.Path.StartsWith($"builds.{scenario.Builds.Keys.First()}.", StringComparison.Ordinal));

    // A value beyond any range brings the message that says what is accepted.
    private static List<(string Path, string Text)> Ends(Scenario scenario, (string Path, string Text) field)
    {
        var space = field.Text.IndexOf(' ', StringComparison.Ordinal);
        try
        {
            ScenarioPath.Set(scenario, field.Path, space < 0 ? "999999999" : "1e14" + field.Text[space..]);
            return [];
        }
        catch (ScenarioProblemsException problems)
        {
            return Range().Match(problems.Problems[0].Accepted ?? "") is { Success: true } range
                ? [(field.Path, range.Groups["low"].Value), (field.Path, range.Groups["high"].Value)] : [];
        }
    }

    [GeneratedRegex("(?<low>-?[0-9][^,]*?) to (?<high>[^,]+)",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Range();
}
