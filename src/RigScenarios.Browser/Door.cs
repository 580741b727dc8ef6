using System.Runtime.InteropServices;
using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text;
using RigScenarios.Browser.Files;
using RigScenarios.Browser.Live;
using RigScenarios.Requests;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Browser;

/// <summary>
/// The one door between scripts and the library: requests and lines as the pages know them. Texts come as strings; whatever goes
/// out is UTF-8, as a copy that belongs to the script.
/// </summary>
[SupportedOSPlatform("browser")]
internal static partial class Door
{
    // A program has one door, and a door one state: what scripts call are static methods.
    private static readonly Dictionary<int, ILine> Lines = [];
    private static PageRequests? requests;

    // As long as the scripts wait for it: they end what takes longer.
    private static readonly TimeSpan LongestRun = TimeSpan.FromSeconds(240);

    private static PageRequests Requests => requests ?? throw new InvalidOperationException("The library is not started yet.");

    /// <summary>Makes the folders and what answers requests. Called once, before all else.</summary>
    [JSExport]
    internal static void Start()
    {
        Folders.Fill();
        Environment.CurrentDirectory = Folders.Notebooks;
        requests = new PageRequests(new RequestOptions
        {
            DataFolder = Folders.Data,
            OwnFolder = Folders.Own,
            Notebooks = folders => new ShelfAhead(folders),
            Limits = new RequestLimits { RunTime = LongestRun },
            Clock = TimeProvider.System,
            Report = Report,
            ReportPlace = "The browser's console",
        });
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
        var reply = await Requests.AskAsync(name, Encoding.UTF8.GetBytes(json), attachment, CancellationToken.None);
        return Reply(reply.Status, reply.ContentType, Shown(reply.Body), reply.FileName);
    }

    /// <summary>Opens a line.</summary>
    /// <param name="id">The script's number for it.</param>
    /// <param name="json">Which: <c>{"kind":"rig"}</c>.</param>
    [JSExport]
    internal static void OpenLine(int id, string json)
    {
        CloseLine(id);
        Lines.Add(id, Requests.Open(json, message => Told(id, Shown(message))));
    }

    /// <summary>Takes a message of a page: a run, or a stop. One for a line that is closed goes nowhere.</summary>
    [JSExport]
    internal static void Say(int id, string json)
    {
        if (Lines.TryGetValue(id, out var line))
            line.Take(Encoding.UTF8.GetBytes(json));
    }

    /// <summary>Ends a line; what runs on it stops.</summary>
    [JSExport]
    internal static void CloseLine(int id)
    {
        if (Lines.Remove(id, out var line))
            line.Close();
    }

    /// <summary>Tells a script what comes on a line.</summary>
    [JSImport("told", "door")]
    private static partial void Told(int id, [JSMarshalAs<JSType.MemoryView>] Span<byte> message);

    [JSImport("reply", "door")]
    private static partial JSObject Reply(int status, string contentType, [JSMarshalAs<JSType.MemoryView>] Span<byte> body,
        string? fileName);

    // What is shown to a script is a span that may be written to; the script copies it before it returns.
    private static Span<byte> Shown(ReadOnlyMemory<byte> bytes) => MemoryMarshal.AsMemory(bytes).Span;

    [JSImport("report", "door")]
    private static partial void Report(string words);
}
