using RigScenarios.Parts;

namespace RigScenarios.Files;

/// <summary>
/// Parts files that were read without a problem, for whoever reads several scenarios with the same parts: each is kept as long as
/// neither its time nor its length changes. Several threads may use one.
/// </summary>
public sealed class KnownParts
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, (Mark Mark, OrderedMap<Part> Parts)> known = new(StringComparer.Ordinal);

    /// <summary>The parts of a file, as they were read before; null where they weren't, or the file has changed.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mark">What the file is now, for <see cref="Keep"/>.</param>
    internal OrderedMap<Part>? Find(string path, out Mark mark)
    {
        var file = new FileInfo(path);
        mark = file.Exists ? new Mark(file.LastWriteTimeUtc.Ticks, file.Length) : default;
        lock (gate)
            return file.Exists && known.TryGetValue(file.FullName, out var kept) && kept.Mark == mark ? kept.Parts : null;
    }

    /// <summary>Keeps what a file holds, which was read without a problem.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mark">What it was before it was read.</param>
    /// <param name="parts">Its parts.</param>
    internal void Keep(string path, Mark mark, OrderedMap<Part> parts)
    {
        lock (gate)
        {
            // More files than one scenario may name: whoever had them has gone.
            if (known.Count >= PartsFile.MostFiles)
                known.Clear();
            known[Path.GetFullPath(path)] = (mark, parts);
        }
    }

    /// <summary>By what a file is told from what it was.</summary>
    /// <param name="Written">When it was written, in ticks (UTC).</param>
    /// <param name="Length">Its length in bytes.</param>
    internal readonly record struct Mark(long Written, long Length);
}
