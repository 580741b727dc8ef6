using System.Collections.Concurrent;
using System.Text.Json;
using System.Threading.Channels;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Requests;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>A page that asks without a server, with a folder of its own files and the checkout's data.</summary>
public sealed class LocalPage : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("rigscenarios-asked-").FullName;

    public LocalPage(PageAbilities? abilities = null, RequestLimits? limits = null)
    {
        Requests = new PageRequests(new RequestOptions
        {
            DataFolder = Checkout.Data,
            OwnFolder = root,
            Clock = TimeProvider.System,
            Abilities = abilities ?? PageAbilities.None,
            Limits = (limits ?? new RequestLimits()) with { MemoryBytes = long.MaxValue },
            Report = Reports.Add,
            ReportPlace = "The place for reports",
        });
    }

    public PageRequests Requests { get; }

    public string Own => root;

    public ConcurrentBag<string> Reports { get; } = [];

    public Task<RequestReply> AskAsync(string name, object what, ReadOnlyMemory<byte> attachment = default) =>
        AskTextAsync(name, JsonSerializer.Serialize(what), attachment);

    public Task<RequestReply> AskTextAsync(string name, string json, ReadOnlyMemory<byte> attachment = default) =>
        Requests.AskAsync(name, System.Text.Encoding.UTF8.GetBytes(json), attachment, TestContext.Current.CancellationToken);

    public Line Open(object line) => new(Requests, JsonSerializer.Serialize(line));

    public void Dispose()
    {
        Requests.Dispose();
        Directory.Delete(root, recursive: true);
    }

    public static JsonElement Json(RequestReply reply) => JsonSerializer.Deserialize<JsonElement>(reply.Body.Span);

    /// <summary>A line, and what came on it.</summary>
    public sealed class Line : IDisposable
    {
        private static readonly HashSet<string> Ends = ["done", "failed", "problems", "stopped"];

        private readonly Channel<JsonElement> came = Channel.CreateUnbounded<JsonElement>();
        private readonly ILine line;

        public Line(PageRequests requests, string json) => line = requests.Open(json,
            message => came.Writer.TryWrite(JsonSerializer.Deserialize<JsonElement>(message.Span)));

        public void Say(object message) => line.Take(JsonSerializer.SerializeToUtf8Bytes(message));

        /// <summary>All that comes until a run has ended, and its end.</summary>
        public async Task<IReadOnlyList<JsonElement>> UntilEndAsync()
        {
            var all = new List<JsonElement>();
            do
                all.Add(await came.Reader.ReadAsync(TestContext.Current.CancellationToken));
            while (!Ends.Contains(all[^1].Text("kind")));
            return all;
        }

        public bool IsQuiet => !came.Reader.TryPeek(out _);

        public void Dispose() => line.Close();
    }
}
