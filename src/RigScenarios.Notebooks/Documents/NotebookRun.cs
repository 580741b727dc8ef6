using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Documents;

/// <summary>What a run of a notebook gave.</summary>
/// <param name="Notebook">The notebook.</param>
/// <param name="Parameters">The values used.</param>
/// <param name="Cells">What each code cell that was run showed, in order; a failing cell is the last.</param>
/// <param name="Failure">What stopped the run, or null where all cells ran.</param>
/// <param name="Elapsed">How long it took.</param>
public sealed record NotebookRun(
    Notebook Notebook,
    IReadOnlyList<ParameterValue> Parameters,
    IReadOnlyList<CellRun> Cells,
    NotebookFailure? Failure,
    TimeSpan Elapsed)
{
    /// <summary>Whether all cells ran.</summary>
    public bool Succeeded => Failure is null;

    /// <summary>The answers that the notebook gave, in order: what a run is for, in words.</summary>
    public IReadOnlyList<AnswerPart> Answers => [.. Cells.SelectMany(cell => cell.Outputs).OfType<AnswerPart>()];
}

/// <summary>What a cell showed.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Outputs">What it showed, in order.</param>
public sealed record CellRun(NotebookCell Cell, IReadOnlyList<PagePart> Outputs);

/// <summary>Why a notebook stopped, for the person who reads it: where, and the message, never a stack trace.</summary>
/// <param name="Notebook">Name of the notebook's file.</param>
/// <param name="Cell">Number of the cell, from 1.</param>
/// <param name="Line">Line in the cell, from 1, or null where it is not known.</param>
/// <param name="Message">What happened.</param>
public sealed record NotebookFailure(string Notebook, int Cell, int? Line, string Message)
{
    /// <summary>All of it in one text: "01-runtime.ipynb, cell 4, line 2: …".</summary>
    public override string ToString() => $"{Notebook}, cell {Cell}{(Line is { } line ? $", line {line}" : "")}: {Message}";
}

/// <summary>How far a run has come.</summary>
/// <param name="Notebook">Name of the notebook's file.</param>
/// <param name="Cell">The code cell that begins or reports, counted among code cells from 1.</param>
/// <param name="Cells">How many code cells there are.</param>
/// <param name="Text">What is being done: the heading before the cell, or what the cell itself says.</param>
public sealed record NotebookProgress(string Notebook, int Cell, int Cells, string Text);
