using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Requests.Reading;

namespace RigScenarios.Page.Shelf;

/// <summary>
/// The notebooks of one folder in reading order. Each is compiled once, when first opened, and shared by all readers; again
/// only after its file has changed.
/// </summary>
internal sealed class NotebookShelf(string folder, IReadOnlyList<ScenarioFolder> scenarios) : INotebookShelf
{
    private const string Ending = ".ipynb";

    private readonly Lock gate = new();
    private readonly Dictionary<string, OpenNotebook> open = new(StringComparer.Ordinal);

    /// <summary>The folder.</summary>
    public string Folder => folder;

    /// <summary>The notebooks that can be read, by the names of their files; the names order them.</summary>
    public IReadOnlyList<Notebook> All() =>
        [.. Names().Select(name => TryLoad(name)).OfType<Notebook>()];

    /// <summary>The notebook of a name; null if there is none.</summary>
    /// <exception cref="NotebookInputException">The file is no notebook.</exception>
    public Notebook? Find(string name) => Names().Contains(name, StringComparer.Ordinal) ? NotebookFile.Load(FileOf(name)) : null;

    /// <summary>A notebook that is on the shelf, being compiled; the reader gives it back by disposing.</summary>
    /// <param name="name">A name that <see cref="Find"/> knows.</param>
    public INotebookReading Open(string name)
    {
        lock (gate)
        {
            var changed = File.GetLastWriteTimeUtc(FileOf(name));
            if (!open.TryGetValue(name, out var notebook) || notebook.Changed != changed || notebook.HasFailed)
            {
                notebook?.Close();
                notebook = new OpenNotebook(FileOf(name), changed, scenarios);
                open[name] = notebook;
            }
            return notebook.Read();
        }
    }

    /// <summary>Compiles all notebooks one after the other. One that can't be is left to whoever opens it: they are told
    /// why.</summary>
    public async Task PrepareAsync(CancellationToken cancellation)
    {
        try
        {
            foreach (var notebook in All())
            {
                cancellation.ThrowIfCancellationRequested();
                using var reading = Open(notebook.Name);
                await reading.Live.WaitAsync(cancellation);
            }
        }
        catch (Exception exception) when (exception is OperationCanceledException or NotebookInputException or IOException
            or UnauthorizedAccessException)
        {
            // Opening it says what is wrong.
        }
    }

    public void Dispose()
    {
        lock (gate)
        {
            foreach (var notebook in open.Values)
                notebook.Close();
            open.Clear();
        }
    }

    // A name that a request brings is only compared with these; no path is made of one that isn't among them.
    private IEnumerable<string> Names() => Directory.EnumerateFiles(folder, "*" + Ending)
        .Where(file => new FileInfo(file).LinkTarget is null)
        .Select(file => Path.GetFileNameWithoutExtension(file))
        .Where(name => !name.StartsWith('.'))
        .Order(StringComparer.Ordinal);

    private string FileOf(string name) => Path.Combine(folder, name + Ending);

    private Notebook? TryLoad(string name)
    {
        try
        {
            return NotebookFile.Load(FileOf(name));
        }
        catch (NotebookInputException)
        {
            // One broken file leaves the others on the shelf; opening it by its address says what is wrong.
            return null;
        }
    }
}
