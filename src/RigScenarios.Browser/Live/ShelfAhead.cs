using System.Reflection;
using RigScenarios.Browser.Files;
using RigScenarios.Notebooks.Ahead;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Requests.Reading;

namespace RigScenarios.Browser.Live;

/// <summary>The notebooks that came along. Their cells were compiled before the library was published; where they did not come
/// along, only the shelf is answered.</summary>
/// <param name="folders">The folders whose scenario files a reader may choose.</param>
internal sealed class ShelfAhead(IReadOnlyList<ScenarioFolder> folders) : INotebookShelf
{
    private const string Ending = ".ipynb";

    public IReadOnlyList<Notebook> All() => [.. Names().Select(Find).OfType<Notebook>()];

    public Notebook? Find(string name) =>
        Names().Contains(name, StringComparer.Ordinal) ? NotebookAhead.Read(FileOf(name), CellsOf(name)) : null;

    public INotebookReading Open(string name) => new Reading(NotebookAhead.Open(FileOf(name), CellsOf(name),
        assembly => Assembly.Load(new AssemblyName(assembly)), folders));

    public void Dispose()
    {
        // What was loaded stays as long as the program.
    }

    private static IEnumerable<string> Names() => Directory.EnumerateFiles(Folders.Notebooks, "*" + Ending)
        .Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal);

    private static string FileOf(string name) => Path.Combine(Folders.Notebooks, name + Ending);

    private static byte[] CellsOf(string name)
    {
        var file = Path.Combine(Folders.Cells, name + NotebookAhead.Ending);
        return File.Exists(file) ? File.ReadAllBytes(file) : [];
    }

    private sealed class Reading(LiveNotebook notebook) : INotebookReading
    {
        public Task<LiveNotebook> Live { get; } = Task.FromResult(notebook);

        public void Dispose() => notebook.Dispose();
    }
}
