using System.Text;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Tests.Sweeps.Tables;

/// <summary>A sweep that was killed goes on, whatever was half written.</summary>
public sealed class UnfinishedTableTests
{
    [Fact]
    public void Whatever_a_killed_run_left_the_table_is_that_of_a_run_that_was_never_killed()
    {
        var plan = InventedSweep.Plan(200);
        var head = TableHead.Of(InventedSweep.Identity(plan), SweepPart.Whole);
        using var whole = InventedSweep.Table(plan, SweepPart.Whole);
        var expected = InventedSweep.Csv(whole);
        var kept = Kept(plan, head, blocks: 5);
        var (looked, resumed) = (new LookedAt(), new HashSet<long>());
        foreach (var length in Enumerable.Range(0, kept.Length / 97).Select(place => place * 97).Append(kept.Length))
        {
            looked.One();
            var stream = new MemoryStream();
            stream.Write(kept.AsSpan(0, length));
            Assert.True(UnfinishedTable.IsOne(stream));
            using var table = UnfinishedTable.Read(stream, TestContext.Current.CancellationToken)
                ?? new UnfinishedTable(head, () => new MemoryStream());
            resumed.Add(table.Done);
            Go(table, plan);
            Assert.Equal(expected, InventedSweep.Csv(table));
        }
        looked.AtLeast(100);
        Assert.Equal([0L, 200, 400, 600, 800, 1000], resumed.Order());
    }

    [Fact]
    public void A_block_in_which_a_byte_has_changed_is_made_again()
    {
        var plan = InventedSweep.Plan(100);
        var head = TableHead.Of(InventedSweep.Identity(plan), SweepPart.Whole);
        var kept = Kept(plan, head, blocks: 5);
        var stream = new MemoryStream();
        stream.Write(kept);
        stream.Position = kept.Length - 5;
        stream.WriteByte((byte)'9');
        using var table = UnfinishedTable.Read(stream, TestContext.Current.CancellationToken)!;
        Assert.Equal(400, table.Done);
        Go(table, plan);
        using var whole = InventedSweep.Table(plan, SweepPart.Whole);
        Assert.Equal(InventedSweep.Csv(whole), InventedSweep.Csv(table));
    }

    [Fact]
    public void Rows_that_came_before_it_was_stopped_are_kept()
    {
        var plan = InventedSweep.Plan(100);
        var head = TableHead.Of(InventedSweep.Identity(plan), SweepPart.Whole);
        var stream = new MemoryStream();
        using var table = new UnfinishedTable(head, () => stream);
        using var stop = new CancellationTokenSource();
        Assert.Throws<OperationCanceledException>(() => TableTaking.Take(table, Stopping(), TimeProvider.System, stop.Token));
        Assert.Equal(124, table.Done);
        using var read = UnfinishedTable.Read(stream, TestContext.Current.CancellationToken)!;
        Assert.Equal(124, read.Done);
        Assert.Equal(head.ToJson(), read.Head.ToJson());

        IEnumerable<SweepRecord> Stopping()
        {
            foreach (var record in InventedSweep.Records(plan, 0, plan.Count))
            {
                if (record.Number == 123)
                    stop.Cancel();
                yield return record;
            }
        }
    }

    [Fact]
    public void A_file_of_somebody_else_is_none()
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes("number,lasts\r\n1,yes\r\n"));
        Assert.False(UnfinishedTable.IsOne(stream));
        Assert.Null(UnfinishedTable.Read(stream, TestContext.Current.CancellationToken));
        Assert.Equal(21, stream.Length);
    }

    [Fact]
    public void A_sweep_that_takes_no_time_makes_no_file_of_its_own()
    {
        var plan = InventedSweep.Plan(10);
        using var table = new UnfinishedTable(TableHead.Of(InventedSweep.Identity(plan), SweepPart.Whole),
            () => throw new InvalidOperationException("A file was made."));
        Go(table, plan);
        Assert.True(table.IsWhole);
    }

    /// <summary>What stands in the file of a run after some blocks of 200 or 100 rows, without the last one of six.</summary>
    private static byte[] Kept(RigScenarios.Sweeps.Sampling.SweepPlan plan, TableHead head, int blocks)
    {
        var stream = new MemoryStream();
        using var table = new UnfinishedTable(head, () => stream);
        for (var block = 0; block < blocks; block++)
        {
            var rows = new TableRows(head.Identity.Columns);
            foreach (var record in InventedSweep.Records(plan, table.Done, plan.Samples))
                rows.Add(record);
            table.Add(rows);
        }
        return stream.ToArray();
    }

    private static void Go(UnfinishedTable table, RigScenarios.Sweeps.Sampling.SweepPlan plan) =>
        TableTaking.Take(table, InventedSweep.Records(plan, table.Head.First + table.Done, table.Head.Count - table.Done),
            TimeProvider.System, TestContext.Current.CancellationToken);
}
