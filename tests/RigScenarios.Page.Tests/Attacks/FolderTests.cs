using System.Diagnostics;
using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>What stands in the folder of own rigs takes nothing but itself off the shelf.</summary>
public sealed class FolderTests
{
    [Fact(Timeout = 120_000)]
    public async Task A_pipe_a_device_and_a_socket_among_the_rigs_are_not_there()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "named pipes among files belong to other systems");
        await using var server = await TrialServer.StartAsync();
        using (var made = Process.Start(new ProcessStartInfo("mkfifo", [Path.Combine(server.Rigs, "pipe.yaml")])))
            await made!.WaitForExitAsync(TestContext.Current.CancellationToken);
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "endless.yaml"), "/dev/zero");
        File.CreateSymbolicLink(Path.Combine(server.Rigs, "pipe-too.yaml"), "pipe.yaml");
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), "rigscenarios: scenario 1\ntitle: Mine\n");
        Assert.Equal(["own/mine.yaml"], await OwnAsync(server));
        foreach (var name in (string[])["pipe.yaml", "endless.yaml", "pipe-too.yaml"])
        {
            using var answer = await server.GetAsync($"/api/files/own/{name}");
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    [Fact]
    public async Task No_text_of_one_file_takes_the_others_off_the_shelf()
    {
        await using var server = await TrialServer.StartAsync();
        string[] odd =
        [
            "conditions: {ambient: １ °C}", "conditions: {ambient: ٥ °C}", "kit: {a: {part: b, count: ٥}}",
            "title: \"\\u202Egpj\"",
            "title: \"\\u001b[2J\"", "days: {d: {starts: \"０６：３０\"}}", "note: \"\\uD800\"", "conditions: {ambient: 1e-320 °C}",
            "parts: {a: {kind: cable, name: a, cable: {gauge: ５ mm², length: １ m}}}",
        ];
        foreach (var (index, line) in odd.Index())
            File.WriteAllText(Path.Combine(server.Rigs, $"odd-{index}.yaml"), $"rigscenarios: scenario 1\n{line}\n");
        File.WriteAllBytes(Path.Combine(server.Rigs, "wrong.yaml"), [.. "rigscenarios: scenario 1\ntitle: "u8, 0xC3, 0x28]);
        File.WriteAllText(Path.Combine(server.Rigs, "empty.yaml"), "");
        var own = await OwnAsync(server);
        Assert.Equal(odd.Length, own.Count(id => id.StartsWith("own/odd-", StringComparison.Ordinal)));
        Assert.DoesNotContain("own/empty.yaml", own);
    }

    private static async Task<IReadOnlyList<string>> OwnAsync(TrialServer server) =>
    [
        .. (await (await server.GetAsync("/api/shelf")).JsonAsync()).GetProperty("files").EnumerateArray()
            .Select(file => file.Text("id")).Where(id => id.StartsWith("own/", StringComparison.Ordinal)),
    ];
}
