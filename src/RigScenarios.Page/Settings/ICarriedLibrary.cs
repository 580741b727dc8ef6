using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Page.Settings;

/// <summary>The library for browsers with the cells of notebooks in it, which a saved page carries so that it answers.</summary>
public interface ICarriedLibrary
{
    /// <summary>The folder that it lies in; null as long as it would first have to be made.</summary>
    string? Ready { get; }

    /// <summary>Why no saved page of a notebook can answer by itself, in whole sentences; null where one can.</summary>
    /// <param name="notebook">The notebook.</param>
    string? WhyNot(Notebook notebook);

    /// <summary>The folder that it lies in; it is made first where it isn't there, which takes minutes.</summary>
    /// <param name="cancellation">Stops the making.</param>
    /// <exception cref="IOException">It can't be made; it says why.</exception>
    Task<string> FolderAsync(CancellationToken cancellation);
}
