using RigScenarios.Notebooks.Documents;
using RigScenarios.Page.Settings;

namespace RigScenarios.Cli.Commands;

/// <summary>The library for saved pages of the living pages: beside the program where it was installed; from a checkout it is
/// published when it is first asked for, and kept as long as the program runs.</summary>
/// <param name="told">Gets a line of what takes long.</param>
internal sealed class CarriedLibrary(TextWriter told) : ICarriedLibrary, IDisposable
{
    private readonly SemaphoreSlim making = new(1, 1);
    private string? made = BrowserBuild.PackedForNotebooks;

    public string? Ready => made;

    public string? WhyNot(Notebook notebook) => LivePageFile.WhyNot(notebook);

    public async Task<string> FolderAsync(CancellationToken cancellation)
    {
        await making.WaitAsync(cancellation);
        try
        {
            return made ??= await LivePageFile.LibraryAsync(null, told, cancellation);
        }
        finally
        {
            making.Release();
        }
    }

    public void Dispose() => making.Dispose();
}
