using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Tables;

/// <summary>Parts of a sweep put together again: the table that one run would have written, byte for byte.</summary>
public sealed class GatheredTable
{
    private readonly IReadOnlyList<TablePart> parts;

    private GatheredTable(IReadOnlyList<TablePart> parts) =>
        (this.parts, Head) = (parts, TableHead.Of(parts[0].Head.Identity, SweepPart.Whole));

    /// <summary>What the whole table rests on.</summary>
    public TableHead Head { get; }

    /// <summary>Puts parts together.</summary>
    /// <param name="parts">The parts, in any order.</param>
    /// <exception cref="ScenarioProblemsException">Parts are missing, are there twice, or are of different sweeps; carries
    /// all that is wrong.</exception>
    public static GatheredTable Of(IReadOnlyList<TablePart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
            throw new ArgumentException("There is no part.", nameof(parts));
        var ordered = parts.OrderBy(part => part.Head.First).ThenBy(part => part.Head.Count).ToList();
        var strange = ordered.Skip(1).Select(part => (part.Name, ordered[0].Head.Identity.Differences(part.Head.Identity)))
            .Where(part => part.Item2.Count > 0)
            .Select(part => Problem(part.Name, $"It is of another sweep than {ordered[0].Name}: different are "
                + $"{string.Join("; ", part.Item2)}.", "parts of one scenario, one version and one command")).ToList();
        // Where the sweeps differ, what is missing means nothing.
        var problems = strange.Count > 0 ? strange : [.. Gaps(ordered)];
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : new GatheredTable(ordered);
    }

    /// <summary>Writes it as comma-separated values.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="progress">Told how many rows are through.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The digest of what was written.</returns>
    /// <exception cref="ScenarioProblemsException">A part is not as it was written.</exception>
    public Task<string> WriteCsvAsync(Stream to, IProgress<long>? progress = null, CancellationToken cancellation = default) =>
        CsvTable.WriteAsync(Head.Identity.Columns, RowsAsync(progress, cancellation), to);

    /// <summary>Writes it as a Parquet file.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="progress">Told how many rows are through.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A part is not as it was written.</exception>
    public Task WriteParquetAsync(Stream to, IProgress<long>? progress = null, CancellationToken cancellation = default) =>
        ParquetTable.WriteAsync(Head, RowsAsync(progress, cancellation), to, cancellation);

    private async IAsyncEnumerable<TableRows> RowsAsync(IProgress<long>? progress,
        [System.Runtime.CompilerServices.EnumeratorCancellation] CancellationToken cancellation)
    {
        var done = 0L;
        foreach (var part in parts)
        {
            await using var rows = part.RowsAsync(cancellation).GetAsyncEnumerator(cancellation);
            while (await NextAsync())
            {
                done += rows.Current.Count;
                progress?.Report(done);
                yield return rows.Current;
            }

            async Task<bool> NextAsync()
            {
                try
                {
                    return await rows.MoveNextAsync();
                }
                catch (FormatException exception)
                {
                    throw new ScenarioProblemsException([Problem(part.Name, exception.Message,
                        "the file as it was written; make it again")]);
                }
            }
        }
    }

    private static IEnumerable<Diagnostic> Gaps(List<TablePart> ordered)
    {
        var (next, last) = (0L, ordered[0]);
        foreach (var part in ordered)
        {
            if (part.Head.First < next)
            {
                yield return Problem(part.Name, part.Head.Part == last.Head.Part
                    ? $"Part {part.Head.Part} is there twice: {last.Name} is the same one."
                    : $"Part {part.Head.Part} has rows that {last.Name} (part {last.Head.Part}) has too.", "each part once");
            }
            else if (part.Head.First > next)
            {
                yield return Missing(next, part.Head.First, part.Head);
            }
            if (part.Head.First + part.Head.Count <= next)
                continue;
            next = part.Head.First + part.Head.Count;
            last = part;
        }
        if (next < ordered[0].Head.Identity.Rows)
            yield return Missing(next, ordered[0].Head.Identity.Rows, ordered[^1].Head);
    }

    private static Diagnostic Missing(long from, long to, TableHead beside)
    {
        var rows = beside.Identity.Rows;
        var missing = Enumerable.Range(1, beside.PartsInAll).Select(number => new SweepPart(number, beside.PartsInAll))
            .Where(part => part.First(rows) >= from && part.First(rows) + part.Count(rows) <= to).ToList();
        var named = missing.Count == 0 ? "" : $"Part{(missing.Count == 1 ? "" : "s")} "
            + $"{string.Join(", ", missing.Take(20))}{(missing.Count > 20 ? $" and {missing.Count - 20} more" : "")} "
            + $"{(missing.Count == 1 ? "is" : "are")} missing: ";
        return Problem("", $"{named}the scenarios {from} to {to - 1} of 0 to {rows - 1}.",
            missing.Count == 0 ? "all parts" : $"what this makes: {beside.Identity.Command} --part {missing[0]} --out FILE");
    }

    private static Diagnostic Problem(string file, string problem, string accepted) =>
        new(Severity.Error, file, TextPlace.None, "", problem, accepted);
}
