using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Notebooks.Ahead;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Compiles notebooks for a place without a compiler: an assembly for each cell, and what else is known of it.</summary>
public static class CellsAheadWriter
{
    /// <summary>Writes a notebook's cells into a folder: <c>NAME.cells.json</c>, and one assembly for each cell that holds
    /// something to run. The same notebook gives the same files.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="folder">The folder; made where it is not there.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="NotebookInputException">A cell does not compile; its number and line stand in the message.</exception>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static void Write(Notebook notebook, string folder, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        var compiler = new CellCompiler(Path.GetDirectoryName(notebook.FilePath)!);
        var cells = new List<CellAhead>();
        Directory.CreateDirectory(folder);
        foreach (var cell in notebook.Cells.Where(cell => cell.Kind == CellKind.Code))
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"{notebook.Name}.cell-{cell.Number}");
            var emitted = compiler.Emit(cell, name, cancellation);
            if (emitted.Error is { } error)
                throw new NotebookInputException(
                    [new NotebookFailure(notebook.FileName, cell.Number, error.Line, error.Message).ToString()]);
            if (emitted.Program is { } program)
                File.WriteAllBytes(Path.Combine(folder, name + ".dll"), program);
            cells.Add(new CellAhead(cell.Number, emitted.Program is null ? null : name, emitted.Entry?.Type,
                emitted.Entry?.Method, UsesAhead.Of(emitted.Uses)));
        }

        var prose = notebook.Cells.Where(cell => cell is { Kind: CellKind.Prose, IsForNotebookPrograms: false })
            .ToDictionary(cell => cell.Number, cell => notebook.ProseHtml(cell, path => CellsFile.Link + path));
        TextFile.Write(Path.Combine(folder, notebook.Name + NotebookAhead.Ending),
            new CellsFile(notebook.Parameters.All, cells, prose).Json());
    }
}
