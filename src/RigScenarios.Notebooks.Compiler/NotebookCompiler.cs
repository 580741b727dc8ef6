using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Makes a notebook that listens of one that was read.</summary>
public static class NotebookCompiler
{
    /// <summary>Compiles a notebook. A cell that does not compile is told when a run reaches it.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="folders">The folders whose scenario files a reader may choose.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static Task<LiveNotebook> CompileAsync(Notebook notebook, IReadOnlyList<ScenarioFolder>? folders = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return Task.Run(() => Compile(notebook, folders ?? [], cancellation), cancellation);
    }

    private static LiveNotebook Compile(Notebook notebook, IReadOnlyList<ScenarioFolder> folders, CancellationToken cancellation)
    {
        var compiling = new CellCompiler(Path.GetDirectoryName(notebook.FilePath)!);
        var cells = new List<CompiledCell>();
        foreach (var cell in notebook.Cells.Where(cell => cell.Kind == CellKind.Code))
        {
            cells.Add(compiling.Compile(cell, cancellation));
            if (cells[^1].Error is not null)
                break;
        }

        return new LiveNotebook(notebook, cells, folders, compiling.Unload);
    }
}
