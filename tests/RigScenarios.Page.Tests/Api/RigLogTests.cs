using System.Net;
using System.Text;
using System.Text.Json;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>A power log that is sent from the form.</summary>
public sealed class RigLogTests
{
    private const string Octets = "application/octet-stream";

    private static string Log { get; } = File.ReadAllText(Path.Combine(Checkout.Data, "field-notes", "market-hall-log.csv"));

    [Fact]
    public async Task It_says_what_the_battery_holds_how_it_was_read_and_what_goes_into_the_rig()
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await SendAsync(server, Log, air: 20, charge: 100);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var json = await answer.JsonAsync();
        Assert.Matches(@"^Your battery holds \d+ % of its label \(\d+ to \d+\)\.$", json.GetProperty("says")[0].GetString());
        Assert.Matches("^It resists .* times as much as a new one", json.GetProperty("says")[1].GetString());
        Assert.Contains(json.GetProperty("read").EnumerateArray(), words =>
            words.GetString() == "Time from \"t (s)\" in s, voltage from \"U (V)\" in V, current from \"I (A)\" in A.");
        Assert.Contains(json.GetProperty("read").EnumerateArray(), words =>
            words.GetString() == "Taken: 100 % charged at its begin, the air at 20 °C.");
        Assert.Matches(@"^\d+(\.\d)? %$", json.GetProperty("take").Text("capacity-left"));
        Assert.Matches(@"^\d+(\.\d{1,3})?$", json.GetProperty("take").Text("resistance-growth"));
    }

    [Fact]
    public async Task What_was_taken_before_does_not_count_again()
    {
        await using var server = await TrialServer.StartAsync();
        using var first = await SendAsync(server, Log);
        var left = (await first.JsonAsync()).GetProperty("take").Text("capacity-left");
        using var again = await SendAsync(server, Log, change: given => given.Replace("\"battery\":{\"item\"",
            $"\"battery\":{{\"capacity-left\":\"{left}\",\"item\"", StringComparison.Ordinal));
        Assert.Equal(left, (await again.JsonAsync()).GetProperty("take").Text("capacity-left"));
    }

    [Fact]
    public async Task What_is_no_log_or_one_of_another_battery_is_refused_in_words()
    {
        await using var server = await TrialServer.StartAsync();
        await RefusedAsync(server, "Dear all,\nhere is no log.\n", "No rows of numbers");
        await RefusedAsync(server, "time,voltage,current\n0,7.4,1\n60,7.3,1\n120,7.2,1\n", "Is it a log of this battery");
        await RefusedAsync(server, "time,voltage,current\n0,16,0\n60,16,0\n120,16,0\n", "No current flows in the log");
        await RefusedAsync(server, Log, "-40 to 60", air: 400);
        await RefusedAsync(server, Log, "1 to 100", charge: 0);
    }

    [Fact]
    public async Task A_log_that_is_too_large_or_comes_as_something_else_is_refused()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { LargestLogBytes = 1000 });
        using var large = await SendAsync(server, new string('1', 400_000));
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, large.StatusCode);
        foreach (var (type, text) in ((string, string)[])[("application/json", "{}"), ("text/plain", "{}\n"),
            ("multipart/form-data", "{}\n")])
        {
            using var other = await PostAsync(server, text, type);
            Assert.Equal(HttpStatusCode.UnsupportedMediaType, other.StatusCode);
        }
        foreach (var text in (string[])["", "{}", "[]\n1", "{\"a\n", "{}\n"])
        {
            using var broken = await PostAsync(server, text, Octets);
            Assert.Equal(HttpStatusCode.BadRequest, broken.StatusCode);
        }
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync("/api/shelf")).StatusCode);
        Assert.Empty(server.Reports);
    }

    private static async Task RefusedAsync(TrialServer server, string log, string words, double air = 20, double charge = 100)
    {
        using var answer = await SendAsync(server, log, air, charge);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = (await answer.JsonAsync()).GetProperty("problems")[0];
        Assert.Contains(words, $"{problem.Text("text")} {problem.GetProperty("accepted")}", StringComparison.Ordinal);
    }

    private static async Task<HttpResponseMessage> SendAsync(TrialServer server, string log, double air = 20,
        double charge = 100, Func<string, string>? change = null)
    {
        var given = (await (await server.GetAsync("/api/rig/given?file=samples/market-hall.yaml")).JsonAsync())
            .GetProperty("given").GetRawText();
        var what = JsonSerializer.Serialize(new { file = "samples/market-hall.yaml", name = "log.csv", air, charge });
        return await PostAsync(server, $"{what[..^1]},\"given\":{(change is null ? given : change(given))}}}\n{log}", Octets);
    }

    private static Task<HttpResponseMessage> PostAsync(TrialServer server, string body, string type) => server.SendAsync(
        new HttpRequestMessage(HttpMethod.Post, server.At("/api/rig/log"))
        {
            Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) { Headers = { { "Content-Type", type } } },
        });
}
