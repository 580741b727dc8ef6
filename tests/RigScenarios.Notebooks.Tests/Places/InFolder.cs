namespace RigScenarios.Notebooks.Tests.Places;

/// <summary>The process's current folder for the length of a test; such tests run one at a time.</summary>
internal sealed class InFolder : IDisposable
{
    private readonly string before = Environment.CurrentDirectory;

    public InFolder(string folder) => Environment.CurrentDirectory = folder;

    public void Dispose() => Environment.CurrentDirectory = before;
}
