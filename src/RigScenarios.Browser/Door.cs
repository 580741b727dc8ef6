using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text;
using System.Text.Json;
using RigScenarios.Browser.Demos;
using RigScenarios.Drafts;
using RigScenarios.Files;

namespace RigScenarios.Browser;

/// <summary>
/// The one door between scripts and the library: requests and lines as the pages know them. Texts come as strings; whatever goes
/// out is UTF-8, as a copy that belongs to the script.
/// </summary>
[SupportedOSPlatform("browser")]
internal static partial class Door
{
    /// <summary>Makes the folders and what answers requests. Called once, before all else.</summary>
    /// <param name="json">An object; no field of it is needed yet.</param>
    [JSExport]
    internal static void Start(string json)
    {
        _ = json;
        Folders.Fill();
    }

    /// <summary>Writes a file into the memory of the program, such as <c>/own/my-rig.yaml</c>.</summary>
    [JSExport]
    internal static void PutFile(string path, byte[] bytes) => File.WriteAllBytes(path, bytes);

    /// <summary>Takes a file away; nothing happens where there is none.</summary>
    [JSExport]
    internal static void RemoveFile(string path) => File.Delete(path);

    /// <summary>A file's bytes; null where there is none.</summary>
    [JSExport]
    internal static byte[]? ReadFile(string path) => File.Exists(path) ? File.ReadAllBytes(path) : null;

    /// <summary>Asks one thing.</summary>
    /// <param name="name">The request's name.</param>
    /// <param name="json">What is asked.</param>
    /// <param name="attachment">A file that belongs to it; empty where there is none.</param>
    /// <returns>An object: <c>status</c>, <c>contentType</c>, <c>body</c> (bytes), <c>fileName</c> (null for none).</returns>
    [JSExport]
    [return: JSMarshalAs<JSType.Promise<JSType.Object>>]
    internal static async Task<JSObject> Ask(string name, string json, byte[] attachment)
    {
        await Task.Yield();
        _ = attachment;
        using var what = JsonDocument.Parse(json);
        var file = name == "answer" ? what.RootElement.GetProperty("file").GetString()! : "winter-harbour.yaml";
        var scenario = ScenarioFile.Read(Path.Combine(Folders.Data, "scenarios", file));
        var frame = new RigFrame(scenario, RigLibrary.Read(Path.Combine(Folders.Data, "parts")), scenario.Builds.Keys.First(),
            scenario.Days.Keys.First());
        var rig = RigSoFar.Of(GivenRig.Of(scenario, frame));
        return Reply(200, "application/json", Encoding.UTF8.GetBytes(JsonSerializer.Serialize(new { rig.Sentence })), null);
    }

    /// <summary>Opens a line.</summary>
    /// <param name="id">The script's number for it.</param>
    /// <param name="json">Which: <c>{"kind":"rig"}</c>.</param>
    [JSExport]
    internal static void OpenLine(int id, string json) => _ = (id, json);

    /// <summary>Takes a message of a page: a run, or a stop.</summary>
    [JSExport]
    internal static void Say(int id, string json) => _ = json;

    /// <summary>Ends a line; what runs on it stops.</summary>
    [JSExport]
    internal static void CloseLine(int id) => _ = id;

    /// <summary>Tells a script what comes on a line.</summary>
    [JSImport("told", "door")]
    internal static partial void Told(int id, [JSMarshalAs<JSType.MemoryView>] Span<byte> message);

    [JSImport("reply", "door")]
    private static partial JSObject Reply(int status, string contentType, [JSMarshalAs<JSType.MemoryView>] Span<byte> body,
        string? fileName);
}
