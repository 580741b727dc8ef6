using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>Rigs as the form's page holds them, and the answers to them.</summary>
internal static class FormRig
{
    public static async Task<JsonObject> BlankAsync(TrialServer server) =>
        (JsonObject)JsonNode.Parse((await (await server.GetAsync("/api/rig/questions")).JsonAsync()).GetProperty("given")
            .GetRawText())!;

    public static async Task<JsonElement> AnswerAsync(TrialServer server, JsonObject given)
    {
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "now", run = 1, given, file = (string?)null, build = (string?)null,
            day = (string?)null });
        Assert.Equal("done", (await form.EndAsync(1)).Text("kind"));
        return form.Messages.Single(message => message.Text("kind") == "answer");
    }

    /// <summary>A body, a battery, a plate and a monitor of its own label, as a form makes them.</summary>
    public static async Task<JsonObject> SmallAsync(TrialServer server)
    {
        var given = await BlankAsync(server);
        foreach (var edit in (object[])[Add("camera", "compact-body-b"), Add("battery", "brick-190wh"),
            Add("plate", "plate-guarded"), new { @do = "add", question = "monitor", own = true }])
            given = (JsonObject)(await EditAsync(server, given, edit))["given"]!.DeepClone();
        var monitor = given["parts"]!["own-monitor"]!;
        (monitor["label"], monitor["mass"]) = (new JsonObject { ["voltage"] = "14.4 V", ["current"] = "0.8 A" }, "310 g");
        return given;

        static object Add(string question, string part) => new { @do = "add", question, part };
    }

    public static async Task<JsonObject> EditAsync(TrialServer server, JsonObject given, object edit)
    {
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/edit", new { given, edit });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (JsonObject)JsonNode.Parse(await answer.TextAsync())!;
    }
}
