using System.Text;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The reader's own files: those of the server's folder, or those that the browser keeps.</summary>
/// <param name="visit">The visit; one of the pages must be open.</param>
/// <param name="folder">The server's folder; null where the browser keeps them.</param>
internal sealed class OwnFiles(Visit visit, string? folder)
{
    // The names of the database and of what is in it are those of site/browser/own-files.js.
    private const string Database = """
        const open = () => new Promise((done, failed) => {
          const opening = indexedDB.open("rig-scenarios", 1);
          opening.onupgradeneeded = () => opening.result.createObjectStore("own-files");
          opening.onsuccess = () => done(opening.result);
          opening.onerror = () => failed(opening.error);
        });
        const files = async (mode, what) => {
          const database = await open();
          const asked = what(database.transaction("own-files", mode).objectStore("own-files"));
          const result = await new Promise((done, failed) => {
            asked.onsuccess = () => done(asked.result);
            asked.onerror = () => failed(asked.error);
          });
          database.close();
          return result;
        };
        """;

    // Where the library in the browser has the parts.
    private const string PartsInBrowser = "/data/parts";

    private static string PartsHere => Path.Combine(Checkout.Data, "parts");

    /// <summary>Keeps a demo as a file of the reader's own, with the parts where they lie.</summary>
    /// <returns>Its text.</returns>
    public async Task<string> PutDemoAsync(string name, string demo)
    {
        var text = Checkout.Sample(demo).Replace("parts-from: [../parts]",
            $"parts-from: [{(folder is null ? PartsInBrowser : PartsHere)}]", StringComparison.Ordinal);
        await PutAsync(name, text);
        return text;
    }

    /// <summary>Keeps a text as a file of the reader's own.</summary>
    public async Task PutAsync(string name, string text)
    {
        if (folder is not null)
            await File.WriteAllTextAsync(Path.Combine(folder, name), text, TestContext.Current.CancellationToken);
        else
            await visit.Page.EvaluateAsync($"async ([name, text]) => {{ {Database} await files('readwrite', "
                + "store => store.put(new TextEncoder().encode(text), name)); }", new[] { name, text });
    }

    /// <summary>A file's text as it was saved.</summary>
    public async Task<string> TextAsync(string name)
    {
        if (folder is not null)
            return await File.ReadAllTextAsync(Path.Combine(folder, name), TestContext.Current.CancellationToken);
        var text = await visit.Page.EvaluateAsync<string?>($"async name => {{ {Database} const bytes = await files('readonly', "
            + "store => store.get(name)); return bytes ? new TextDecoder().decode(bytes) : null; }", name);
        Assert.True(text is not null, $"The browser keeps no {name}.");
        return text!;
    }

    /// <summary>A file that was saved, read without the pages.</summary>
    public async Task<Scenario> ScenarioAsync(string name)
    {
        if (folder is not null)
            return ScenarioFile.Read(Path.Combine(folder, name));
        var place = Directory.CreateTempSubdirectory("rigscenarios-saved-").FullName;
        var file = Path.Combine(place, name);
        await File.WriteAllTextAsync(file, (await TextAsync(name)).Replace(PartsInBrowser, PartsHere, StringComparison.Ordinal),
            Encoding.UTF8, TestContext.Current.CancellationToken);
        var scenario = ScenarioFile.Read(file);
        Directory.Delete(place, recursive: true);
        return scenario;
    }
}
