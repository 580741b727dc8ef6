using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Requests.Reading;

/// <summary>The notebooks that pages read, in reading order, however their cells come to be compiled.</summary>
public interface INotebookShelf : IDisposable
{
    /// <summary>The notebooks that can be read.</summary>
    IReadOnlyList<Notebook> All();

    /// <summary>The notebook of a name; null if there is none.</summary>
    /// <param name="name">The name of its file without ending.</param>
    /// <exception cref="NotebookInputException">The file is no notebook.</exception>
    Notebook? Find(string name);

    /// <summary>A notebook to be run; the reader gives it back by disposing.</summary>
    /// <param name="name">A name that <see cref="Find"/> knows.</param>
    INotebookReading Open(string name);
}

/// <summary>One reader's hold on a notebook.</summary>
public interface INotebookReading : IDisposable
{
    /// <summary>The notebook with its cells compiled, as soon as they are.</summary>
    Task<LiveNotebook> Live { get; }
}
