using System.Text;
using System.Text.Json;
using RigScenarios.Page.Tests.Api;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>Without a server the answers are those of the server, byte for byte.</summary>
public sealed class SameAnswersTests
{
    private const string Sample = "samples/winter-harbour.yaml";

    [Fact]
    public async Task A_request_has_one_answer_whatever_carries_it()
    {
        await using var server = await TrialServer.StartAsync();
        using var page = new LocalPage(PageAbilities.All);
        var text = Checkout.Sample("market-hall.yaml").Replace("parts-from: [../parts]",
            $"parts-from: ['{Path.Combine(Checkout.Data, "parts")}']", StringComparison.Ordinal);
        var given = await FormRig.SmallAsync(server);
        var edit = new { @do = "add", question = "lens", part = "cine-prime" };
        await SameAsync(server, page, "abilities", new { }, "GET", "/api/abilities");
        await SameAsync(server, page, "rig-questions", new { }, "GET", "/api/rig/questions");
        await SameAsync(server, page, "rig-given", new { file = Sample }, "GET", $"/api/rig/given?file={Sample}");
        await SameAsync(server, page, "rig-given", new { file = Sample, day = "no such day" }, "GET",
            $"/api/rig/given?file={Sample}&day=no%20such%20day");
        await SameAsync(server, page, "rig-edit", new { given, edit }, "POST", "/api/rig/edit");
        await SameAsync(server, page, "rig-sheet", new { given, sheet = "build" }, "POST", "/api/rig/take-along");
        await SameAsync(server, page, "file", new { id = Sample }, "GET", $"/api/files/{Sample}");
        await SameAsync(server, page, "check-text", new { text, file = "own/new.yaml" }, "POST", "/api/text/check");
        await SameAsync(server, page, "text-help", new { text, line = 3, column = 1 }, "POST", "/api/text/help");
        await SameAsync(server, page, "save-rig", new { given, name = "mine.yaml" }, "POST", "/api/rig/save");
        await SameAsync(server, page, "save-rig", new { given, name = "mine.yaml" }, "POST", "/api/rig/save");
        Assert.Equal(File.ReadAllText(Path.Combine(server.Rigs, "mine.yaml")),
            File.ReadAllText(Path.Combine(page.Own, "mine.yaml")));
    }

    [Fact]
    public async Task The_shelf_has_the_same_files()
    {
        await using var server = await TrialServer.StartAsync();
        using var page = new LocalPage();
        var ofServer = await (await server.GetAsync("/api/shelf")).JsonAsync();
        var here = LocalPage.Json(await page.AskAsync("shelf", new { }));
        Assert.NotEmpty(here.GetProperty("files").EnumerateArray());
        Assert.Equal(ofServer.GetProperty("files").GetRawText(), here.GetProperty("files").GetRawText());
        // Where they lie in no folder, none is named.
        Assert.Equal(JsonValueKind.Null, here.GetProperty("folder").ValueKind);
        Assert.Empty(here.GetProperty("notebooks").EnumerateArray());
    }

    [Fact]
    public async Task A_run_of_the_form_tells_the_same()
    {
        await using var server = await TrialServer.StartAsync();
        using var page = new LocalPage(PageAbilities.All);
        var given = await FormRig.SmallAsync(server);
        var ofServer = await FormRig.AnswerAsync(server, given);
        using var line = page.Open(new { kind = "rig" });
        line.Say(new { kind = "run", queue = "now", run = 1, given });
        var here = (await line.UntilEndAsync()).Single(message => message.Text("kind") == "answer");
        Assert.Equal(ofServer.GetRawText(), here.GetRawText());
    }

    [Fact]
    public void All_that_is_answered_is_on_the_list_of_requests()
    {
        using var page = new LocalPage();
        var list = File.ReadAllText(Path.Combine(Checkout.Root, "src", "RigScenarios.Page", "site", "shared", "requests.js"));
        Each.Of(page.Requests.Names, name => Assert.Contains($" *   \"{name}\": {{ asks:", list, StringComparison.Ordinal));
    }

    private static async Task SameAsync(TrialServer server, LocalPage page, string name, object what, string method, string path)
    {
        var here = await page.AskAsync(name, what);
        using var there = await (method == "GET" ? server.GetAsync(path)
            : server.SendJsonAsync(HttpMethod.Parse(method), path, what));
        Assert.Equal((int)there.StatusCode, here.Status);
        Assert.Equal(there.Content.Headers.ContentType!.ToString(), here.ContentType);
        Assert.Equal(there.Content.Headers.ContentDisposition?.FileName?.Trim('"'), here.FileName);
        Assert.Equal(await there.TextAsync(), Encoding.UTF8.GetString(here.Body.Span));
    }
}
