using RigScenarios.Scenarios;
using RigScenarios.Tests.Files;

namespace RigScenarios.Tests.Cli;

/// <summary>Arguments that try to get more than an answer: orders to the terminal, files to be lost, values past the
/// checks.</summary>
[Collection(nameof(ConsoleRun))]
public class HostileArgumentTests
{
    private static readonly string Rig = Repository.Data("scenarios", "winter-harbour.yaml");

    public static TheoryData<string> Orders =>
        ["\u001b[2J", "\u009b31m", "a\rb", "\u202Egpj", "a\nerror: not from here", "\u0007",
        "\u2066x", "\u2028", "\u0085", "\u000b"];

    [Theory]
    [MemberData(nameof(Orders))]
    public async Task No_character_of_an_argument_gives_the_terminal_an_order(string order)
    {
        string[][] commands =
        [
            ["run", order], ["run", Rig, "--quick", "--build", order], ["run", Rig, "--quick", "--days", order],
            ["run", Rig, "--quick", "--set", order], ["run", Rig, "--quick", "--set", $"{order}=1"],
            ["run", Rig, "--quick", "--set", $"days.day-one.ambient={order}"],
            ["run", Rig, "--quick", "--set", $"kit.{order}.count=1"], ["run", Rig, "--reserve", order], [order], [$"--{order}"],
            ["check", order], ["travel", Rig, "--journey", order], ["sweep", Rig, "--over", order, "--out", "x.csv"],
            ["sheet", Rig, "--kind", order, "--out", "x.html"], ["sheet", Rig, "--kind", "shopping", "--build", order, "--json"],
            ["sheet", Rig, "--kind", "build", "--paper", order, "--out", "x.html"],
            ["sweep", Rig, "--over", "days.day-one.ambient=0 °C..1 °C", "--out", Path.Combine(Rig, order)],
            ["compare", order], ["compare", Rig, "--builds", order], ["compare", Rig, "--base", order],
            ["compare", Rig, "--with", order], ["compare", Rig, "--with", $"{order}: conditions.ambient=1 °C"],
            ["compare", Rig, "--quick", "--days", order], ["compare", Rig, "--quick", "--out", Path.Combine(Rig, order)],
            ["notebook", order, "--out", "x.html"], ["open", order, "--no-browser"],
            ["open", "--folder", order, "--no-browser"], ["open", "--port", order], ["new", order],
        ];
        foreach (var command in commands)
        {
            var (code, output, error) = await ConsoleRun.RunAsync(command);
            var told = $"{string.Join(' ', command.Select(ShownText.Of))}: {code}, {ShownText.Of(output + error)}";
            Assert.True(code == 2, told);
            Each.Of((output + error).Split('\n'), line => Assert.True(ShownText.FirstUnseen(line.TrimEnd('\r')) < 0, told));
            Assert.DoesNotContain("\nerror: not from here", error, StringComparison.Ordinal);
            Assert.DoesNotContain("inside RigScenarios", error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("parts.compact-body-b.power.peak=1 W", "parts.compact-body-b.power.peak", "below the draw at work")]
    [InlineData("parts.dummy-battery-7v6.regulator.input-minimum=20 V", "parts.dummy-battery-7v6.regulator", "not below")]
    [InlineData("parts.rods-150.rods.bore=20 mm", "parts.rods-150.rods.bore", "not below the diameter")]
    [InlineData("parts.tripod-middle.legs.centre-height=3 m", "parts.tripod-middle.legs.centre-height", "not below their top")]
    [InlineData("parts.head-middle.head.counterbalance-to=3 N·m", "parts.head-middle.head.counterbalance-steps",
        "either steps or a range")]
    [InlineData("parts.dummy-battery-7v6.kind=lens", "parts.dummy-battery-7v6.regulator", "belongs to parts of the kind")]
    public async Task A_set_value_gets_the_checks_that_a_file_gets(string set, string path, string problem)
    {
        foreach (var command in (string[])["run", "day", "balance", "wiring", "travel"])
        {
            var (code, output, error) = await ConsoleRun.RunAsync(command, Rig, "--set", set);
            Assert.True(code == 2, $"{command}: {code} {output} {error}");
            Assert.Empty(output);
            Assert.Contains(path, error, StringComparison.Ordinal);
            Assert.Contains(problem, error, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("[red]x[/]")]
    [InlineData("[/]")]
    [InlineData("[bold")]
    [InlineData("{0} %s")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("=1+1")]
    [InlineData("שלום 👩‍🚀")]
    public async Task A_title_that_looks_like_markup_stays_text(string odd)
    {
        var title = $"A {odd}";
        foreach (var command in (string[])["run", "day", "balance", "wiring", "travel"])
        {
            string[] words = [command, Rig, "--set", $"title={title}", "--set", $"parts.compact-body-b.name={title}"];
            var (code, output, error) = await ConsoleRun.RunAsync(command == "run" ? [.. words, "--quick"] : words);
            Assert.True(code == 0, $"{command}: {code} {error}");
            Assert.StartsWith(title, output.TrimStart(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("run", "")]
    [InlineData("run", " ")]
    [InlineData("check", "")]
    [InlineData("travel", "")]
    [InlineData("notebook", "", "--out", "x.html")]
    [InlineData("open", "", "--no-browser")]
    public async Task A_name_without_a_letter_names_no_file(params string[] words)
    {
        var (code, output, error) = await ConsoleRun.RunAsync(words);
        Assert.Equal(2, code);
        Assert.Contains("No file is named. Accepted: a ", output + error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("parts-from=[/etc]", "in the file itself")]
    [InlineData("parts-from=[/dev/zero]", "in the file itself")]
    [InlineData("kit={}", "This names no thing of the kit")]
    [InlineData("days.day-one.ambient={a: &x b}", "References are not accepted")]
    public async Task A_change_that_would_do_nothing_or_too_much_is_refused(string set, string problem)
    {
        var (code, _, error) = await ConsoleRun.RunAsync("run", Rig, "--quick", "--set", set);
        Assert.Equal(2, code);
        Assert.Contains(problem, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task However_long_an_argument_is_the_message_is_short()
    {
        foreach (var set in (string[])[string.Concat(Enumerable.Repeat("a.", 20_000)) + "=1", new string('x', 50_000),
            "days.day-one.ambient=" + new string('9', 50_000) + " °C", "title=" + new string('x', 50_000),
            "kit." + new string('k', 900) + "={part: x}"])
        {
            var (code, _, error) = await ConsoleRun.RunAsync("run", Rig, "--quick", "--set", set);
            Assert.Equal(2, code);
            Assert.InRange(error.Length, 10, 3000);
        }
    }

    [Fact]
    public async Task A_table_never_takes_the_place_of_what_it_comes_from_or_of_a_rig()
    {
        using var folder = new TemporaryFolder();
        var parts = folder.Write("parts.yaml", File.ReadAllText(Repository.Data("parts", "batteries.yaml")));
        var text = File.ReadAllText(Rig).Replace("[../parts]",
            $"[\"{Repository.Data("parts").Replace('\\', '/')}\"]", StringComparison.Ordinal);
        var rig = folder.Write("rig.yaml", text);
        var other = folder.Write("other.yaml", "title: somebody's");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "link.csv"), rig);
        Directory.CreateSymbolicLink(Path.Combine(folder.Path, "here"), folder.Path);
        foreach (var target in (string[])[rig, parts, other, Path.Combine(folder.Path, "link.csv"),
            Path.Combine(folder.Path, "here", "rig.yaml"), folder.Path, Path.Combine(rig, "t.csv"),
            Repository.Data("parts", "power.yaml"), Path.Combine(folder.Path, "table.yaml"), "-", "", folder.Path + "/"])
        {
            var (code, output, error) = await Sweep(rig, target);
            Assert.True(code == 2, $"{target}: {code} {output} {error}");
            Assert.Empty(output);
            Assert.StartsWith("error: --out: Found ", error, StringComparison.Ordinal);
        }
        Assert.Equal(text, File.ReadAllText(rig));
        Assert.Equal("title: somebody's", File.ReadAllText(other));
        Assert.False(File.Exists(Path.Combine(folder.Path, "table.yaml")));
        var table = Path.Combine(folder.Path, "new", "t.csv");
        Assert.Equal(0, (await Sweep(rig, table)).Code);
        Assert.Equal(0, (await Sweep(rig, table)).Code);
        Assert.Equal(["t.csv", "t.csv-metadata.json"],
            Directory.GetFileSystemEntries(Path.Combine(folder.Path, "new")).Select(Path.GetFileName).Order());
    }

    [Fact(Timeout = 120_000)]
    public async Task Pipes_and_devices_are_neither_read_nor_replaced_by_any_command()
    {
        using var folder = new TemporaryFolder();
        foreach (var special in (string[])[SpecialFiles.Pipe(Path.Combine(folder.Path, "pipe.yaml")), SpecialFiles.Endless()])
        {
            foreach (var command in (string[][])[["run", special], ["check", special], ["day", special], ["balance", special],
                ["wiring", special], ["travel", special], ["open", special, "--no-browser"],
                ["notebook", special, "--out", Path.Combine(folder.Path, "x.html")]])
            {
                TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
                var (code, output, error) = await ConsoleRun.RunAsync(command);
                Assert.True(code == 2, $"{string.Join(' ', command)}: {code} {output} {error}");
                Assert.Contains("no plain file", output + error, StringComparison.Ordinal);
            }
            Assert.Equal(2, (await Sweep(Rig, special)).Code);
            Assert.Equal(2, (await ConsoleRun.RunAsync("notebook", Repository.Root + "/notebooks/03-the-cold.ipynb", "--out",
                special)).Code);
            Assert.True(File.Exists(special));
        }
    }

    [Fact]
    public async Task A_page_never_takes_the_place_of_its_notebook_or_of_a_rig()
    {
        using var folder = new TemporaryFolder();
        var notebook = folder.Write("n.ipynb", File.ReadAllText(Repository.Root + "/notebooks/03-the-cold.ipynb"));
        var rig = folder.Write("rig.yaml", "title: mine");
        string[][] wrong =
        [
            ["--out", notebook], ["--out", rig], ["--out", folder.Path],
            ["--out", Path.Combine(folder.Path, "p.html"), "--executed", notebook],
            ["--out", Path.Combine(folder.Path, "p.html"), "--executed", rig],
            ["--out", Path.Combine(folder.Path, "p.html"), "--executed", Path.Combine(folder.Path, "p.html")],
        ];
        foreach (var options in wrong)
        {
            var (code, _, error) = await ConsoleRun.RunAsync(["notebook", notebook, .. options]);
            Assert.True(code == 2, $"{string.Join(' ', options)}: {code} {error}");
        }
        Assert.Equal("title: mine", File.ReadAllText(rig));
        Assert.Equal(2, Directory.GetFiles(folder.Path).Length);
    }

    [Theory]
    [InlineData("rig.yaml", "rig.yaml")]
    [InlineData("my rig.yaml", "\"my rig.yaml\"")]
    [InlineData("a$(touch owned).yaml", "'a$(touch owned).yaml'")]
    [InlineData("a;b.yaml", "\"a;b.yaml\"")]
    [InlineData("it's `x`.yaml", "'it'\\''s `x`.yaml'")]
    public async Task A_command_that_is_offered_to_be_typed_runs_nothing_else(string name, string typed)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the shell of this system quotes in another way");
        using var folder = new TemporaryFolder();
        var rig = folder.Write(name, File.ReadAllText(Rig).Replace("[../parts]", $"[{Repository.Data("parts")}]",
            StringComparison.Ordinal));
        var (code, output, _) = await ConsoleRun.RunAsync("balance", rig);
        Assert.Equal(0, code);
        var whole = typed[0] is '\'' or '"' ? typed[0] + folder.Path + "/" + typed[1..] : folder.Path + "/" + typed;
        Assert.Contains($"rigscenarios run {whole}", output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    private static Task<(int Code, string Out, string Error)> Sweep(string rig, string target) =>
        ConsoleRun.RunAsync("sweep", rig,
        "--build", "shoulder", "--over", "days.day-one.ambient=0 °C..1 °C:2", "--out", target);
}
