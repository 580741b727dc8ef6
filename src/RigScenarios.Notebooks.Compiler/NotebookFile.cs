using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Notebooks as files.</summary>
public static class NotebookFile
{
    /// <summary>Reads a notebook. Nothing is run.</summary>
    /// <param name="path">An <c>.ipynb</c> file, a plain one of at most <see cref="Notebook.LargestBytes"/>.</param>
    /// <exception cref="NotebookInputException">There is no such file, or it is no notebook; the message says what and
    /// where.</exception>
    public static Notebook Load(string path) => Notebook.Load(path, new Reader());

    private sealed class Reader : INotebookReader
    {
        public IReadOnlyList<NotebookParameter> Parameters(string code) => ParameterDeclarations.Read(code);

        public string Prose(NotebookCell cell, string folder, Func<string, string> addressOf) =>
            MarkdownProse.ToHtml(cell.Text, folder, addressOf);
    }
}
