using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class FitCommandTests
{
    private static readonly string Notes = Repository.Data("field-notes", "market-hall.yaml");

    [Fact]
    public async Task What_the_battery_is_and_the_days_come_first()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("fit", Notes);
        Assert.Equal(("", 0), (error, code));
        Snapshot.Match(text.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("fit", Notes, "--json");
        Assert.Equal(("", 0), (error, code));
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios fit 1", json.RootElement.GetProperty("format").GetString());
        await DocumentedFields.AssertAsync(json.RootElement, "## What notes say of a battery");
    }

    [Fact]
    public async Task What_it_writes_gives_every_command_the_same_day()
    {
        using var folder = new TemporaryFolder();
        var target = Path.Combine(folder.Path, "fitted.yaml");
        var (code, text, _) = await ConsoleRun.RunAsync("fit", Notes, "--out", target, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var day = json.RootElement.GetProperty("days")[0];

        var written = ScenarioFile.Read(target);
        var battery = written.Builds["tripod"].Battery;
        Assert.NotNull(battery.CapacityLeft);
        Assert.NotNull(battery.LoadScale);
        // The kit has one brick: the other builds run on the same one.
        Assert.Equal(battery with { Charge = null }, written.Builds["hand"].Battery with { Charge = null });
        var answer = RigAnswer.Of(written, "tripod", ["morning"], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(day.GetProperty("verdict").GetString(), answer.Of(QuestionKind.Power)!.Verdict.InWords());
        Assert.Equal(day.GetProperty("reserve_h").GetDouble(), answer.Tightest.Reserve.Time.Hours, 1e-3);
        Assert.Contains(" of this battery.", AnswerSentences.Questions(answer)[0].Words, StringComparison.Ordinal);
        // Remarks of the file stay.
        Assert.Contains("# One kit, three stances in one morning", await File.ReadAllTextAsync(target,
            TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_build_can_be_planned_and_the_notes_stay_what_they_are()
    {
        var (_, own, _) = await ConsoleRun.RunAsync("fit", Notes, "--json");
        var (code, other, error) = await ConsoleRun.RunAsync("fit", Notes, "--json", "--build", "shoulder");
        Assert.Equal(("", 0), (error, code));
        using var first = JsonDocument.Parse(own);
        using var second = JsonDocument.Parse(other);
        Assert.Equal("shoulder", second.RootElement.GetProperty("build").GetString());
        Assert.Equal(first.RootElement.GetProperty("estimates").ToString(),
            second.RootElement.GetProperty("estimates").ToString());
        // Without the transmitter more is left.
        Assert.True(Reserve(second) > Reserve(first));

        static double Reserve(JsonDocument json) =>
            json.RootElement.GetProperty("days")[0].GetProperty("reserve_h").GetDouble();
    }

    [Fact]
    public async Task A_table_is_fitted_with_the_scenario_that_is_named()
    {
        using var folder = new TemporaryFolder();
        var table = folder.Write("notes.csv", "name,air,build,devices.camera,devices.monitor,lasted\n"
            + "one,3 °C,shoulder,record 60 %,on,4 h 10 min\n");
        var (code, text, error) = await ConsoleRun.RunAsync("fit", table, "--scenario",
            Repository.Data("scenarios", "market-hall.yaml"));
        Assert.Equal(("", 0), (error, code));
        Assert.Contains("one: lasted 4 h 10 min, predicted ", text, StringComparison.Ordinal);
        // Run-times alone can't tell the two apart.
        Assert.Contains("Either the battery holds ", text, StringComparison.Ordinal);
        Assert.Contains("both intervals rest on what was assumed", text.ReplaceLineEndings(" ").Replace("    ", " ",
            StringComparison.Ordinal).Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--days", "mornin", "Did you mean \"morning\"?")]
    [InlineData("--build", "tripot", "Did you mean \"tripod\"?")]
    [InlineData("--scenario", "nowhere.yaml", "There is no such file.")]
    [InlineData("--out", "notes.ipynb", "--out")]
    public async Task What_can_not_be_used_ends_with_2(string option, string value, string words)
    {
        var (code, _, error) = await ConsoleRun.RunAsync("fit", Notes, option, value);
        Assert.Equal(2, code);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_that_is_read_is_written_over()
    {
        foreach (var file in (string[])[Notes, Repository.Data("scenarios", "market-hall.yaml"),
            Repository.Data("field-notes", "market-hall-log.csv")])
        {
            var (code, _, error) = await ConsoleRun.RunAsync("fit", Notes, "--out", file);
            Assert.Equal(2, code);
            Assert.Contains("--out", error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_log_that_is_not_there_is_told_with_its_name()
    {
        using var folder = new TemporaryFolder();
        var notes = folder.Write("n.yaml", $"rigscenarios: field notes 1\nlogs:\n  one: {{file: nothing.csv, air: 3 °C}}\n");
        var (code, _, error) = await ConsoleRun.RunAsync("fit", notes, "--scenario",
            Repository.Data("scenarios", "market-hall.yaml"));
        Assert.Equal(2, code);
        Assert.Contains("nothing.csv", error, StringComparison.Ordinal);
    }
}
