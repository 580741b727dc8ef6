using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>A notebook program that runs a cell, such as Jupyter, as this library needs it.</summary>
internal interface INotebookProgram
{
    /// <summary>Cancelled when its reader stops the cell; never cancelled outside of one.</summary>
    CancellationToken Cancellation { get; }

    /// <summary>Makes the library's names and pictures known to it.</summary>
    void Start();

    void Show(PagePart part);

    /// <summary>Shows a value as a cell that ends with it would.</summary>
    void ShowValue(object value);

    /// <summary>Tells how far the cell has come, in place of what was told before.</summary>
    void Progress(ProgressNote note);

    /// <summary>Says how values of a type are shown.</summary>
    void Register<T>(Func<T, IEnumerable<PagePart>> parts);
}
