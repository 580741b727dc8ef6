using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Tests.Sweeps.Tables;

/// <summary>Parts put together are what one run gives, or are refused in words.</summary>
public sealed class GatheredTableTests
{
    private static readonly SweepPlan Plan = InventedSweep.Plan(1000);

    [Theory]
    [InlineData(true, true, 1)]
    [InlineData(true, true, 4)]
    [InlineData(true, false, 4)]
    [InlineData(false, true, 4)]
    [InlineData(false, false, 7)]
    public async Task Parts_of_either_kind_give_the_table_of_one_run_byte_for_byte(bool fromCsv, bool toCsv, int parts)
    {
        using var whole = InventedSweep.Table(Plan, SweepPart.Whole);
        var read = new List<TablePart>();
        // In any order.
        foreach (var number in Enumerable.Range(1, parts).Reverse())
            read.Add(await Part(Plan, new SweepPart(number, parts), fromCsv));
        var gathered = GatheredTable.Of(read);
        Assert.Equal(whole.Head.ToJson(), gathered.Head.ToJson());
        using var stream = new MemoryStream();
        if (toCsv)
        {
            var expected = InventedSweep.Csv(whole, out var digest);
            Assert.Equal(digest, await gathered.WriteCsvAsync(stream, null, TestContext.Current.CancellationToken));
            Assert.Equal(expected, stream.ToArray());
        }
        else
        {
            await gathered.WriteParquetAsync(stream, null, TestContext.Current.CancellationToken);
            Assert.Equal(await InventedSweep.ParquetAsync(whole), stream.ToArray());
        }
    }

