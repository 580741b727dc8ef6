namespace RigScenarios.Requests.OwnFiles;

/// <summary>A scenario file on the shelf.</summary>
/// <param name="Folder">"own" or "samples".</param>
/// <param name="Name">The file's name.</param>
/// <param name="Title">The scenario's title; the file's name where it can't be read.</param>
/// <param name="Errors">How many errors it has.</param>
internal sealed record RigFile(string Folder, string Name, string Title, int Errors)
{
    public string Id => $"{Folder}/{Name}";
}

/// <summary>The text of a scenario file, and what it was when it was read.</summary>
/// <param name="Folder">"own" or "samples".</param>
/// <param name="Name">The file's name.</param>
/// <param name="Path">The full path.</param>
/// <param name="Text">The text.</param>
internal sealed record RigText(string Folder, string Name, string Path, string Text)
{
    public string Id => $"{Folder}/{Name}";

    /// <summary>Whether it may be written.</summary>
    public bool IsWritable => Folder == RigFiles.Own;

    /// <summary>Changes with every letter of the text: tells whether someone else wrote the file meanwhile.</summary>
    public string Version => VersionOf(Text);

    public static string VersionOf(string text) =>
        Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(text)))[..32];
}
