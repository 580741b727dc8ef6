using System.Text.Json;
using RigScenarios.Cli;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class TravelCommandTests
{
    private static readonly string Harbour = Repository.Data("scenarios", "winter-harbour.yaml");
    private static readonly string Teaching = Repository.Data("scenarios", "teaching-kit.yaml");

    [Fact]
    public async Task What_to_ask_and_what_stays_come_first_and_the_sources_last()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("travel", Harbour, "--journey", "home");
        Assert.Equal(("", 0), (error, code));
        Snapshot.Match(text.ReplaceLineEndings("\n").Replace(Repository.Root, "HERE", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Each_traveller_gets_a_list_and_approvals_stand_out()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("travel", Harbour, "--journey", "home", "--set", "kit.brick.count=5",
            "--set", "parts.brick-190wh.battery.energy=150 Wh");
        Assert.Equal(0, code);
        string[] inOrder =
        [
            "1 of 5 batteries can't fly", "Ask the airline first: above 100 Wh", "(operator)", "(assistant)", "Stays behind",
            "Why: Up to two of the spare batteries above 100 Wh",
            "operator: 2 batteries, 300 Wh", "assistant: 2 batteries, 300 Wh", "Cautions", "This is no permission", "Rests on",
        ];
        var places = inOrder.Select(words => text.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("travel", Harbour, "--json", "--set", "kit.brick.count=2", "--set",
            "journeys.home.by=flight");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios travel 1", json.RootElement.GetProperty("format").GetString());
        await DocumentedFields.AssertAsync(json.RootElement, "## Journeys");
        var (_, flying, _) = await ConsoleRun.RunAsync("travel", Teaching, "--json");
        using var second = JsonDocument.Parse(flying);
        await DocumentedFields.AssertAsync(second.RootElement, "## Journeys");
    }

    [Fact]
    public async Task Without_a_journey_the_day_is_that_of_the_clock()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("scenario.yaml", SmallScenario.Text());
        var (code, text) = await AtAsync(new DateTimeOffset(2026, 3, 26, 12, 0, 0, TimeSpan.Zero), file);
        Assert.Equal((0, "2026-03-26", "2026-01-01", true),
            (code, text.GetProperty("date").GetString(), text.GetProperty("edition_from").GetString(),
            text.GetProperty("date_is_covered").GetBoolean()));
        var (_, later) = await AtAsync(new DateTimeOffset(2031, 5, 1, 12, 0, 0, TimeSpan.Zero), file);
        Assert.False(later.GetProperty("date_is_covered").GetBoolean());
        Assert.Contains("1 MAY 2031", later.GetProperty("date_warning").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_journey_ends_with_2_and_names_the_nearest()
    {
        var (code, _, error) = await ConsoleRun.RunAsync("travel", Harbour, "--journey", "hom");
        Assert.Equal(2, code);
        Assert.Contains("Did you mean \"home\"?", error, StringComparison.Ordinal);
    }

    private static async Task<(int Code, JsonElement Journey)> AtAsync(DateTimeOffset now, string file)
    {
        var before = Console.Out;
        using var output = new StringWriter();
        try
        {
            Console.SetOut(output);
            var code = await CommandLine.RunAsync(["travel", file, "--json"], new FixedClock(now));
            return (code, JsonDocument.Parse(output.ToString()).RootElement.GetProperty("journeys")[0].Clone());
        }
        finally
        {
            Console.SetOut(before);
        }
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
