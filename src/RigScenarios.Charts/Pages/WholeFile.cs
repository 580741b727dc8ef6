namespace RigScenarios.Charts.Pages;

/// <summary>Writes text files so that no half-written one is ever found under its name.</summary>
public static class WholeFile
{
    /// <summary>Writes the text under a temporary name beside the target, then moves it over; makes the folder where it is missing.</summary>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    public static async Task WriteAsync(string path, string text, CancellationToken cancellation = default)
    {
        var target = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        var temporary = $"{target}.{Environment.ProcessId}.tmp";
        try
        {
            await File.WriteAllTextAsync(temporary, text, cancellation);
            File.Move(temporary, target, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
