using System.Diagnostics;
using System.Globalization;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Tables;
using UnitsNet;

namespace RigScenarios.Benchmarks.Tables;

/// <summary>How quickly rows become tables, and what memory that takes, without the time that it takes to compute them: their
/// results are invented.</summary>
internal static class TablesCommand
{
    public const string Usage = "tables ROWS";

    public static int Run(string[] args)
    {
        if (args is not [var text] || !int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var rows)
            || rows < 1)
        {
            Console.Error.WriteLine($"usage: {Usage}");
            return 2;
        }
        var folder = Directory.CreateTempSubdirectory("rigscenarios-tables-").FullName;
        try
        {
            string At(string name) => Path.Combine(folder, name);
            var plan = Plan(rows);
            var head = TableHead.Of(Identity(plan), SweepPart.Whole);
            Tell("scenarios made", rows, () => Count(Records(plan)));
            using var table = new UnfinishedTable(head,
                () => new FileStream(At("t.unfinished"), FileMode.CreateNew, FileAccess.ReadWrite));
            Tell("made and kept", rows, () => TableTaking.Take(table, Records(plan), TimeProvider.System));
            Tell("written as CSV", rows, () =>
            {
                using var stream = File.Create(At("t.csv"));
                CsvTable.Write(table, stream);
            });
            Tell("written as Parquet", rows, () =>
            {
                using var stream = File.Create(At("t.parquet"));
                ParquetTable.WriteAsync(table, stream).GetAwaiter().GetResult();
            });
            Tell("gathered as Parquet", rows, () =>
            {
                using var stream = File.Create(At("u.parquet"));
                var part = TablePart.OfParquetAsync("t", () => File.OpenRead(At("t.parquet"))).GetAwaiter().GetResult()!;
                GatheredTable.Of([part]).WriteParquetAsync(stream).GetAwaiter().GetResult();
            });
            foreach (var file in Directory.GetFiles(folder).Order())
                Console.WriteLine($"{Path.GetFileName(file),-14} {new FileInfo(file).Length / 1e6,8:F1} MB");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
        return 0;
    }

    private static void Tell(string what, int rows, Action work)
    {
        var (watch, before) = (Stopwatch.StartNew(), Environment.CpuUsage.UserTime);
        work();
        var user = (Environment.CpuUsage.UserTime - before).TotalSeconds;
        var most = Process.GetCurrentProcess().PeakWorkingSet64 / 1e6;
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-20} {watch.Elapsed.TotalSeconds,7:F1} s, "
            + $"processor {user,6:F1} s, {rows / user,9:F0} rows a second of it, {most:F0} MB at most"));
    }

    private static int Count(IEnumerable<SweepRecord> records) => records.Count();

    private static SweepPlan Plan(int rows) => new()
    {
        Axes = [new SweepAxis("days.day.ambient", ["-10 °C"])],
        Uncertain =
        [
            new UncertainField("parts.brick.battery.energy", Spread.Normal(Energy.FromWattHours(190), Energy.FromWattHours(8))),
            new UncertainField("builds.rig.battery.resistance-growth", Spread.Uniform(1, 2)),
        ],
        Samples = rows,
    };

    private static SweepIdentity Identity(SweepPlan plan) => new()
    {
        Version = "", Command = "", File = "", Scenario = "", Build = "rig", Days = ["day"], Moved = plan.Paths,
        Rows = plan.Count, Points = PointsDigest.Of(plan), Way = "",
        Columns = [SweptColumn.Number, .. SweptColumn.Of(plan), .. SweepColumns.Usual],
    };

    private static IEnumerable<SweepRecord> Records(SweepPlan plan)
    {
        var random = new Random(1);
        for (var number = 0L; number < plan.Count; number++)
        {
            var odd = number % 2 == 1;
            yield return new SweepRecord(number, plan.At(number).Values,
            [
                .. SweepColumns.Usual.Select(column => column.Kind switch
                {
                    ColumnKind.Number => SweepCell.Of(random.NextDouble() * 100),
                    ColumnKind.YesNo => SweepCell.Of(odd),
                    _ => SweepCell.Of("drop-out of plate"),
                }),
            ]);
        }
    }
}
