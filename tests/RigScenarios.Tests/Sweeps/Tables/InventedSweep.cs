using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Tables;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Tables;

/// <summary>A sweep whose results are invented: some numbers, words and yes or no, and nothing here and there.</summary>
internal static class InventedSweep
{
    public static SweepPlan Plan(int samples, long seed = 7) => new()
    {
        Axes =
        [
            new SweepAxis("days.day.ambient", ["-20 °C", "0 °C", "10 °C"]),
            new SweepAxis("kit.brick.part", ["brick-98wh", "brick-190wh"]),
        ],
        Uncertain =
        [
            new UncertainField("parts.brick.battery.energy",
                Spread.Normal(Energy.FromWattHours(190), Energy.FromWattHours(8))),
        ],
        Samples = samples,
        Seed = seed,
    };

    public static IReadOnlyList<SweepColumn> Results { get; } =
    [
        new("lasts", "", ColumnKind.YesNo, "Whether it lasts."),
        new("runtime_h", "h", ColumnKind.Number, "How long it runs."),
        new("stopped_by", "", ColumnKind.Text, "Why it ends."),
    ];

    public static SweepIdentity Identity(SweepPlan plan) => new()
    {
        Version = "0.1.0", Command = "rigscenarios sweep rig.yaml", File = "rig.yaml", Scenario = "title: \"Invented\"\n",
        Build = "tripod", Days = ["day"], Moved = ["days.day.ambient=-20 °C | 0 °C | 10 °C"], Sampling = "sobol",
        Seed = plan.Seed, Rows = plan.Count, Points = PointsDigest.Of(plan), Way = "invented",
        Columns = [SweptColumn.Number, .. SweptColumn.Of(plan), .. Results],
    };

    public static IEnumerable<SweepRecord> Records(SweepPlan plan, long from, long count)
    {
        for (var number = from; number < from + count; number++)
        {
            yield return new SweepRecord(number, plan.At(number).Values,
            [
                number % 5 == 4 ? SweepCell.Nothing : SweepCell.Of(number % 2 == 0),
                number % 7 == 3 ? SweepCell.Nothing : SweepCell.Of(Math.Sqrt(number) * Math.PI),
                number % 3 == 0 ? SweepCell.Nothing : SweepCell.Of($"drop-out of \"camera\", {number % 4}"),
            ]);
        }
    }

    /// <summary>A table of a part with all of its rows, in memory.</summary>
    public static UnfinishedTable Table(SweepPlan plan, SweepPart part)
    {
        var head = TableHead.Of(Identity(plan), part);
        var table = new UnfinishedTable(head, () => new MemoryStream());
        TableTaking.Take(table, Records(plan, head.First, head.Count), TimeProvider.System,
            TestContext.Current.CancellationToken);
        return table;
    }

    public static byte[] Csv(UnfinishedTable table) => Csv(table, out _);

    public static byte[] Csv(UnfinishedTable table, out string digest)
    {
        using var stream = new MemoryStream();
        digest = CsvTable.Write(table, stream, TestContext.Current.CancellationToken);
        return stream.ToArray();
    }

    public static async Task<byte[]> ParquetAsync(UnfinishedTable table)
    {
        using var stream = new MemoryStream();
        await ParquetTable.WriteAsync(table, stream, TestContext.Current.CancellationToken);
        return stream.ToArray();
    }
}
