using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Documents;

/// <summary>Makes of a notebook's cells what needs a parser, or had one when the notebook was made ready for a place without.
/// </summary>
internal interface INotebookReader
{
    /// <summary>What the cell tagged <c>parameters</c> declares, in its order. Its code is not run.</summary>
    /// <param name="code">The text of the cell.</param>
    IReadOnlyList<NotebookParameter> Parameters(string code);

    /// <summary>A text cell as HTML. Raw HTML in it stays text, and nothing in it makes the page fetch anything.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="folder">The notebook's folder: pictures lie relative to it and are put into the page.</param>
    /// <param name="addressOf">The address of another notebook's page by that notebook's path without ending.</param>
    string Prose(NotebookCell cell, string folder, Func<string, string> addressOf);
}
