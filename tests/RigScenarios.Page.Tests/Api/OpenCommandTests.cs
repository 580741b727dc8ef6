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
            var key = TrialServer.KeyIn(await client.GetStringAsync(new Uri(address), TestContext.Current.CancellationToken));
            Assert.NotEmpty(key);
            client.DefaultRequestHeaders.Add("Rig-Key", key);
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

    [Fact]
    public async Task What_the_browser_is_started_with_opens_the_pages_once_and_never_again()
    {
        if (!OperatingSystem.IsLinux())
        {
            Assert.Skip("the browser is found by a name of Linux");
            return;
        }
        var rigs = Directory.CreateTempSubdirectory("rigscenarios-open-").FullName;
        // In the place of the browser: writes down what it was started with, as everybody on the machine can read it.
        var opened = Path.Combine(rigs, "opened.txt");
        var browser = Path.Combine(rigs, "xdg-open");
        await File.WriteAllTextAsync(browser, $"#!/bin/sh\necho \"$@\" > '{opened}.part'\nmv '{opened}.part' '{opened}'\n",
            TestContext.Current.CancellationToken);
        File.SetUnixFileMode(browser, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        using var program = StartIn(rigs, new() { ["DISPLAY"] = ":99",
            ["PATH"] = $"{rigs}:{Environment.GetEnvironmentVariable("PATH")}" }, "open", "--port", "0");
        try
        {
            var told = "";
            while (!told.Contains("To stop", StringComparison.Ordinal)
                && await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
                told += line + "\n";
            var printed = Regex.Match(told, "http://[^ ]*token=[0-9a-f]{64}", RegexOptions.None, TimeSpan.FromSeconds(1)).Value;
            while (!File.Exists(opened))
                await Task.Delay(50, TestContext.Current.CancellationToken);
            var address = (await File.ReadAllTextAsync(opened, TestContext.Current.CancellationToken)).Trim();
            Assert.DoesNotContain("token", address, StringComparison.Ordinal);
            Assert.DoesNotContain(printed[^64..], address, StringComparison.Ordinal);
            Assert.NotEmpty(TrialServer.KeyIn(await FirstPageAsync(address)));
            var again = await FirstPageAsync(address);
            Assert.Equal("", TrialServer.KeyIn(again));
            Assert.Contains("used already", again, StringComparison.Ordinal);
            // The person still gets in by what stands in the terminal, as often as they like.
            Assert.NotEmpty(TrialServer.KeyIn(await FirstPageAsync(printed)));
            Assert.NotEmpty(TrialServer.KeyIn(await FirstPageAsync(printed)));
        }
        finally
        {
            program.Kill();
            Directory.Delete(rigs, recursive: true);
        }
    }

    // With no cookie: as somebody else would ask.
    private static async Task<string> FirstPageAsync(string address)
    {
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false });
        using var answer = await client.GetAsync(new Uri(address), TestContext.Current.CancellationToken);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData(2, "--port", "99999")]
    [InlineData(2, "no-such-notebook.ipynb")]
    [InlineData(2, "no-such-rig.yaml")]
    [InlineData(2, "--folder", "no-such-folder")]
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

    private static Process Start(string folder, params string[] arguments) => StartIn(folder, [], arguments);

    private static Process StartIn(string folder, Dictionary<string, string> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), .. arguments])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
    }
}
