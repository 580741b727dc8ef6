using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Tables;

/// <summary>Takes the rows of a sweep as they come, and keeps them every few seconds, so that whatever ends the program costs no
/// more than these.</summary>
public static class TableTaking
{
    private const int RowsInBlock = 65_536;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);

    /// <summary>Takes rows until all are there. Where it is stopped, those that came are kept.</summary>
    /// <param name="table">What is kept already.</param>
    /// <param name="records">The records from the first one that isn't kept on, in order.</param>
    /// <param name="clock">Tells when it is time to keep some.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Take(UnfinishedTable table, IEnumerable<SweepRecord> records, TimeProvider clock,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(records);
        ArgumentNullException.ThrowIfNull(clock);
        var rows = new TableRows(table.Head.Identity.Columns);
        var kept = clock.GetTimestamp();
        try
        {
            foreach (var record in records)
            {
                rows.Add(record);
                if (rows.Count == RowsInBlock || clock.GetElapsedTime(kept) >= Longest)
                    Keep();
                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            Keep();
        }
        if (!table.IsWhole)
            throw new InvalidOperationException($"The sweep gave {table.Done} of {table.Head.Count} rows.");

        void Keep()
        {
            table.Add(rows);
            rows.Clear();
            kept = clock.GetTimestamp();
        }
    }
}
