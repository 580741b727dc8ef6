using System.Net;
using System.Text.Json.Nodes;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>The changes that a form asks for.</summary>
public sealed class RigEditTests
{
    [Fact]
    public async Task Every_kind_of_change_is_made_and_named()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        async Task<JsonObject> Edit(object edit)
        {
            var edited = await FormRig.EditAsync(server, given, edit);
            given = (JsonObject)edited["given"]!.DeepClone();
            return edited;
        }

        Assert.Equal("camera", (string?)(await Edit(new { @do = "choose", thing = "camera", part = "compact-body-a" }))["thing"]);
        Assert.Equal("compact-body-a", (string?)given["kit"]!["camera"]!["part"]);
        await Edit(new { @do = "choose", thing = "plate", part = "plate-outlets" });
        await Edit(new { @do = "feed", thing = "monitor", from = "plate" });
        await Edit(new { @do = "outlet", thing = "monitor", outlet = "b" });
        await Edit(new { @do = "cable", thing = "monitor", length = "2 m", gauge = "AWG 20" });
        var monitor = given["builds"]!["rig"]!["devices"]!["monitor"]!;
        Assert.Equal(("plate", "b", "monitor-cable"),
            ((string?)monitor["fed-by"], (string?)monitor["outlet"], (string?)monitor["cable"]));
        await Edit(new { @do = "cable", thing = "monitor", cable = "" });
        Assert.Null(given["kit"]!["monitor-cable"]);
        await Edit(new { @do = "batteries", count = "2" });
        Assert.Equal(2, ((JsonObject)given["batteries"]!).Count);
        Assert.Equal("charger", (string?)(await Edit(new { @do = "charger", bays = 2 }))["view"]!["charger"]);
        await Edit(new { @do = "day", key = "night-in-the-cold" });
        Assert.Equal("-6 °C", (string?)given["days"]!["day"]!["ambient"]);
        await Edit(new { @do = "journey", by = "flight", travellers = "2" });
        Assert.Equal("2", (string?)given["journeys"]!["journey"]!["travellers"]);
        foreach (var part in (string[])["cage-full", "rods-400-steel"])
            await Edit(new { @do = "add", question = "other", part });
        await Edit(new { @do = "move", thing = "plate", forward = "-150 mm" });
        Assert.NotNull(given["builds"]!["rig"]!["places"]!["plate"]);
        Assert.Null((await Edit(new { @do = "take-away", thing = "monitor" }))["thing"]);
        Assert.Null(given["parts"]?["own-monitor"]);
        Assert.Empty((await FormRig.AnswerAsync(server, given)).GetProperty("problems").EnumerateArray());
    }

    [Theory]
    [InlineData("{\"do\": \"ad\", \"question\": \"camera\"}", "edit.do", "add")]
    [InlineData("{\"do\": \"add\", \"question\": \"monitr\", \"own\": true}", "question", "monitor")]
    [InlineData("{\"do\": \"add\", \"question\": \"lens\", \"part\": \"stills-prime-25\"}", "part", "stills-prime-24")]
    [InlineData("{\"do\": \"take-away\"}", "edit.thing", null)]
    [InlineData("{\"do\": \"feed\", \"thing\": \"camera\", \"from\": \"sun\"}", "from", null)]
    [InlineData("{\"do\": \"move\", \"thing\": \"plate\", \"forward\": \"far\"}", "forward", null)]
    public async Task A_change_that_can_not_be_made_is_told(string edit, string path, string? nearest)
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/edit", new { given,
            edit = JsonNode.Parse(edit) });
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var problem = (await answer.JsonAsync()).GetProperty("problems")[0];
        Assert.Equal(path, problem.Text("path"));
        if (nearest is not null)
            Assert.Equal(nearest, problem.Text("nearest"));
    }
}
