using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests.Live;

/// <summary>A notebook that listens: what is rerun, what is kept, and that neither changes the answer.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class LiveNotebookTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("live-").FullName;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static TheoryData<string> Committed =>
        [.. Checkout.Notebooks.Select(path => Path.GetRelativePath(Checkout.Root, path))];

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_change_reruns_only_the_cells_that_rest_on_it()
    {
        using var live = await Compile("int a = 1; // a\nint b = 2; // b", "var x = a * 10;", "var y = b * 100;",
            "var z = x + 1;", "$\"{x} {y} {z}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        Assert.Equal([1, 2, 3, 4, 5, 6], (await session.RunAsync(Values(), reader, Cancellation)).Rerun);
        Assert.Equal("10 200 11", Text(reader, 6));
        Assert.Equal([3, 5, 6], (await session.RunAsync(Values("a", "4"), reader, Cancellation)).Rerun);
        Assert.Equal("40 200 41", Text(reader, 6));
        Assert.Equal([4, 6], (await session.RunAsync(Values("a", "4", "b", "3"), reader, Cancellation)).Rerun);
        Assert.Equal("40 300 41", Text(reader, 6));
        Assert.Empty((await session.RunAsync(Values("a", "4", "b", "3"), reader, Cancellation)).Rerun);
    }

    [Fact]
    public async Task A_value_that_is_no_longer_given_goes_back_to_the_notebooks_own()
    {
        using var live = await Compile("int a = 1; // a", "$\"{a}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values("a", "7"), reader, Cancellation);
        Assert.Equal("7", Text(reader, 3));
        await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal("1", Text(reader, 3));
    }

    [Fact]
    public async Task Methods_and_types_of_earlier_cells_carry_what_they_rest_on()
    {
        using var live = await Compile(
            "int a = 1; // a", "int Twice(int x) => 2 * x * a;", "record Box(int Size);", "var box = new Box(Twice(3));",
            "box.Size.ToString()");
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal("6", Text(reader, 6));
        Assert.Equal([3, 5, 6], (await session.RunAsync(Values("a", "5"), reader, Cancellation)).Rerun);
        Assert.Equal("30", Text(reader, 6));
    }

    [Fact]
    public async Task A_cell_that_changes_an_earlier_ones_variable_is_repeated_together_with_it()
    {
        using var live = await Compile("int a = 1; // a\nint b = 1; // b", "var sum = 0;", "sum += a;",
            "sum += b;", "$\"{sum}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal("2", Text(reader, 6));
        await session.RunAsync(Values("b", "10"), reader, Cancellation);
        Assert.Equal("11", Text(reader, 6));
        await session.RunAsync(Values("a", "5", "b", "10"), reader, Cancellation);
        Assert.Equal("15", Text(reader, 6));
    }

    [Fact]
    public async Task A_cell_that_changes_a_parameter_makes_the_whole_begin_anew()
    {
        using var live = await Compile("int a = 1; // a\nint b = 1; // b", "a = a + 1;", "$\"{a} {b}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values(), reader, Cancellation);
        await session.RunAsync(Values("b", "3"), reader, Cancellation);
        Assert.Equal("2 3", Text(reader, 4));
    }

    [Fact]
    public async Task Lanes_of_one_notebook_know_nothing_of_each_other()
    {
        using var live = await Compile("int a = 1; // a", "var x = a * 10;", "Console.WriteLine(x);");
        var readers = Enumerable.Range(0, 8).Select(_ => new Listening()).ToList();
        await Task.WhenAll(readers.Select(async (reader, i) =>
        {
            var session = live.OpenSession();
            for (var round = 0; round < 20; round++)
                await session.RunAsync(Values("a", $"{i * 100 + round}"), reader, Cancellation);
        }));
        Assert.Equal(readers.Select((_, i) => $"{(i * 100 + 19) * 10}\n"), readers.Select(reader => Text(reader, 4)));
    }

    [Fact]
    public async Task A_failing_cell_is_told_and_the_next_value_can_heal_it()
    {
        using var live = await Compile("int a = 0; // a", "var x = 10 / a;", "$\"{x}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        var failed = await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal((3, 1), (failed.Failure!.Cell, failed.Failure.Line));
        Assert.Null((await session.RunAsync(Values("a", "5"), reader, Cancellation)).Failure);
        Assert.Equal("2", Text(reader, 4));
    }

    [Fact]
    public async Task A_run_that_is_overtaken_leaves_its_work_to_the_next()
    {
        using var live = await Compile("int a = 1; // a",
            "Progress(0.5, \"waiting\");\nawait Task.Delay(a == 2 ? 60000 : 0, Cancellation);\nvar x = a;", "$\"{x}\"");
        var session = live.OpenSession();
        var reader = new Listening();
        await session.RunAsync(Values(), reader, Cancellation);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => session.RunAsync(Values("a", "2"),
            new Listening((_, fraction) =>
        {
            if (fraction > 0)
                stop.Cancel();
        }), stop.Token));
        Assert.Equal("1", Text(reader, 4));
        Assert.Equal([3, 4], (await session.RunAsync(Values("a", "3"), reader, Cancellation)).Rerun);
        Assert.Equal("3", Text(reader, 4));
    }

    [Fact]
    public async Task A_parameter_left_empty_stands_on_the_files_value_and_its_control_is_told()
    {
        using var live = await Compile("double? wind = null; // mean wind, m/s, 0 to 25\nint a = 1; // a",
            "double blows = AsInFile(wind, a == 1 ? 3.2 : (double?)null, otherwise: 6);",
            "if (a == 1)\n    MovesNothing(wind, \"Nothing stands.\");", "$\"{blows}\"");
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal("3.2", Text(reader, 5));
        Assert.Equal([new ControlPart("wind") { Holds = "3.2", IsOfFile = true }], reader.Cells[3]);
        Assert.Equal([new ControlPart("wind") { WhyNothing = "Nothing stands." }], reader.Cells[4]);
        Assert.Contains("3.2\u00a0m/s, as in the file", NotebookPage.Of(session.ToRun()).ToHtml(), StringComparison.Ordinal);
        await session.RunAsync(Values("wind", "8 m/s"), reader, Cancellation);
        Assert.Equal("8", Text(reader, 5));
        await session.RunAsync(Values("wind", "", "a", "2"), reader, Cancellation);
        Assert.Equal("6", Text(reader, 5));
        Assert.Equal([new ControlPart("wind") { Holds = "6", IsOfFile = false }], reader.Cells[3]);
        Assert.Empty(reader.Cells[4]);
        var refused = await Assert.ThrowsAsync<NotebookInputException>(
            () => session.RunAsync(Values("wind", "30"), reader, Cancellation));
        Assert.Contains("or empty for what the file says", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Values_never_become_code()
    {
        using var live = await Compile("string name = \"x\"; // a name", "name");
        var (session, reader) = (live.OpenSession(), new Listening());
        const string evil = "\"; System.IO.File.Delete(\"x\"); //\n\\ {name} </script>";
        await session.RunAsync(Values("name", evil), reader, Cancellation);
        Assert.Equal(evil, Text(reader, 3));
    }

    [Theory]
    [MemberData(nameof(Committed))]
    public async Task Step_by_step_shows_what_a_run_from_the_start_shows(string name)
    {
        var notebook = NotebookFile.Load(Path.Combine(Checkout.Root, name));
        using var inFolder = new InFolder(Path.GetDirectoryName(notebook.FilePath)!);
        using var live = await NotebookCompiler.CompileAsync(notebook, cancellation: Cancellation);
        var (session, reader, values) = (live.OpenSession(), new Listening(), new Dictionary<string, string>());
        Assert.Null((await session.RunAsync(values, reader, Cancellation)).Failure);
        foreach (var parameter in notebook.Parameters.All)
        {
            values[parameter.Name] = Another(parameter, reader);
            var (before, step) = (Shown(reader, parameter), await session.RunAsync(values, reader, Cancellation));
            Assert.Null(step.Failure);
            Assert.True(before == Shown(reader, parameter) || step.Rerun.Count > 0, parameter.Name);
        }

        var fresh = new Listening();
        await live.OpenSession().RunAsync(values, fresh, Cancellation);
        Assert.Equal(fresh.Page, reader.Page);
    }

    [Fact]
    public async Task A_scenario_file_brings_its_own_builds_days_and_parts()
    {
        var notebook = NotebookFile.Load(Path.Combine(Checkout.Root, "notebooks", "01-one-build-one-day.ipynb"));
        using var inFolder = new InFolder(Path.GetDirectoryName(notebook.FilePath)!);
        using var live = await NotebookCompiler.CompileAsync(notebook,
            [new ScenarioFolder("samples", Path.Combine(Checkout.Root, "data", "scenarios"))], Cancellation);
        var (session, reader) = (live.OpenSession(), new Listening());
        await session.RunAsync(Values(), reader, Cancellation);
        Assert.Equal(["samples/island-crossing.yaml", "samples/market-hall.yaml", "samples/night-dolly.yaml",
            "samples/pottery-class.yaml",
            "samples/river-ferry.yaml", "samples/teaching-kit.yaml", "samples/winter-harbour.yaml"],
            reader.Told[0].Choices.Select(choice => choice.Value));
        Assert.Equal("samples/winter-harbour.yaml", reader.Told[0].Value);
        await session.RunAsync(Values("scenario", "samples/teaching-kit.yaml"), reader, Cancellation);
        Assert.Equal(["samples/teaching-kit.yaml", "camera-only", "workshop"],
            reader.Told.Take(3).Select(parameter => parameter.Value));
        Assert.Contains("Workshop day", ((FigurePart)reader.Cells.Values.SelectMany(parts => parts)
            .First(part => part is FigurePart)).Figure.Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../../etc/passwd")]
    [InlineData("samples/../../README.md")]
    [InlineData("/etc/passwd")]
    [InlineData("samples/..")]
    [InlineData("samples/teaching-kit.yaml\0.yaml")]
    [InlineData("samples/link.yaml")]
    [InlineData("elsewhere/teaching-kit.yaml")]
    public async Task A_page_offers_no_file_outside_its_folders(string value)
    {
        File.Copy(Path.Combine(Checkout.Root, "data", "scenarios", "teaching-kit.yaml"),
            Path.Combine(folder, "teaching-kit.yaml"));
        File.CreateSymbolicLink(Path.Combine(folder, "link.yaml"),
            Path.Combine(Checkout.Root, "data", "scenarios", "teaching-kit.yaml"));
        var notebook = NotebookFile.Load(Path.Combine(Checkout.Root, "notebooks", "01-one-build-one-day.ipynb"));
        using var live = await NotebookCompiler.CompileAsync(notebook, [new ScenarioFolder("samples", folder)], Cancellation);
        var problem = await Assert.ThrowsAsync<NotebookInputException>(() => live.OpenSession()
            .RunAsync(Values("scenario", value), new Listening(), Cancellation));
        Assert.Contains("there is no scenario file", problem.Message, StringComparison.Ordinal);
    }

    private static string Another(Parameters.NotebookParameter parameter, Listening reader)
    {
        var told = reader.Told.Single(item => item.Parameter.Name == parameter.Name);
        return parameter.Kind == Parameters.ParameterKind.Places ? Moved(reader)
            : told.Choices.Count > 1 ? told.Choices.Last(choice => choice.Value != told.Value).Value
            : parameter is { Minimum: { } low, Maximum: { } high }
                ? FormattableString.Invariant($"{Math.Round(0.35 * low + 0.65 * high)}")
            : parameter.Kind == Parameters.ParameterKind.YesNo ? told.Value == "true" ? "false" : "true"
            : parameter.Kind == Parameters.ParameterKind.ScenarioFile
                ? Path.Combine(Checkout.Root, "data", "scenarios", "winter-harbour.yaml")
            : parameter.Default;
    }

    /// <summary>The last part that slides at the front end of its mount.</summary>
    private static string Moved(Listening reader)
    {
        string Value(string name) => reader.Told.Single(item => item.Parameter.Name == name).Value;
        var part = MovedPlaces.Of(RigScenarios.Files.ScenarioFile.Read(Value("scenario")), Value("build"))[^1];
        return FormattableString.Invariant($"{part.Name} {part.Range.Greatest.Millimeters} mm");
    }

    private static string Shown(Listening reader, Parameters.NotebookParameter parameter) =>
        reader.Told.Single(item => item.Parameter.Name == parameter.Name).Value;

    private static Dictionary<string, string> Values(params string[] pairs) =>
        pairs.Chunk(2).ToDictionary(pair => pair[0], pair => pair[1]);

    private static string Text(Listening reader, int cell) => ((PrintedPart)reader.Cells[cell].Single()).Text;

    /// <summary>A notebook whose first cell starts the session and whose second holds the parameters.</summary>
    private async Task<LiveNotebook> Compile(params string[] code)
    {
        var cells = code.Prepend("RigScenarios.Notebooks.NotebookSession.Start();").Select((text, i) => (JsonNode)new JsonObject
        {
            ["cell_type"] = "code", ["source"] = text,
            ["metadata"] = new JsonObject { ["tags"] = i == 1 ? new JsonArray("parameters") : [] },
        });
        var path = Path.Combine(folder, "small.ipynb");
        await File.WriteAllTextAsync(path,
            new JsonObject { ["nbformat"] = 4, ["cells"] = new JsonArray([.. cells]) }.ToJsonString(), Cancellation);
        return await NotebookCompiler.CompileAsync(NotebookFile.Load(path), cancellation: Cancellation);
    }
}
