namespace RigScenarios.Benchmarks;

/// <summary>Writes results so that a file is either the old one or the whole new one.</summary>
internal static class OutputFile
{
    public static void Write(string path, string text)
    {
        var full = Path.GetFullPath(path);
        var folder = Path.GetDirectoryName(full)!;
        if (!Directory.Exists(folder))
            throw new DirectoryNotFoundException($"{path}: there is no folder {folder}.");
        var temporary = Path.Combine(folder, $".{Path.GetFileName(full)}.{Environment.ProcessId}.tmp");
        try
        {
            File.WriteAllText(temporary, text);
            File.Move(temporary, full, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
