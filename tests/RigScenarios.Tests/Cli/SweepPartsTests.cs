namespace RigScenarios.Tests.Cli;

/// <summary>A sweep in parts, each in a process of its own, gathered again.</summary>
public sealed class SweepPartsTests
{
    [Theory]
    [InlineData("csv", false)]
    [InlineData("parquet", true)]
    public async Task Four_processes_gathered_give_the_table_of_one_byte_for_byte(string kind, bool isQuick)
    {
        using var folder = new TemporaryFolder();
        string At(string name) => Path.Combine(folder.Path, $"{name}.{kind}");
        var running = new List<System.Diagnostics.Process>();
        foreach (var part in (int[])[1, 2, 3, 4])
            running.Add(SweepProgram.Start(Words(At($"part-{part}"), "--part", $"{part}/4")));
        foreach (var program in running)
        {
            var (ended, told) = await SweepProgram.EndAsync(program);
            Assert.True(ended == 0, told);
            program.Dispose();
        }
        var (code, said) = await SweepProgram.RunAsync(Words(At("one")));
        Assert.True(code == 0, said);
        (code, said) = await SweepProgram.RunAsync(
            ["gather", At("part-3"), At("part-1"), At("part-4"), At("part-2"), "--out", At("all")]);
        Assert.True(code == 0, said);
        Assert.StartsWith($"{3 * (isQuick ? 2000 : 12)} runs from 4 parts -> ", said, StringComparison.Ordinal);
        Assert.Equal(await BytesAsync(At("one")), await BytesAsync(At("all")));

        await RefusedAsync("Part 2/4 is missing", At("part-1"), At("part-3"), At("part-4"));
        await RefusedAsync("Part 1/4 is there twice", At("part-1"), At("part-1"), At("part-2"), At("part-3"), At("part-4"));
        await SweepProgram.RunAsync(Words(At("seed"), "--part", "4/4")
            .Select(word => word == "11" ? "12" : word));
        await RefusedAsync("different are the seed (11 and 12)", At("part-1"), At("part-2"), At("part-3"), At("seed"));
        await SweepProgram.RunAsync(Words(At("set"), "--part", "4/4", "--set", "conditions.ambient=1 °C"));
        await RefusedAsync("different are the scenario", At("part-1"), At("part-2"), At("part-3"), At("set"));
        await RefusedAsync("There is no such file", At("part-1"), At("part-5"));

        string[] Words(string table, params string[] more) =>
            isQuick ? SweepProgram.QuickWords(2000, table, more) : SweepProgram.Words(12, table, more);

        async Task RefusedAsync(string words, params string[] parts)
        {
            var gathered = At("refused");
            var (refused, why) = await SweepProgram.RunAsync(["gather", .. parts, "--out", gathered]);
            Assert.True(refused == 2 && why.Contains(words, StringComparison.Ordinal), why);
            Assert.False(File.Exists(gathered));
        }
    }

    private static Task<byte[]> BytesAsync(string file) => File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
}
