using System.Globalization;
using DuckDB.NET.Data;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Tests.Sweeps.Tables;

/// <summary>Tables read by a database that no one here made.</summary>
public sealed class ForeignReaderTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_database_reads_types_values_and_what_is_not_known_from_parquet()
    {
        var plan = InventedSweep.Plan(40_000);
        using var table = InventedSweep.Table(plan, SweepPart.Whole);
        var file = Path.Combine(folder.Path, "t.parquet");
        await File.WriteAllBytesAsync(file, await InventedSweep.ParquetAsync(table), TestContext.Current.CancellationToken);
        Assert.Equal(
            ["number BIGINT", "days.day.ambient (°C) DOUBLE", "kit.brick.part VARCHAR", "parts.brick.battery.energy (Wh) DOUBLE",
                "lasts BOOLEAN", "runtime_h DOUBLE", "stopped_by VARCHAR"],
            Ask($"SELECT column_name, column_type FROM (DESCRIBE SELECT * FROM '{file}')").Select(row => string.Join(' ', row)));
        Assert.Equal(["240000", "0", "239999"],
            Ask($"SELECT count(*), min(number), max(number) FROM '{file}'").Single());
        // One group of rows each 100,000: none is larger than memory bears, none so small that readers wait.
        Assert.Equal(["3"], Ask($"SELECT num_row_groups FROM parquet_file_metadata('{file}')").Single());
        Assert.Equal([$"{InventedSweep.Records(plan, 0, plan.Count).Count(record => record.Cells[1].IsNothing)}"],
            Ask($"SELECT count(*) FROM '{file}' WHERE runtime_h IS NULL").Single());
        foreach (var number in (long[])[0, 4, 65_535, 65_536, 99_999, 100_000, 239_999])
        {
            var record = InventedSweep.Records(plan, number, 1).Single();
            var row = Ask($"SELECT \"days.day.ambient (°C)\", \"kit.brick.part\", \"parts.brick.battery.energy (Wh)\", lasts, "
                + $"runtime_h, stopped_by FROM '{file}' WHERE number = {number}").Single();
            Assert.Equal(record.Values[0], row[0] + " °C");
            Assert.Equal(record.Values[1], row[1]);
            Assert.Equal(record.Values[2], row[2] + " Wh");
            Assert.Equal(record.Cells[0].YesNo?.ToString(), row[3]);
            Assert.Equal<double?>(record.Cells[1].Number is { } exact
                ? double.Parse(exact.ToString("G10", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) : null,
                row[4] is { } shown ? double.Parse(shown, CultureInfo.InvariantCulture) : null);
            Assert.Equal(record.Cells[2].Text, row[5]);
        }
    }

    [Fact]
    public async Task A_database_reads_units_and_what_the_table_rests_on_from_parquet()
    {
        var plan = InventedSweep.Plan(10, seed: 42);
        using var table = InventedSweep.Table(plan, SweepPart.Whole);
        var file = Path.Combine(folder.Path, "t.parquet");
        await File.WriteAllBytesAsync(file, await InventedSweep.ParquetAsync(table), TestContext.Current.CancellationToken);
        var said = Ask($"SELECT decode(key), decode(value) FROM parquet_kv_metadata('{file}')")
            .ToDictionary(row => row[0]!, row => row[1]!, StringComparer.Ordinal);
        var identity = table.Head.Identity;
        Assert.Equal(identity.Scenario, said["scenario"]);
        Assert.Equal(("42", "0.1.0", identity.Command), (said["seed"], said["version"], said["command"]));
        Assert.Equal(table.Head.ToJson(), said["rests_on"]);
        Assert.Equal(["h"], Ask($"SELECT json_extract_string(one.value, '$.unit') FROM json_each('{said["columns"]}') one "
            + "WHERE json_extract_string(one.value, '$.name') = 'runtime_h'").Single());
        // Beside each column of numbers, in the column's own metadata.
        var units = Ask($"SELECT path_in_schema, key_value_metadata::VARCHAR FROM parquet_metadata('{file}') ORDER BY column_id");
        Assert.Contains("unit=h", units.Single(row => row[0] == "runtime_h")[1]!, StringComparison.Ordinal);
        Assert.Contains("unit=Wh", units.Single(row => row[0]!.EndsWith("(Wh)", StringComparison.Ordinal))[1]!,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_reads_the_same_from_both_kinds_of_file()
    {
        var plan = InventedSweep.Plan(500);
        using var table = InventedSweep.Table(plan, SweepPart.Whole);
        var (csv, parquet) = (Path.Combine(folder.Path, "t.csv"), Path.Combine(folder.Path, "t.parquet"));
        await File.WriteAllBytesAsync(csv, InventedSweep.Csv(table), TestContext.Current.CancellationToken);
        await File.WriteAllBytesAsync(parquet, await InventedSweep.ParquetAsync(table), TestContext.Current.CancellationToken);
        string All(string from, string lasts) => $"SELECT * REPLACE ({lasts} AS lasts) FROM {from}";
        var read = $"read_csv('{csv}', header = true, nullstr = '')";
        Assert.Equal(["3000"], Ask($"SELECT count(*) FROM {read}").Single());
        Assert.Equal(["0"], Ask($"SELECT count(*) FROM ({All(read, "lasts = 'yes'")} EXCEPT ALL {All($"'{parquet}'", "lasts")})")
            .Single());
        Assert.Equal(["0"], Ask($"SELECT count(*) FROM ({All($"'{parquet}'", "lasts")} EXCEPT ALL {All(read, "lasts = 'yes'")})")
            .Single());
    }

    private static List<List<string?>> Ask(string question)
    {
        using var connection = new DuckDBConnection("DataSource=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = question;
        using var reader = command.ExecuteReader();
        var rows = new List<List<string?>>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(index => reader.IsDBNull(index) ? null
                : Convert.ToString(reader.GetValue(index), CultureInfo.InvariantCulture))]);
        }
        return rows;
    }
}
