using System.Reflection;
using System.Runtime.Loader;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Ahead;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>Cells that were compiled ahead are the same notebook: what they show, what a change reruns, what stands around
/// them.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class CellsAheadTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("cells-").FullName;
    private readonly AssemblyLoadContext loaded = new("cells", isCollectible: true);

    private static string Committed => Path.Combine(Checkout.Root, "notebooks", "00-will-it-work.ipynb");

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public void Dispose()
    {
        loaded.Unload();
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("trial.ipynb")]
    [InlineData("results.ipynb")]
    [InlineData("moves.ipynb")]
    public async Task They_show_what_the_notebook_shows(string name)
    {
        var notebook = NotebookFile.Load(Checkout.TestNotebook(name));
        var expected = await NotebookRunner.RunAsync(notebook, cancellation: Cancellation);
        using var ahead = Ahead(notebook);
        var session = ahead.OpenSession();
        await RunAsync(session, notebook, []);
        Assert.Equal(Texts(expected), Texts(session.ToRun()));
        Assert.NotEmpty(Texts(expected));
    }

    [Fact]
    public async Task A_change_reruns_the_same_cells()
    {
        var notebook = NotebookFile.Load(Checkout.TestNotebook("trial.ipynb"));
        var name = notebook.Parameters.All.First(parameter => parameter.Kind == ParameterKind.Number);
        using var compiled = await NotebookCompiler.CompileAsync(notebook, cancellation: Cancellation);
        using var ahead = Ahead(notebook);
        var (expected, found) = (compiled.OpenSession(), ahead.OpenSession());
        await RunAsync(expected, notebook, []);
        await RunAsync(found, notebook, []);
        var change = new Dictionary<string, string> { [name.Name] = name.Maximum is { } most ? $"{most}" : "1" };
        var rerun = await RunAsync(expected, notebook, change);
        Assert.Equal(rerun.Rerun, (await RunAsync(found, notebook, change)).Rerun);
        Assert.True(rerun.Rerun.Count < compiled.Notebook.Cells.Count(cell => cell.Kind == CellKind.Code));
        Assert.Equal(Texts(expected.ToRun()), Texts(found.ToRun()));
    }

    [Fact]
    public void Prose_and_parameters_stand_as_they_were_read()
    {
        var notebook = NotebookFile.Load(Committed);
        using var ahead = Ahead(notebook);
        Assert.Equal(notebook.Title, ahead.Notebook.Title);
        Assert.Equal(notebook.Parameters.All.Select(Said), ahead.Notebook.Parameters.All.Select(Said));
        var prose = notebook.Cells.Where(cell => cell is { Kind: CellKind.Prose, IsForNotebookPrograms: false }).ToList();
        var expected = prose.Select(cell => notebook.ProseHtml(cell, path => $"there/{path}")).ToList();
        Assert.Equal(expected, prose.Select(cell => ahead.Notebook.ProseHtml(cell, path => $"there/{path}")));
        Assert.Contains(expected, html => html.Contains("\"there/", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_notebook_gives_the_same_files()
    {
        var notebook = NotebookFile.Load(Checkout.TestNotebook("trial.ipynb"));
        var (first, second) = (Path.Combine(folder, "first"), Path.Combine(folder, "second"));
        CellsAheadWriter.Write(notebook, first, Cancellation);
        CellsAheadWriter.Write(notebook, second, Cancellation);
        string[] names = [.. Directory.EnumerateFiles(first).Select(file => Path.GetFileName(file)).Order()];
        Each.Of(names, file => Assert.Equal(File.ReadAllBytes(Path.Combine(first, file)),
            File.ReadAllBytes(Path.Combine(second, file))));
    }

    [Fact]
    public void A_cell_that_does_not_compile_is_told_and_where()
    {
        var problem = Assert.Throws<NotebookInputException>(() => CellsAheadWriter.Write(
            NotebookFile.Load(Checkout.TestNotebook("compile-error.ipynb")), folder, Cancellation));
        Assert.Contains("compile-error.ipynb, cell ", Assert.Single(problem.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_its_cells_a_notebook_is_known_by_what_the_shelf_shows_and_does_not_run()
    {
        var notebook = NotebookFile.Load(Committed);
        var read = NotebookAhead.Read(notebook.FilePath, []);
        Assert.Equal((notebook.Title, notebook.Sentence, notebook.PictureFile), (read.Title, read.Sentence, read.PictureFile));
        Assert.Throws<NotebookInputException>(() => NotebookAhead.Open(notebook.FilePath, [], _ => null!, []));
    }

    private LiveNotebook Ahead(Notebook notebook)
    {
        CellsAheadWriter.Write(notebook, folder, Cancellation);
        loaded.Resolving += (_, name) => File.Exists(FileOf(name.Name!)) ? Load(name.Name!) : null;
        var cells = File.ReadAllBytes(Path.Combine(folder, notebook.Name + NotebookAhead.Ending));
        return NotebookAhead.Open(notebook.FilePath, cells, Load, []);
    }

    private Assembly Load(string name) => loaded.Assemblies.FirstOrDefault(one => one.GetName().Name == name)
        ?? loaded.LoadFromStream(new MemoryStream(File.ReadAllBytes(FileOf(name))));

    private string FileOf(string assembly) => Path.Combine(folder, assembly + ".dll");

    // As whoever opens notebooks does: their cells name files as seen from their folder.
    private static async Task<LiveRun> RunAsync(LiveSession session, Notebook notebook, Dictionary<string, string> values)
    {
        var before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
        try
        {
            var run = await session.RunAsync(values, new Unseen(), Cancellation);
            Assert.Null(run.Failure);
            return run;
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    private static List<string> Texts(NotebookRun run) =>
        [.. run.Cells.SelectMany(cell => cell.Outputs.Select(part => $"{cell.Cell.Number}: {PartHtml.Of(part)}"))];

    private static string Said(NotebookParameter parameter) =>
        $"{parameter.Name} {parameter.Kind} {parameter.Label} {parameter.Default} {parameter.Accepted} {parameter.LiteralSuffix}";

    private sealed class Unseen : ILiveObserver
    {
        public void Parameters(IReadOnlyList<LiveParameter> parameters)
        {
        }

        public void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
        }

        public void Progress(int cell, double fraction, string text)
        {
        }
    }
}
