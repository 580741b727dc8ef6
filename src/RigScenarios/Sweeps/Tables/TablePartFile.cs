using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Tables;

/// <summary>Finds the tables of sweeps in files: comma-separated values with the file beside them, or Parquet.</summary>
public static class TablePartFile
{
    private const int LargestAbout = 64 * 1024 * 1024;

    /// <summary>What an unfinished table is called beside the table that it becomes.</summary>
    /// <param name="table">The name of the table.</param>
    public static string UnfinishedName(string table) => table + ".unfinished";

    /// <summary>Whether a name is that of a Parquet file.</summary>
    /// <param name="table">The name.</param>
    public static bool IsParquet(string table) =>
        string.Equals(Path.GetExtension(table), ".parquet", StringComparison.OrdinalIgnoreCase);

    /// <summary>The table of a file; null, with every problem, where it is none.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cancellation">Stops it.</param>
    public static async Task<(TablePart? Part, IReadOnlyList<Diagnostic> Problems)> TryOpenAsync(string path,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(path);
        var log = new ReadLog(path);
        var stream = TextFile.Open(path, log);
        if (stream is null)
            return (null, Unfinished(path) is { } unfinished ? [unfinished] : log.Problems);
        await using (stream)
        {
            if (!IsParquet(path))
            {
                var about = CsvTable.AboutFile(path);
                var (text, problems) = TextFile.TryRead(about, LargestAbout);
                if (text is null)
                    return (null, [.. problems.Select(one => one with
                    {
                        Problem = $"What the table rests on is missing: {one.Problem}",
                    })]);
                return TablePart.OfCsv(path, () => Open(path), text) is { } part ? (part, []) : (null, [Problem(about,
                    "This doesn't say what a table of a sweep rests on.", "the file that the sweep wrote beside its table")]);
            }
            return await TablePart.OfParquetAsync(path, () => Open(path), cancellation) is { } table ? (table, [])
                : (null, [Problem(path, "This is no whole Parquet file that a sweep wrote.", "the table of a sweep")]);
        }
    }

    private static Diagnostic? Unfinished(string path)
    {
        var unfinished = UnfinishedName(path);
        return File.Exists(unfinished) && PlainFile.IsAt(unfinished) ? Problem(path,
            $"This part is not through yet: {unfinished} is there.", "the whole table; the command that began it goes on with it")
            : null;
    }

    private static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.Read, FileShare.Read);

    private static Diagnostic Problem(string file, string problem, string accepted) =>
        new(Severity.Error, file, TextPlace.None, "", problem, accepted);
}
