using System.Text.Json;
using System.Text.RegularExpressions;
using RigScenarios.Files;
using RigScenarios.Tests.Search.Rigs;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public partial class SearchCommandTests
{
    private const string Slots = "{light: {parts: [thrifty]}, flat: {parts: [small, large]}, plate: {parts: [slotted, railed]}}";

    private static readonly string Ferry = Repository.Data("scenarios", "river-ferry.yaml");

    [Fact]
    public async Task The_demo_gives_its_rigs_with_their_reasons()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("search", Ferry, "--limit", "600");
        Assert.Equal(("", 0), (error, code));
        // How many are run depends on the order in which the solver proposes, and nothing else does.
        Snapshot.Match(Run().Replace(text.ReplaceLineEndings("\n"), "decided: N were run"));
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("rig.yaml", SmallQuestion.Text(Slots, "musts: {lasts: {}}"));
        var (code, text, error) = await ConsoleRun.RunAsync("search", file, "--json", "--limit", "600");
        Assert.True(code == 0, error);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios search 1", json.RootElement.GetProperty("format").GetString());
        Assert.True(json.RootElement.GetProperty("is_complete").GetBoolean());
        Assert.Equal(10, json.RootElement.GetProperty("rigs").GetArrayLength());
        Assert.Equal("railed", json.RootElement.GetProperty("ruled_out")[0].GetProperty("with_candidate").GetString());
        await DocumentedFields.AssertAsync(WithoutSlots(json.RootElement), "## The best rig");

        var (_, years, _) = await ConsoleRun.RunAsync("search", file, "--json", "--limit", "600", "--set",
            "best-rig.upgrade={budget-a-year: 1000 EUR, years: 2}");
        using var order = JsonDocument.Parse(years);
        Assert.Equal(1, order.RootElement.GetProperty("upgrade").GetProperty("first_year").GetInt32());
        // The large battery, the thrifty light, and the cheaper one of the two plates that draw nothing.
        Assert.Equal(1000 - 250 - 90 - 45, order.RootElement.GetProperty("upgrade").GetProperty("plan")[0]
            .GetProperty("money_left").GetDecimal());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("upgrade").ValueKind);
        await DocumentedFields.AssertAsync(WithoutSlots(order.RootElement), "## The best rig");

        var (_, none, _) = await ConsoleRun.RunAsync("search", file, "--json", "--limit", "600", "--set",
            "best-rig.musts.budget=900 EUR");
        using var second = JsonDocument.Parse(none);
        Assert.Equal("to cost at most 900 EUR",
            second.RootElement.GetProperty("conflicts")[0].GetProperty("musts")[0].GetString());
        await DocumentedFields.AssertAsync(WithoutSlots(second.RootElement), "## The best rig");
    }

    [Fact]
    public async Task Table_and_page_are_written_and_say_what_the_console_says()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("rig.yaml", SmallQuestion.Text(Slots,
            "musts: {lasts: {}}\n  upgrade: {budget-a-year: 20 EUR, years: 1}"));
        var (table, page) = (Path.Combine(folder.Path, "rigs.csv"), Path.Combine(folder.Path, "rigs.html"));
        var (code, text, error) = await ConsoleRun.RunAsync("search", file, "--csv", table, "--out", page);
        Assert.True(code == 0, error);
        Assert.Contains("10 rigs: none is better than another in every wish (least cost, longest day).", text,
            StringComparison.Ordinal);
        var rows = await File.ReadAllLinesAsync(table, TestContext.Current.CancellationToken);
        Assert.Equal("rig,light,flat,plate,cost,currency,mass_g,reserve_h,reserve_is_lower_bound,least_share_left,verdict,equals,"
            + "year,bought,paid,sold,brought,money_left", rows[0]);
        Assert.Equal(11, rows.Length);
        Assert.StartsWith("1,Thrifty light,Small battery,", rows[1], StringComparison.Ordinal);
        var html = await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken);
        Assert.Contains("10 rigs: none is better", html, StringComparison.Ordinal);
        Assert.Contains("Thrifty light", html, StringComparison.Ordinal);
        const string never = "No: 20 EUR a year in 1 year buy no rig that holds all musts but the budget.";
        Assert.Contains(never, text.ReplaceLineEndings(" ").Replace("    ", "", StringComparison.Ordinal),
            StringComparison.Ordinal);
        Assert.Contains(never, html, StringComparison.Ordinal);
    }

    // By hand, as in the JSON: the large battery at 250, the thrifty light at 90 and the slotted plate at 45, of 1,000 a year.
    [Fact]
    public async Task The_table_has_a_row_for_each_year_of_purchases()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("rig.yaml", SmallQuestion.Text(Slots,
            "musts: {lasts: {}}\n  upgrade: {budget-a-year: 1000 EUR, years: 2}"));
        var table = Path.Combine(folder.Path, "rigs.csv");
        var (code, _, error) = await ConsoleRun.RunAsync("search", file, "--csv", table, "--limit", "600");
        Assert.True(code == 0, error);
        var rows = (await File.ReadAllLinesAsync(table, TestContext.Current.CancellationToken)).Select(row => row.Split(','))
            .ToList();
        Each.Of(rows, row => Assert.Equal(rows[0].Length, row.Length), atLeast: 13);
        Dictionary<string, string>[] years = [.. rows.Skip(1).Select(row => rows[0].Zip(row).ToDictionary(cell => cell.First,
            cell => cell.Second)).Where(row => row["year"].Length > 0)];
        Assert.Equal(["1", "2"], years.Select(year => year["year"]));
        Each.Of(years, year => Assert.Equal(("", "Thrifty light", "Large battery", "EUR", "not known"),
            (year["rig"], year["light"], year["flat"], year["currency"], year["verdict"])), atLeast: 2);
        Assert.Equal(["385", "0"], years.Select(year => year["paid"]));
        Assert.Equal(["615", "1615"], years.Select(year => year["money_left"]));
        Assert.Equal(["Thrifty light", "Large battery"], years[0]["bought"].Split("; ").Take(2));
        Assert.Equal("", years[1]["bought"]);
    }

    [Theory]
    [InlineData("--limit", "0", "--limit: Found \"0\". Accepted: seconds, 1 to 86400")]
    [InlineData("--limit", "soon", "--limit: Found \"soon\".")]
    [InlineData("--csv", "rigs.yaml", "--csv: Found \"rigs.yaml\".")]
    [InlineData("--set", "best-rig.slots.light.parts=[thrifti]", "Did you mean \"thrifty\"?")]
    public async Task What_can_not_be_used_ends_with_2_and_writes_nothing(string option, string value, string told)
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("rig.yaml", SmallQuestion.Text(Slots));
        var page = Path.Combine(folder.Path, "rigs.html");
        var (code, output, error) = await ConsoleRun.RunAsync("search", file, "--out", page, option, value);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(told, error, StringComparison.Ordinal);
        Assert.False(File.Exists(page));
    }

    [Fact]
    public async Task A_file_without_the_question_is_told_what_it_needs()
    {
        var (code, _, error) = await ConsoleRun.RunAsync("search", Repository.Data("scenarios", "winter-harbour.yaml"));
        Assert.Equal(2, code);
        Assert.Contains("best-rig: The scenario does not say what may be chosen.", error, StringComparison.Ordinal);
    }

    // The demo's best choices, written into its file by hand, are what "run" says of them.
    [Fact]
    public async Task A_rig_that_was_found_is_what_run_says_of_it()
    {
        var (_, found, _) = await ConsoleRun.RunAsync("search", Ferry, "--json", "--limit", "600");
        using var json = JsonDocument.Parse(found);
        var rig = json.RootElement.GetProperty("rigs")[0];
        string[] sets =
        [
            .. rig.GetProperty("parts").EnumerateObject().SelectMany(place => new[] { "--set",
                $"kit.{(place.Name == "battery" ? "brick" : place.Name)}.part={place.Value.GetProperty("part").GetString()}" }),
        ];
        var air = ScenarioFile.Read(Ferry).Days["crossing"].AmbientPoints.Select(point =>
            $"{{time: \"{point.Time:HH:mm}\", temperature: {point.Temperature.DegreesCelsius - 4:0} °C}}");
        var (code, run, error) = await ConsoleRun.RunAsync(["run", Ferry, "--quick", "--json", .. sets, "--set",
            $"days.crossing.ambient-points=[{string.Join(", ", air)}]"]);
        Assert.True(code == 0, error);
        using var answer = JsonDocument.Parse(run);
        Assert.Equal(rig.GetProperty("answer").GetString(),
            answer.RootElement.GetProperty("answers")[0].GetProperty("answer").GetString());
    }

    [GeneratedRegex(@"decided: [\d,]+ were run", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Run();

    /// <summary>The names of slots are the file's own, and no fields.</summary>
    private static JsonElement WithoutSlots(JsonElement json) => JsonDocument.Parse(json.GetRawText()
        .Replace("\"light\":", "\"candidate\":", StringComparison.Ordinal)
        .Replace("\"flat\":", "\"candidate\":", StringComparison.Ordinal)
        .Replace("\"plate\":", "\"candidate\":", StringComparison.Ordinal)).RootElement;
}
