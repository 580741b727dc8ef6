using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Cli.Commands;

/// <summary>The file that a sweep's table goes into, and the one beside it in which its rows are kept until it is
/// whole.</summary>
internal sealed class SweepTableFile
{
    private const string Example = "cold.csv";

    private SweepTableFile(string path) => Path = path;

    /// <summary>The table.</summary>
    public string Path { get; }

    /// <summary>What keeps its rows until it is whole.</summary>
    public string Unfinished => TablePartFile.UnfinishedName(Path);

    private bool IsParquet => TablePartFile.IsParquet(Path);

    /// <summary>The file behind an option.</summary>
    /// <param name="option">The option, for messages.</param>
    /// <param name="path">What stands behind it.</param>
    /// <param name="inputs">Files that are read for it.</param>
    /// <exception cref="ScenarioProblemsException">It can't be written, or its name doesn't say which kind it is.</exception>
    public static SweepTableFile Of(string option, string path, IEnumerable<string> inputs)
    {
        IReadOnlyList<string> read = [.. inputs];
        OutputFile.Check(option, path, Example, read);
        var ending = System.IO.Path.GetExtension(path);
        if (!TablePartFile.IsParquet(path) && !ending.Equals(".csv", StringComparison.OrdinalIgnoreCase))
            throw Problem(option, $"Found \"{path}\", whose ending says no kind of table.",
                "a name that ends in .csv (comma-separated values) or .parquet, such as \"cold.csv\"");
        var file = new SweepTableFile(path);
        OutputFile.Check(option, file.Unfinished, Example, read);
        if (!file.IsParquet)
            OutputFile.Check(option, CsvTable.AboutFile(path), Example, read);
        return file;
    }

    /// <summary>The rows that an earlier run kept; null where there are none.</summary>
    /// <exception cref="ScenarioProblemsException">The file is somebody else's.</exception>
    /// <exception cref="IOException">Another run is writing it.</exception>
    public UnfinishedTable? Kept(CancellationToken cancellation)
    {
        if (!File.Exists(Unfinished))
            return null;
        var stream = Locked(FileMode.Open);
        if (UnfinishedTable.Read(stream, cancellation) is { } table)
            return table;
        var isOne = UnfinishedTable.IsOne(stream);
        stream.Dispose();
        if (!isOne)
            throw Problem("--out", $"Found \"{Unfinished}\", which is no unfinished table of a sweep.",
                "another name, or that file moved away");
        // Killed before its first line was whole: nothing is lost with it.
        File.Delete(Unfinished);
        return null;
    }

    /// <summary>Throws away what an earlier run kept.</summary>
    public void Forget()
    {
        Kept(CancellationToken.None)?.Dispose();
        File.Delete(Unfinished);
    }

    /// <summary>A table without rows; its file is made when there is something to keep.</summary>
    public UnfinishedTable Begin(TableHead head) => new(head, () =>
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(Path))!);
        return Locked(FileMode.CreateNew);
    });

    /// <summary>Whether the file holds that table already, all of it and unchanged.</summary>
    public async Task<bool> HoldsAsync(TableHead head, CancellationToken cancellation)
    {
        if (!File.Exists(Path))
            return false;
        var (part, _) = await TablePartFile.TryOpenAsync(Path, cancellation);
        return part is not null && part.Head.Part == head.Part && part.Head.Identity.Differences(head.Identity).Count == 0
            && await part.FaultAsync(cancellation) is null;
    }

    /// <summary>Writes the whole table; what kept its rows goes.</summary>
    public async Task FinishAsync(UnfinishedTable table, CancellationToken cancellation)
    {
        await WriteAsync(table.Head, stream => Task.FromResult(CsvTable.Write(table, stream, cancellation)),
            stream => ParquetTable.WriteAsync(table, stream, cancellation));
        table.Dispose();
        File.Delete(Unfinished);
    }

    /// <summary>Writes a gathered table.</summary>
    public Task WriteAsync(GatheredTable table, IProgress<long> progress, CancellationToken cancellation) =>
        WriteAsync(table.Head, stream => table.WriteCsvAsync(stream, progress, cancellation),
            stream => table.WriteParquetAsync(stream, progress, cancellation));

    private async Task WriteAsync(TableHead head, Func<Stream, Task<string>> csv, Func<Stream, Task> parquet)
    {
        if (IsParquet)
        {
            await WholeFile.WriteAsync(Path, parquet);
            return;
        }
        // Whoever sees the table finds what it rests on beside it; the digest tells an old one from this.
        await WholeFile.WriteAsync(Path, async stream =>
        {
            var digest = await csv(stream);
            TextFile.Write(CsvTable.AboutFile(Path), CsvTable.About(head, System.IO.Path.GetFileName(Path), digest));
        });
    }

    private FileStream Locked(FileMode mode)
    {
        try
        {
            return new FileStream(Unfinished, mode, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException exception) when (File.Exists(Unfinished) && exception is not (FileNotFoundException
            or DirectoryNotFoundException or PathTooLongException))
        {
            throw new IOException($"{Unfinished}: another run of this sweep is writing it. Wait for it, or name another file.",
                exception);
        }
    }

    private static ScenarioProblemsException Problem(string option, string problem, string accepted) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, option, problem, accepted)]);
}
