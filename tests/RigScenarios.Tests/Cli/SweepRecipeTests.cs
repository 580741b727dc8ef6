using System.Diagnostics;
using System.Text.RegularExpressions;

namespace RigScenarios.Tests.Cli;

/// <summary>The recipes of docs/sweeps.md for several machines, run as they stand there.</summary>
public sealed partial class SweepRecipeTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "sweeps.md"));

    private readonly TemporaryFolder folder = new();

    public SweepRecipeTests()
    {
        folder.Write("my-rig.yaml", File.ReadAllText(Repository.Data("scenarios", "winter-harbour.yaml"))
            .Replace("[../parts]", $"[\"{Repository.Data("parts").Replace('\\', '/')}\"]", StringComparison.Ordinal));
        var program = folder.Write("rigscenarios",
            $"#!/bin/sh\nexec dotnet \"{typeof(RigScenarios.Cli.CommandLine).Assembly.Location}\" \"$@\"\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_recipe_for_gnu_parallel_gives_the_table_of_one_run()
    {
        Assert.SkipWhen(SlurmOnThisMachine.PathOf("parallel") is null, "GNU parallel is not installed");
        await ShellAsync(Recipe("seq 4 | parallel"));
        await SameAsOneRunAsync();
    }

    [Fact]
    public async Task The_recipe_for_a_job_array_gives_the_table_of_one_run_and_a_lost_part_is_run_again()
    {
        using var slurm = await SlurmOnThisMachine.StartAsync(Path.Combine(folder.Path, "slurm"));
        folder.Write("sweep.sh", Recipe("#!/bin/bash"));
        var run = Recipe("sbatch --wait");
        await ShellAsync(run, slurm);
        await SameAsOneRunAsync();

        // As the page says it: one part again, by its number.
        File.Delete(Path.Combine(folder.Path, "part-3.parquet"));
        File.Delete(Path.Combine(folder.Path, "cold.parquet"));
        await ShellAsync(run.Replace("sbatch --wait", "sbatch --wait --array=3", StringComparison.Ordinal), slurm);
        await SameAsOneRunAsync();
    }

    [Fact]
    public void The_page_names_every_figure()
    {
        var scenario = RigScenarios.Files.ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        Each.Of(RigScenarios.Sweeps.Evaluation.SweepColumns.All(scenario),
            column => Assert.Contains($"| `{column.Name}` |", Page, StringComparison.Ordinal), atLeast: 20);
    }

    private static string Recipe(string start) => Blocks().Matches(Page).Select(match => match.Groups["text"].Value)
        .Single(text => text.StartsWith(start, StringComparison.Ordinal));

    private async Task SameAsOneRunAsync()
    {
        var one = Path.Combine(folder.Path, "one", "cold.parquet");
        var (code, said) = await SweepProgram.RunAsync(["sweep", Path.Combine(folder.Path, "my-rig.yaml"), "--build", "tripod",
            "--over", "days.day-one.ambient=-20 °C..10 °C:7", "--out", one]);
        Assert.True(code == 0, said);
        Assert.Equal(await File.ReadAllBytesAsync(one, TestContext.Current.CancellationToken),
            await File.ReadAllBytesAsync(Path.Combine(folder.Path, "cold.parquet"), TestContext.Current.CancellationToken));
    }

    private async Task ShellAsync(string script, SlurmOnThisMachine? slurm = null)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no such shell");
        var start = new ProcessStartInfo("bash", ["-e", "-c", script])
        {
            UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder.Path,
        };
        start.Environment["PATH"] = $"{folder.Path}:{Environment.GetEnvironmentVariable("PATH")}";
        if (slurm is not null)
            start.Environment["SLURM_CONF"] = slurm.Configuration;
        using var shell = Process.Start(start)!;
        var (code, said) = await SweepProgram.EndAsync(shell);
        var logs = string.Concat(Directory.GetFiles(folder.Path, "slurm-*.out").Order().Select(File.ReadAllText));
        Assert.True(code == 0, said + logs);
    }

    [GeneratedRegex(@"```sh\n(?<text>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture
        | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Blocks();
}
