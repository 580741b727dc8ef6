using System.Diagnostics;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace RigScenarios.Page.Tests.Servers;

/// <summary><c>rigscenarios open</c> as a program of its own, started by a shell that first bounds or changes what it may do.
/// </summary>
internal sealed class OwnProgram : IDisposable
{
    private readonly Process process;
    private readonly HttpClient client = new();

    private OwnProgram(Process process, Uri address) => (this.process, Address) = (process, address);

    public Uri Address { get; }

    /// <summary>Starts it on a folder.</summary>
    /// <param name="folder">The folder of own files.</param>
    /// <param name="before">What the shell does before, such as <c>ulimit -f 8</c>.</param>
    public static async Task<OwnProgram> OpenAsync(string folder, string before = ":")
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "this system has no signals");
        var start = new ProcessStartInfo("bash",
            ["-c", $"{before}; exec dotnet \"$0\" open --folder \"$1\" --port 0 --no-browser",
            Path.Combine(AppContext.BaseDirectory, "RigScenarios.Cli.dll"), folder])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        // Else the runtime itself makes large files in memory, which a bound on files would forbid.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        var started = Process.Start(start)!;
        var told = new StringBuilder();
        while (!told.ToString().Contains("To stop", StringComparison.Ordinal)
            && await started.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
            told.AppendLine(line);
        var address = Regex.Match(told.ToString(), "http://127\\.0\\.0\\.1:[0-9]+/[^ \n]*token=[0-9a-f]{64}",
            RegexOptions.None, TimeSpan.FromSeconds(1)).Value;
        if (address.Length == 0)
            Assert.Fail($"It did not start: {told}{await started.StandardError.ReadToEndAsync()}");
        var program = new OwnProgram(started, new Uri(address));
        var key = TrialServer.KeyIn(await program.client.GetStringAsync(program.Address, TestContext.Current.CancellationToken));
        program.client.DefaultRequestHeaders.Add("Rig-Key", key);
        program.client.DefaultRequestHeaders.Add("Origin", program.Address.GetLeftPart(UriPartial.Authority));
        return program;
    }

    /// <summary>Saves a text over whatever is there.</summary>
    public Task<HttpResponseMessage> SaveAsync(string name, string text, CancellationToken cancellation) =>
        client.PutAsync(new Uri(Address, $"/api/files/own/{name}"), new StringContent(
            JsonSerializer.Serialize(new { text, version = (string?)null, replace = true }), Encoding.UTF8, "application/json"),
            cancellation);

    /// <summary>Ends it at once, with no chance to put anything in order.</summary>
    public async Task KillAsync()
    {
        process.Kill();
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    public void Dispose()
    {
        if (!process.HasExited)
            process.Kill();
        process.Dispose();
        client.Dispose();
    }
}
