using System.Globalization;
using System.Text.RegularExpressions;

namespace RigScenarios.Tests.Cli;

/// <summary>A long sweep that is killed or stopped goes on by the same command, and ends in the very table that an undisturbed
/// run writes.</summary>
public sealed partial class StoppedSweepTests
{
    [Theory]
    [InlineData("KILL", "table.csv", false)]
    [InlineData("KILL", "table.parquet", true)]
    [InlineData("INT", "table.csv", false)]
    public async Task It_goes_on_where_it_was_and_gives_the_same_table_byte_for_byte(string signal, string name, bool isQuick)
    {
        using var folder = new TemporaryFolder();
        var (table, samples) = (Path.Combine(folder.Path, name), isQuick ? 12_800 : 50);
        // On a quick machine more scenarios are needed before there is something to stop.
        for (var tries = 0; !await StoppedAsync(table, Words(samples, table), signal); tries++)
        {
            Assert.True(tries < 8, $"never stopped between its first row and its last, with {samples} samples at the end");
            samples *= 4;
        }
        Assert.Equal([name + ".unfinished"], Names(folder.Path));

        // Another question doesn't touch what is kept.
        var (code, said) = await SweepProgram.RunAsync(
            [.. Words(samples, table), "--set", "conditions.ambient=1 °C"]);
        Assert.Equal(2, code);
        Assert.Contains("rows of another sweep: different are the scenario", said, StringComparison.Ordinal);

        (code, said) = await SweepProgram.RunAsync(Words(samples, table));
        Assert.True(code == 0, said);
        var before = long.Parse(GoingOn().Match(said).Groups["done"].Value, CultureInfo.InvariantCulture);
        Assert.InRange(before, 1, 3 * samples);

        var undisturbed = Path.Combine(folder.Path, "undisturbed", name);
        (code, said) = await SweepProgram.RunAsync(Words(samples, undisturbed));
        Assert.True(code == 0, said);
        Assert.DoesNotContain("Going on", said, StringComparison.Ordinal);
        Assert.Equal(await BytesAsync(undisturbed), await BytesAsync(table));
        Assert.Equal(Names(Path.GetDirectoryName(undisturbed)!), Names(folder.Path));

        // And once more: nothing is done twice.
        (code, said) = await SweepProgram.RunAsync(Words(samples, table));
        Assert.Equal(0, code);
        Assert.Contains("already", said, StringComparison.Ordinal);

        string[] Words(int count, string file) =>
            isQuick ? SweepProgram.QuickWords(count, file) : SweepProgram.Words(count, file);
    }

    [Fact]
    public async Task One_core_and_two_give_the_same_table_byte_for_byte()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, isQuick) in ((string, bool)[])[("t.csv", false), ("t.parquet", true)])
        {
            var tables = new List<byte[]>();
            foreach (var cores in (int[])[1, 2])
            {
                var table = Path.Combine(folder.Path, $"{cores}", name);
                var (code, said) = await SweepProgram.RunAsync(
                    isQuick ? SweepProgram.QuickWords(2000, table) : SweepProgram.Words(30, table), cores);
                Assert.True(code == 0, said);
                tables.Add(await BytesAsync(table));
            }
            Assert.Equal(tables[0], tables[1]);
        }
    }

    /// <summary>Whether a run could be stopped after some rows were kept and before it was through.</summary>
    private static async Task<bool> StoppedAsync(string table, string[] words, string signal)
    {
        using var program = SweepProgram.Start(words);
        var begun = 0L;
        while (!program.HasExited)
        {
            // It begins with what the table rests on; what comes then are rows.
            var length = new FileInfo(table + ".unfinished") is { Exists: true } kept ? kept.Length : 0;
            begun = begun == 0 ? length : begun;
            if (length > begun)
            {
                Signals.Send(signal, program);
                break;
            }
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
        var (code, said) = await SweepProgram.EndAsync(program);
        // A kill may also come while the finished table is written, and any signal between the pieces of what it begins with.
        if (!File.Exists(table) && !said.Contains("Nothing was written", StringComparison.Ordinal)
            && Directory.GetFiles(Path.GetDirectoryName(table)!).Length == 1)
        {
            Assert.Equal(signal == "INT" ? 130 : 137, code);
            Assert.True(signal != "INT" || Kept().IsMatch(said), said);
            return true;
        }
        foreach (var file in Directory.GetFiles(Path.GetDirectoryName(table)!))
            File.Delete(file);
        return false;
    }

    // One that is killed while it writes the whole table leaves the file under its own name, too; it goes within the hour.
    private static List<string> Names(string folder) => [.. Directory.GetFiles(folder).Select(file => Path.GetFileName(file))
        .Where(name => !name.StartsWith(".rigscenarios-", StringComparison.Ordinal)).Order()];

    private static Task<byte[]> BytesAsync(string file) => File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);

    [GeneratedRegex(@"Going on: (?<done>[0-9]+) of ", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex GoingOn();

    [GeneratedRegex(@"Stopped\. [0-9]+ of [0-9]+ runs are kept in .*; the same command goes on",
        RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Kept();
}
