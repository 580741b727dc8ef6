using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Page.Tests.Browser;
using RigScenarios.Page.Tests.Folders;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Tests.InBrowser;

/// <summary>Each notebook that needs no program: what its cells show in a browser is what they show on this machine, to the last
/// word, each figure of a chart within a billionth.</summary>
[Collection(Browser.InABrowser.Name)]
public sealed class SameNotebooksTests(Chromium chromium)
{
    // The longest search of a notebook, in a browser on a busy machine.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(10);

    // The page's part: opens the notebook's line, asks for one run, and gives all that came until its last word.
    private const string Script = """
        async name => {
          let hear = () => {};
          const { start } = await import(location.href);
          const door = await start((_, bytes) => hear(JSON.parse(new TextDecoder().decode(bytes))));
          return await new Promise(done => {
            const came = [];
            hear = message => {
              came.push(message);
              if (["done", "failed", "problems", "stopped"].includes(message.kind)) done(JSON.stringify(came));
            };
            door.open(1, JSON.stringify({ kind: "notebook", name }));
            door.say(1, JSON.stringify({ kind: "run", queue: "now", run: 1, values: {} }));
          });
        }
        """;

    // In every run: one with what would work and the course of the day, one with the balance of three stances. The others take
    // minutes, and are compared where RIGSCENARIOS_ALL_NOTEBOOKS is set.
    private static readonly string[] Quick = ["01-one-build-one-day", "05-one-kit-three-stances"];

    public static TheoryData<string> Names => [.. Published.Answering.Select(notebook => notebook.Name)
        .Where(name => Quick.Contains(name) || IsForAll)];

    private static bool IsForAll => Environment.GetEnvironmentVariable("RIGSCENARIOS_ALL_NOTEBOOKS") is { Length: > 0 };

    [Theory]
    [MemberData(nameof(Names))]
    public async Task It_shows_in_a_browser_what_it_shows_here(string name)
    {
        var cancellation = TestContext.Current.CancellationToken;
        var browser = chromium.Browser;
        await using var server = await StaticServer.StartAsync(await Published.ForNotebooks.FolderAsync());
        var page = await browser.NewPageAsync();
        await page.GotoAsync(new Uri(server.Address, "boot.js").ToString());
        var came = JsonNode.Parse(await page.EvaluateAsync<string>(Script, name).WaitAsync(Longest, cancellation))!.AsArray();
        await page.CloseAsync();
        Assert.Equal("done", came[^1]!["kind"]!.GetValue<string>());

        var run = await NotebookRunner.RunAsync(NotebookFile.Load(Path.Combine(Checkout.Root, "notebooks", name + ".ipynb")),
            cancellation: cancellation);
        Assert.Null(run.Failure);
        var here = new JsonObject(run.Cells.Select(cell => KeyValuePair.Create($"{cell.Cell.Number}", Parts(cell))));
        var there = new JsonObject(came.Where(message => message!["kind"]!.GetValue<string>() == "cell")
            .Select(message => KeyValuePair.Create($"{message!["cell"]}", (JsonNode?)message["parts"]!.DeepClone())));
        var comparison = new FigureComparison(1e-9);
        comparison.Compare(name, JsonNode.Parse(here.ToJsonString()), there);
        Assert.True(comparison.Differences.Count == 0, string.Join('\n', comparison.Differences.Take(20)));
        Assert.True(comparison.Words > 20, $"only {comparison.Words} words");
    }

    private static JsonNode? Parts(CellRun cell)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartArray();
            foreach (var part in cell.Outputs.Where(PartJson.IsShown))
                PartJson.Write(json, part);
            json.WriteEndArray();
        }
        return JsonNode.Parse(bytes.ToArray());
    }
}
