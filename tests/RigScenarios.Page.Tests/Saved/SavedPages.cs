using System.IO.Compression;
using System.Text.Json;
using System.Text.RegularExpressions;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Page.Saved;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>Makes saved pages for tests, and reads what they carry.</summary>
internal static class SavedPages
{
    /// <summary>A notebook of a folder.</summary>
    public static Notebook Of(string folder, string name) => NotebookFile.Load(Path.Combine(folder, name + ".ipynb"));

    /// <summary>Runs a notebook with values, in its own folder.</summary>
    public static async Task<SavedConversation> RecordAsync(Notebook notebook, Dictionary<string, string>? given = null,
        Dictionary<string, string>? own = null)
    {
        var before = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
        try
        {
            var recorder = new ConversationRecorder(Checkout.Data, TimeProvider.System);
            return await recorder.RecordAsync(notebook, given ?? [], own ?? [], null, TestContext.Current.CancellationToken);
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }
    }

    /// <summary>What a page was saved with.</summary>
    public static JsonElement SavedIn(string html)
    {
        var packed = Regex.Match(html, "data-carried=\"saved\">(?<data>[^<]*)<", RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(10)).Groups["data"].Value;
        using var unpacked = new DeflateStream(new MemoryStream(Convert.FromBase64String(packed)), CompressionMode.Decompress);
        return JsonDocument.Parse(unpacked).RootElement;
    }
}