    [Fact]
    public async Task Missing_parts_are_named_with_the_command_that_makes_one()
    {
        var told = await Refused((1, 5), (4, 5));
        Assert.Equal(2, told.Count);
        Assert.Contains("Parts 2/5, 3/5 are missing: the scenarios 1200 to 3599 of 0 to 5999.", told[0],
            StringComparison.Ordinal);
        Assert.Contains("rigscenarios sweep rig.yaml --part 2/5 --out FILE", told[0], StringComparison.Ordinal);
        Assert.Contains("Part 5/5 is missing: the scenarios 4800 to 5999", told[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_that_is_there_twice_and_parts_that_overlap_are_refused()
    {
        var told = Assert.Single(await Refused((1, 2), (1, 2), (2, 2)));
        Assert.Contains("Part 1/2 is there twice", told, StringComparison.Ordinal);
        var both = await Refused((1, 2), (2, 2), (2, 3));
        Assert.Contains("Part 2/3 has rows that 1/2 (part 1/2) has too.", both[0], StringComparison.Ordinal);
        Assert.Contains("Part 2/2 has rows that 2/3 (part 2/3) has too.", both[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_part_that_was_too_long_may_have_been_cut_again()
    {
        var gathered = GatheredTable.Of(
        [
            await Part(Plan, new SweepPart(1, 2), true), await Part(Plan, new SweepPart(3, 4), false),
            await Part(Plan, new SweepPart(4, 4), true),
        ]);
        using var stream = new MemoryStream();
        await gathered.WriteCsvAsync(stream, null, TestContext.Current.CancellationToken);
        using var whole = InventedSweep.Table(Plan, SweepPart.Whole);
        Assert.Equal(InventedSweep.Csv(whole), stream.ToArray());
    }

    [Fact]
    public async Task Parts_of_another_scenario_version_seed_or_plan_are_refused_with_what_differs()
    {
        var other = InventedSweep.Plan(1000, seed: 8);
        var identity = InventedSweep.Identity(other) with
        {
            Version = "0.2.0", Scenario = "title: \"Another\"\n", Build = "hand",
        };
        var first = await Part(Plan, new SweepPart(1, 2), true);
        var second = await Part(other, new SweepPart(2, 2), true, identity);
        var refused = Assert.Throws<ScenarioProblemsException>(() => GatheredTable.Of([first, second]));
        var told = Assert.Single(refused.Problems).Problem;
        foreach (var words in (string[])["the program's version (0.1.0 and 0.2.0)", "the build (tripod and hand)",
            "the seed (7 and 8)", "first at \"title: \"Invented\"\" and \"title: \"Another\"\""])
            Assert.Contains(words, told, StringComparison.Ordinal);
        Assert.Empty(InventedSweep.Identity(Plan).Differences(InventedSweep.Identity(Plan) with { Command = "x", File = "y" }));
        Assert.NotEmpty(InventedSweep.Identity(Plan).Differences(InventedSweep.Identity(Plan) with { Points = "x" }));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_part_that_was_changed_or_cut_off_is_refused(bool isCut)
    {
        using var table = InventedSweep.Table(Plan, new SweepPart(2, 2));
        var bytes = InventedSweep.Csv(table, out var digest);
        if (isCut)
            bytes = bytes[..^40];
        else
            bytes[^3] = (byte)(bytes[^3] == (byte)'"' ? ' ' : '"');
        var broken = TablePart.OfCsv("broken.csv", () => new MemoryStream(bytes),
            CsvTable.About(table.Head, "broken.csv", digest))!;
        var gathered = GatheredTable.Of([await Part(Plan, new SweepPart(1, 2), true), broken]);
        var told = await Assert.ThrowsAsync<ScenarioProblemsException>(() => gathered.WriteCsvAsync(new MemoryStream(), null,
            TestContext.Current.CancellationToken));
        Assert.StartsWith("broken.csv: error: ", told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cut_off_parquet_file_is_no_part()
    {
        using var table = InventedSweep.Table(Plan, SweepPart.Whole);
        var bytes = await InventedSweep.ParquetAsync(table);
        Assert.Null(await TablePart.OfParquetAsync("cut", () => new MemoryStream(bytes[..^9]),
            TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_byte_that_changed_in_a_parquet_file_never_changes_a_table_unnoticed()
    {
        var plan = InventedSweep.Plan(50);
        using var table = InventedSweep.Table(plan, SweepPart.Whole);
        var (bytes, expected) = (await InventedSweep.ParquetAsync(table), InventedSweep.Csv(table));
        var (looked, refused) = (new LookedAt(), 0);
        for (var place = 0; place < bytes.Length; place += 7)
        {
            looked.One();
            var changed = bytes.ToArray();
            changed[place] ^= 0x10;
            var part = await TablePart.OfParquetAsync("t", () => new MemoryStream(changed),
                TestContext.Current.CancellationToken);
            if (part is null || await part.FaultAsync(TestContext.Current.CancellationToken) is not null)
            {
                refused++;
                continue;
            }
            // What is left are bytes that say nothing of the table, such as the name of the writer.
            using var stream = new MemoryStream();
            await GatheredTable.Of([part]).WriteCsvAsync(stream, null, TestContext.Current.CancellationToken);
            Assert.Equal(expected, stream.ToArray());
            Assert.Equal(table.Head.ToJson(), part.Head.ToJson());
        }
        looked.AtLeast(500);
        Assert.InRange(refused, 300, int.MaxValue);
    }

    private static async Task<List<string>> Refused(params (int Number, int Of)[] parts)
    {
        var read = new List<TablePart>();
        foreach (var (number, of) in parts)
            read.Add(await Part(Plan, new SweepPart(number, of), true));
        return [.. Assert.Throws<ScenarioProblemsException>(() => GatheredTable.Of(read)).Problems.Select(one => one.ToString())];
    }

    private static async Task<TablePart> Part(SweepPlan plan, SweepPart part, bool isCsv, SweepIdentity? identity = null)
    {
        using var table = InventedSweep.Table(plan, part);
        if (!isCsv)
        {
            var file = await InventedSweep.ParquetAsync(table);
            return (await TablePart.OfParquetAsync($"{part}", () => new MemoryStream(file),
                TestContext.Current.CancellationToken))!;
        }
        var bytes = InventedSweep.Csv(table, out var digest);
        var head = identity is null ? table.Head : TableHead.Of(identity, part);
        return TablePart.OfCsv($"{part}", () => new MemoryStream(bytes), CsvTable.About(head, "part.csv", digest))!;
    }
}
