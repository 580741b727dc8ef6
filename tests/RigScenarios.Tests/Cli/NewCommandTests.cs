using RigScenarios.Cells.Aging;
using RigScenarios.Cli.Commands;
using RigScenarios.Files;
using Spectre.Console.Testing;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class NewCommandTests
{
    private static readonly string Parts = Repository.Data("parts");

    private static readonly DateOnly Today = new(2026, 11, 30);

    [Fact]
    public async Task The_questions_lead_to_a_file_that_run_answers_the_same()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        var file = Path.Combine(folder.Path, "my-rig.yaml");
        Answers(console);
        console.Input.PushTextWithEnter("y");
        Assert.Equal(0, await Run(console, file));
        Assert.Equal([file], Directory.GetFiles(folder.Path));
        var scenario = ScenarioFile.Read(file);
        Assert.Equal("Night ferry", scenario.Title);
        Assert.Equal("compact-body-b", scenario.Kit["camera"].Part);
        Assert.Equal("My monitor", scenario.PartOf("monitor")!.Name);
        Assert.Equal(138, scenario.PartOf("monitor")!.Size!.Width.Millimeters, 9);
        Assert.Equal(["cage-full"], scenario.Builds["rig"].Carries);
        Assert.Equal(-8, scenario.Days["day"].Ambient!.Value.DegreesCelsius);
        Assert.Equal(90, scenario.Builds["rig"].Battery.CapacityLeft!.Value.Percent);
        var (code, text, error) = await ConsoleRun.RunAsync("run", file);
        Assert.Equal((0, ""), (code, error));
        Assert.Contains(text.Split('\n')[1].Trim()[..30], console.Output, StringComparison.Ordinal);
        var (_, json, _) = await ConsoleRun.RunAsync("run", file, "--json", "--quick");
        Assert.Contains("My monitor, draw on standby", json, StringComparison.Ordinal);
        Assert.Contains("rigscenarios run", console.Output, StringComparison.Ordinal);
        Assert.Contains("(proposed)", console.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task How_old_the_battery_is_is_asked_in_words_and_holds_today()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        var file = Path.Combine(folder.Path, "my-rig.yaml");
        Answers(console, age: ["March", "2023-03", "no", "half", "warm store", "4", ""]);
        console.Input.PushTextWithEnter("y");
        Assert.Equal(0, await Run(console, file));
        Assert.Contains("a month or a day", console.Output, StringComparison.Ordinal);
        var life = ScenarioFile.Read(file).Builds["rig"].Battery.Life!;
        Assert.Equal(("2023-03", Today, Kept.Half, StoragePlace.WarmStore, (double?)4, null),
            (life.Bought.ToString(), life.Until, life.Kept, life.Place, life.ShootsPerMonth, life.Emptied));
        Assert.Equal(90, ScenarioFile.Read(file).Builds["rig"].Battery.CapacityLeft!.Value.Percent);
    }

    [Fact]
    public async Task A_proposed_feed_can_be_changed()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        var file = Path.Combine(folder.Path, "my-rig");
        Answers(console);
        console.Input.PushTextWithEnter("n");
        // The camera's line: the proposal stands first, the plate and the battery next.
        console.Input.PushKey(ConsoleKey.DownArrow);
        console.Input.PushKey(ConsoleKey.Enter);
        for (var line = 0; line < 3; line++)
            console.Input.PushKey(ConsoleKey.Enter);
        // Straight from the plate would be the wrong voltage: it is asked again, for that line alone.
        console.Input.PushKey(ConsoleKey.DownArrow);
        console.Input.PushKey(ConsoleKey.DownArrow);
        console.Input.PushKey(ConsoleKey.DownArrow);
        console.Input.PushKey(ConsoleKey.Enter);
        console.Input.PushTextWithEnter("y");
        Assert.Equal(0, await Run(console, file));
        Assert.Contains("WRONG VOLTAGE", console.Output, StringComparison.Ordinal);
        Assert.NotEmpty(ScenarioFile.Read(file + ".yaml").Builds["rig"].Regulators);
    }

    [Fact]
    public async Task A_figure_that_can_not_be_read_is_asked_again_with_what_is_accepted()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        Answers(console, cold: ["cold", "-8"]);
        console.Input.PushTextWithEnter("y");
        Assert.Equal(0, await Run(console, Path.Combine(folder.Path, "my-rig.yaml")));
        Assert.Contains("Probably \"-8 °C\" was", console.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_there_is_kept_unless_told_otherwise()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        var file = folder.Write("my-rig.yaml", "mine");
        console.Input.PushTextWithEnter("n");
        Assert.Equal(130, await Run(console, file));
        Assert.Equal("mine", await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
        Assert.Contains("Nothing was written", console.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stopping_half_way_leaves_nothing_behind()
    {
        using var folder = new TemporaryFolder();
        using var console = Terminal();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        console.Input.PushTextWithEnter("Night ferry");
        Choose(console, "Compact body B");
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => NewCommand.RunAsync(console,
            Path.Combine(folder.Path, "my-rig.yaml"), [Parts], Today, stop.Token));
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public async Task Without_a_terminal_it_says_what_to_do_and_ends_with_2()
    {
        using var folder = new TemporaryFolder();
        using var console = new TestConsole();
        console.Profile.Capabilities.Interactive = false;
        var error = Console.Error;
        using var written = new StringWriter();
        try
        {
            Console.SetError(written);
            Assert.Equal(2, await Run(console, Path.Combine(folder.Path, "my-rig.yaml")));
        }
        finally
        {
            Console.SetError(error);
        }
        Assert.Contains("terminal", written.ToString(), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    private static Task<int> Run(TestConsole console, string file) =>
        NewCommand.RunAsync(console, file, [Parts], Today, TestContext.Current.CancellationToken);

    private static TestConsole Terminal()
    {
        var console = new TestConsole().Interactive();
        console.Profile.Width = 120;
        console.Profile.Capabilities.Ansi = true;
        return console;
    }

    /// <summary>A body, a brick, a plate, a monitor of one's own, a cage, the first of the days.</summary>
    private static void Answers(TestConsole console, string[]? cold = null, string[]? age = null)
    {
        console.Input.PushTextWithEnter("Night ferry");
        Choose(console, "Compact body B");
        Choose(console, "Brick 190 Wh");
        Choose(console, "Plate with voltage guard");
        console.Input.PushKey(ConsoleKey.Enter);
        // Up from the first row is the last one: "Mine is not listed".
        console.Input.PushKey(ConsoleKey.UpArrow);
        console.Input.PushKey(ConsoleKey.Spacebar);
        console.Input.PushKey(ConsoleKey.Enter);
        foreach (var figure in (string[])["My monitor", "", "12 V", "0.8 A", "", "", "", "310 g", "24 x 138 x 86 mm"])
            console.Input.PushTextWithEnter(figure);
        for (var question = 0; question < 4; question++)
            console.Input.PushKey(ConsoleKey.Enter);
        // No head and no legs: "None" comes first.
        console.Input.PushKey(ConsoleKey.Enter);
        console.Input.PushKey(ConsoleKey.Enter);
        // The last question about things begins with the cages; the second is the full one.
        console.Input.PushKey(ConsoleKey.DownArrow);
        console.Input.PushKey(ConsoleKey.Spacebar);
        console.Input.PushKey(ConsoleKey.Enter);
        console.Input.PushKey(ConsoleKey.Enter);
        console.Input.PushKey(ConsoleKey.Enter);
        foreach (var text in (string[])[.. cold ?? ["-8 °C"], .. cold is null ? (string[])[] : ["-8 °C"], "", "",
            .. age ?? [""], "90 %", "15 °C"])
            console.Input.PushTextWithEnter(text);
    }

    private static void Choose(TestConsole console, string name)
    {
        console.Input.PushText(name);
        console.Input.PushKey(ConsoleKey.Enter);
    }
}
