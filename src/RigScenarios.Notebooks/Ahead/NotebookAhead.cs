using System.Reflection;
using System.Text.RegularExpressions;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Ahead;

/// <summary>A notebook whose cells were compiled earlier, elsewhere: it listens without a compiler.</summary>
public static partial class NotebookAhead
{
    /// <summary>What the file beside a notebook's assemblies ends with, behind the notebook's name.</summary>
    public const string Ending = ".cells.json";

    /// <summary>Reads a notebook.</summary>
    /// <param name="path">The notebook's file, as it was when it was compiled.</param>
    /// <param name="cells">The description that was written with its assemblies; empty where there is none: then it has neither
    /// parameters nor prose, and is known by its title, its sentence and its picture.</param>
    /// <exception cref="NotebookInputException">There is no such file, or it is no notebook.</exception>
    public static Notebook Read(string path, ReadOnlySpan<byte> cells) =>
        Notebook.Load(path, new Reader(cells.IsEmpty ? Nothing : CellsFile.Read(cells)));

    /// <summary>Opens a notebook that was compiled.</summary>
    /// <param name="path">The notebook's file, as it was when it was compiled.</param>
    /// <param name="cells">The description that was written with its assemblies.</param>
    /// <param name="load">Gives an assembly by its name.</param>
    /// <param name="folders">The folders whose scenario files a reader may choose.</param>
    /// <exception cref="NotebookInputException">There is no such file, or it is no notebook, or its cells did not come along.
    /// </exception>
    public static LiveNotebook Open(string path, ReadOnlySpan<byte> cells, Func<string, Assembly> load,
        IReadOnlyList<ScenarioFolder> folders)
    {
        ArgumentNullException.ThrowIfNull(load);
        if (cells.IsEmpty)
            throw new NotebookInputException(
                [$"{Path.GetFileName(path)}: its cells did not come along, so it does not run here."]);
        var file = CellsFile.Read(cells);
        var notebook = Notebook.Load(path, new Reader(file));
        return new LiveNotebook(notebook,
            [.. file.Cells.Select(cell => Compiled(notebook.Cells[cell.Number - 1], cell, load))], folders, () => { });
    }

    private static CellsFile Nothing { get; } = new([], [], new Dictionary<int, string>());

    private static CompiledCell Compiled(NotebookCell cell, CellAhead ahead, Func<string, Assembly> load)
    {
        var uses = ahead.Uses.ToUses();
        if (ahead is not { Assembly: { } assembly, Type: { } name, Method: { } run })
            return new CompiledCell(cell, null, null, null, uses);
        var type = load(assembly).GetType(name, throwOnError: true)!;
        var method = type.GetMethod(run, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!;
        return new CompiledCell(cell, null, method.CreateDelegate<Func<object?[], Task<object?>>>(), type, uses);
    }

    private sealed partial class Reader(CellsFile file) : INotebookReader
    {
        public IReadOnlyList<NotebookParameter> Parameters(string code) => file.Parameters;

        public string Prose(NotebookCell cell, string folder, Func<string, string> addressOf) =>
            Links().Replace(file.Prose[cell.Number], match => $"href=\"{addressOf(match.Groups["path"].Value)}");

        [GeneratedRegex($"href=\"{CellsFile.Link}(?<path>[^\"#]*)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
        private static partial Regex Links();
    }
}
