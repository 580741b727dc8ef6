using System.Net.Sockets;
using System.Net;
using System.Text.Json;
using System.Text;
using System.Text.RegularExpressions;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>A real server on a free port, with folders of its own and the checkout's data, and a reader who opened its
/// address.</summary>
public sealed class TrialServer : IAsyncDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("rigscenarios-page-").FullName;
    private readonly SocketsHttpHandler handler = new() { AllowAutoRedirect = false, UseCookies = false,
        Expect100ContinueTimeout = TimeSpan.FromSeconds(10) };
    private PageServer? server;
    private PageOptions? options;

    public string Rigs => Path.Combine(root, "rigs");

    public string Notebooks { get; private set; } = "";

    /// <summary>A folder beside those that were given to the server.</summary>
    public string Outside => Path.Combine(root, "outside");

    public List<string> Reports { get; } = [];

    public Uri Address => server!.Address;

    public IReadOnlyList<Uri> NetworkAddresses => server!.NetworkAddresses;

    public int Port => server!.Port;

    public string Host => $"127.0.0.1:{Port}";

    public string Origin => $"http://{Host}";

    /// <summary>The cookie, as the browser sends it back.</summary>
    public string Cookie { get; private set; } = "";

    /// <summary>The page's key, as the first page hands it over.</summary>
    public string Key { get; private set; } = "";

    /// <summary>What a reader's request carries, as lines of its head.</summary>
    public string Credentials => $"Cookie: {Cookie}\r\nRig-Key: {Key}";

    /// <summary>The header that set the cookie.</summary>
    public string SetCookie { get; private set; } = "";

    /// <summary>Starts a server.</summary>
    /// <param name="limits">Its limits.</param>
    /// <param name="listen">Whether other machines may reach it.</param>
    /// <param name="ownNotebooks">Whether it shows the notebooks that people get, and not those made for tests.</param>
    /// <param name="library">The library that saved pages carry.</param>
    public static async Task<TrialServer> StartAsync(PageLimits? limits = null, bool listen = false, bool ownNotebooks = false,
        ICarriedLibrary? library = null)
    {
        var trial = new TrialServer();
        trial.Notebooks = Path.Combine(trial.root, "notebooks");
        foreach (var folder in (string[])[trial.Rigs, trial.Notebooks, trial.Outside])
            Directory.CreateDirectory(folder);
        TrialNotebooks.WriteTo(trial.Notebooks);
        trial.options = new PageOptions
        {
            NotebookFolder = ownNotebooks ? Path.Combine(Checkout.Root, "notebooks") : trial.Notebooks,
            DataFolder = Checkout.Data,
            RigFolder = trial.Rigs,
            Port = 0,
            Listen = listen,
            Limits = WithRoom(limits ?? new PageLimits()),
            Report = trial.Reports.Add,
            CarriedLibrary = library,
        };
        trial.server = await PageServer.StartAsync(trial.options, TestContext.Current.CancellationToken);
        using var answer = await trial.SendAsync(new HttpRequestMessage(HttpMethod.Get, trial.Address), isReader: false);
        trial.SetCookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        trial.Cookie = trial.SetCookie.Split(';')[0];
        trial.Key = KeyIn(await answer.TextAsync());
        return trial;
    }

    // All servers of the tests are one process, in which every notebook stays that was ever compiled: it is larger than any
    // program that somebody uses. A test about memory gives a limit of its own.
    private static PageLimits WithRoom(PageLimits limits) => limits.MemoryBytes == new PageLimits().MemoryBytes
        ? limits with { MemoryBytes = long.MaxValue } : limits;

    /// <summary>Ends the server, as Ctrl-C would.</summary>
    public async Task StopAsync() => await server!.DisposeAsync();

    /// <summary>Starts it anew on the same port, with a new token.</summary>
    public async Task StartAgainAsync() =>
        server = await PageServer.StartAsync(options! with { Port = Port }, TestContext.Current.CancellationToken);

    /// <summary>Sends a request as a page of this server would.</summary>
    public async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, bool isReader = true)
    {
        if (isReader)
        {
            request.Headers.TryAddWithoutValidation("Cookie", Cookie);
            if (!request.Headers.Contains("Rig-Key"))
                request.Headers.TryAddWithoutValidation("Rig-Key", Key);
            if (request.Method != HttpMethod.Get && !request.Headers.Contains("Origin"))
                request.Headers.TryAddWithoutValidation("Origin", Origin);
        }
        // A large body is sent only when the server wants it: one that refuses closes the connection, and its answer would be
        // lost.
        request.Headers.ExpectContinue = request.Content?.Headers.ContentLength is null or > 100_000
            && request.Content is not null;
        using var client = new HttpClient(handler, disposeHandler: false);
        return await client.SendAsync(request, TestContext.Current.CancellationToken);
    }

    public Task<HttpResponseMessage> GetAsync(string path) => SendAsync(new HttpRequestMessage(HttpMethod.Get, At(path)));

    public Task<HttpResponseMessage> SendJsonAsync(HttpMethod method, string path, object body) =>
        SendTextAsync(method, path, JsonSerializer.Serialize(body));

    public Task<HttpResponseMessage> SendTextAsync(HttpMethod method, string path, string json) =>
        SendAsync(new HttpRequestMessage(method,
            At(path)) { Content = new StringContent(json, Encoding.UTF8, "application/json") });

    public Uri At(string path) => new($"{Origin}{path}");

    /// <summary>A new address that opens the pages once.</summary>
    public Uri OneTimeAddress() => server!.OneTimeAddress();

    /// <summary>The key that a first page hands over; empty where there is none.</summary>
    public static string KeyIn(string page) => Regex.Match(page, "name=\"rig-key\" content=\"(?<key>[0-9a-f]{64})\"",
        RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["key"].Value;

    /// <summary>Sends bytes as they are, for what no client would send, and gives the whole answer as text.</summary>
    public async Task<string> RawAsync(string request)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, Port, TestContext.Current.CancellationToken);
        await using var stream = client.GetStream();
        await stream.WriteAsync(Encoding.UTF8.GetBytes(request), TestContext.Current.CancellationToken);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Asks for a path exactly as written, with a reader's cookie.</summary>
    public Task<string> RawGetAsync(string path, params string[] headers) =>
        RawAsync($"GET {path} HTTP/1.1\r\nHost: {Host}\r\n{Credentials}\r\nConnection: "
            + $"close\r\n{string.Concat(headers.Select(header => header + "\r\n"))}\r\n");

    public Task<LiveReader> OpenAsync(string notebook) => LiveReader.OpenAsync(this, notebook);

    public async ValueTask DisposeAsync()
    {
        if (server is not null)
            await server.DisposeAsync();
        handler.Dispose();
        // The current folder was the notebooks'; Windows deletes no folder that someone stands in.
        Environment.CurrentDirectory = Checkout.Root;
        Directory.Delete(root, recursive: true);
    }
}
