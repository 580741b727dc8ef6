using System.Diagnostics;
using System.Text.RegularExpressions;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary><c>rigscenarios open</c>, as a program of its own.</summary>
public sealed class OpenCommandTests
{
    [Fact]
    public async Task It_prints_an_address_that_opens_the_notebook_and_says_where_files_go()
    {
        var rigs = Directory.CreateTempSubdirectory("rigscenarios-open-").FullName;
        using var program = Start(rigs, "open", Path.Combine(Checkout.Root, "notebooks", "01-one-build-one-day.ipynb"),
            "--folder", rigs, "--port", "0", "--no-browser");
        try
        {
            var told = "";
            while (!told.Contains("To stop", StringComparison.Ordinal)
                && await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
                told += line + "\n";
            Assert.Contains(rigs, told, StringComparison.Ordinal);
            Assert.Contains("Ctrl-C", told, StringComparison.Ordinal);
            var address = Regex.Match(told, "http://127\\.0\\.0\\.1:[0-9]+/n/01-one-build-one-day\\?token=[0-9a-f]{64}",
                RegexOptions.None, TimeSpan.FromSeconds(1)).Value;
            Assert.NotEmpty(address);
            using var client = new HttpClient();
            Assert.Contains("<html", await client.GetStringAsync(new Uri(address), TestContext.Current.CancellationToken),
                StringComparison.Ordinal);
            var shelf = await client.GetStringAsync(new Uri(new Uri(address), "/api/shelf"),
                TestContext.Current.CancellationToken);
            Assert.Contains("02-battery-size-and-load-mix", shelf, StringComparison.Ordinal);
            Assert.Contains("samples/winter-harbour.yaml", shelf, StringComparison.Ordinal);
        }
        finally
        {
            program.Kill();
            Directory.Delete(rigs, recursive: true);
        }
    }

    [Fact]
    public async Task A_rig_file_opens_the_first_notebook_on_it()
    {
        var rigs = Directory.CreateTempSubdirectory("rigscenarios-open-").FullName;
        var text = Checkout.Sample("teaching-kit.yaml").Replace("[../parts]", $"[\"{Checkout.Data.Replace('\\', '/')}/parts\"]",
            StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(rigs, "my rig.yaml"), text, TestContext.Current.CancellationToken);
        using var program = Start(rigs, "open", "my rig.yaml", "--port", "0", "--no-browser");
        try
        {
            var told = "";
            while (!told.Contains("To stop", StringComparison.Ordinal)
                && await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
                told += line + "\n";
            Assert.Contains(rigs, told, StringComparison.Ordinal);
            Assert.Matches("/n/00-will-it-work\\?token=[0-9a-f]{64}#scenario=own%2Fmy%20rig.yaml&build=[a-z-]+\n", told);
        }
        finally
        {
            program.Kill();
            Directory.Delete(rigs, recursive: true);
        }
    }

    [Theory]
    [InlineData(2, "--port", "99999")]
    [InlineData(2, "no-such-notebook.ipynb")]
    [InlineData(2, "no-such-rig.yaml")]
    [InlineData(1, "--folder", "no-such-folder")]
    public async Task What_it_cannot_use_is_told_in_one_line(int exitCode, params string[] arguments)
    {
        using var program = Start(Path.GetTempPath(), ["open", "--no-browser", .. arguments]);
        var told = await program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(exitCode, program.ExitCode);
        Assert.StartsWith("error: ", told, StringComparison.Ordinal);
        Assert.Contains(arguments[^1], told, StringComparison.Ordinal);
        Attacks.HeaderTests.NothingOfTheInside(told);
    }

    private static Process Start(string folder, params string[] arguments) => Process.Start(
        new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), .. arguments])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
}
