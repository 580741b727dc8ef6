using System.Globalization;
using System.Text.Json;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class AgingCommandTests
{
    private static readonly string Hall = Repository.Data("scenarios", "market-hall.yaml");

    private static readonly string[] Aged =
    [
        "aging", Hall, "--build", "hand", "--set", "builds.hand.battery.age={bought: 2025-03, until: 2026-11-30, kept: full, "
            + "place: room, shoots-per-month: 4, emptied: mostly}",
    ];

    [Fact]
    public async Task The_answer_comes_first_then_the_years_the_keeping_and_the_cost()
    {
        var (code, text, error) = await ConsoleRun.RunAsync(Aged);

        Assert.Equal(("", 0), (error, code));
        Snapshot.Match(text.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task Json_has_the_documented_fields_and_the_same_sentences()
    {
        var (code, text, _) = await ConsoleRun.RunAsync([.. Aged, "--json", "--years", "2"]);
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var answer = json.RootElement.GetProperty("answers")[0];
        var aging = answer.GetProperty("aging");

        await DocumentedFields.AssertAsync(aging, "## Years");
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## Years");
        Assert.Equal("2026-11-30", aging.GetProperty("from").GetString());
        Assert.Equal(25, aging.GetProperty("batteries")[0].GetProperty("ages").GetArrayLength());
        Assert.Equal(answer.GetProperty("reserve_h").GetDouble(),
            aging.GetProperty("years")[0].GetProperty("middle").GetProperty("reserve_h").GetDouble());
        Assert.Equal(answer.GetProperty("age_least_reserve_h").GetDouble(),
            aging.GetProperty("years")[0].GetProperty("least").GetProperty("reserve_h").GetDouble());
        Assert.True(answer.GetProperty("ages")[0].GetProperty("known").GetBoolean());
    }

    [Fact]
    public async Task Every_table_is_written_in_full_resolution()
    {
        using var folder = new TemporaryFolder();
        var tables = Path.Combine(folder.Path, "tables");
        var (code, text, _) = await ConsoleRun.RunAsync([.. Aged, "--years", "1", "--out", tables]);

        Assert.Equal(0, code);
        Assert.Contains("days.csv, ages.csv, batteries.csv, storage.csv", text, StringComparison.Ordinal);
        // A head, and a row for each month (13), each battery, each half-year (3), each way after 1, 3 and 5 years (5 ways).
        Assert.Equal(["ages.csv 14 1", "batteries.csv 2 1", "days.csv 4 1", "storage.csv 16 1"], Shapes(tables));
    }

    [Theory]
    [InlineData("--battery", "brik", "This build has no battery \"brik\"")]
    [InlineData("--years", "90", "Accepted: 1 to 40")]
    [InlineData("--cold", "-10", "--cold")]
    public async Task A_wrong_option_is_told_with_what_is_accepted(string option, string value, string words)
    {
        var (code, _, error) = await ConsoleRun.RunAsync([.. Aged, option, value]);

        Assert.Equal(2, code);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_in_the_place_of_the_folder_is_refused_before_any_work()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("tables", "mine");
        var (code, _, error) = await ConsoleRun.RunAsync([.. Aged, "--out", file]);

        Assert.Equal(2, code);
        Assert.Contains("name of a folder", error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_sweep_along_dates_makes_the_battery_older_from_row_to_row()
    {
        using var folder = new TemporaryFolder();
        var table = Path.Combine(folder.Path, "older.csv");
        var (code, _, _) = await ConsoleRun.RunAsync("sweep", Hall, "--build", "hand", "--set",
            "builds.hand.battery.age={bought: 2025-03, until: 2026-11-30}", "--over",
            "builds.hand.battery.age.until=2026-11-30..2032-11-30:4", "--out", table);

        Assert.Equal(0, code);
        var rows = Rows(table);
        Assert.Equal(["2026-11-30", "2028-11-30", "2030-11-30", "2032-11-30"], rows.Select(row => row[1].Trim('"')));
        var reserves = rows.Select(row => double.Parse(row[5], CultureInfo.InvariantCulture)).ToList();
        Assert.Equal(reserves.OrderDescending(), reserves);
        Assert.True(reserves[0] > reserves[^1]);
    }

    // Name, number of lines, and how many different numbers of commas they have.
    private static List<string> Shapes(string folder) => [.. Directory.GetFiles(folder).Order()
        .Select(file => (Name: Path.GetFileName(file), Lines: File.ReadAllLines(file)))
        .Select(file => $"{file.Name} {file.Lines.Length} "
            + $"{file.Lines.Select(line => line.Count(sign => sign == ',')).Distinct().Count()}")];

    private static List<string[]> Rows(string table) =>
        [.. File.ReadAllLines(table).Skip(1).Select(line => line.Split(','))];
}
