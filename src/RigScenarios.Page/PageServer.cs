using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using RigScenarios.Page.Address;
using RigScenarios.Page.Classes;
using RigScenarios.Page.Live;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Rigs;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Saved;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Shelf;
using RigScenarios.Page.WebFiles;
using RigScenarios.Requests;
using RigScenarios.Requests.Settings;

namespace RigScenarios.Page;

/// <summary>
/// The notebooks as living pages, for one person on their own machine. Whoever has the address with its token may read the
/// notebooks and read and write scenario files in one folder; nothing that a request carries is ever run as code.
/// </summary>
/// <remarks>
/// While it runs, the process's current folder is the notebooks', because their cells name files relative to it.
/// </remarks>
public sealed class PageServer : IAsyncDisposable
{
    private readonly WebApplication application;
    private readonly NotebookShelf shelf;
    private readonly PageRequests requests;
    private readonly OwnAddresses addresses;
    private readonly AccessToken token = AccessToken.New();
    private readonly OneTimeKeys onceKeys = new(TimeProvider.System);
    private bool isDisposed;

    private PageServer(WebApplication application, NotebookShelf shelf, PageRequests requests, OwnAddresses addresses) =>
        (this.application, this.shelf, this.requests, this.addresses) = (application, shelf, requests, addresses);

    /// <summary>The address to open, with its token.</summary>
    public Uri Address => AddressAt("127.0.0.1");

    /// <summary>
    /// A new address that opens the pages once, within two minutes: for a browser that is started with it, because every user of
    /// the machine can read what a program was started with.
    /// </summary>
    public Uri OneTimeAddress() => new($"http://127.0.0.1:{Port}/?once={onceKeys.New()}");

    /// <summary>The addresses for other machines on this network, with the token; none unless they were asked for.</summary>
    public IReadOnlyList<Uri> NetworkAddresses => [.. addresses.Network.Select(AddressAt)];

    /// <summary>The port.</summary>
    public int Port => addresses.Port;

    /// <summary>Starts a server.</summary>
    /// <param name="options">What it shows, where own files go, and who may reach it.</param>
    /// <param name="cancellation">Gives up the start.</param>
    /// <exception cref="DirectoryNotFoundException">One of the folders isn't there.</exception>
    /// <exception cref="IOException">No port can be had.</exception>
    public static async Task<PageServer> StartAsync(PageOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(options);
        options = options with
        {
            NotebookFolder = Existing(options.NotebookFolder),
            DataFolder = Existing(options.DataFolder),
            RigFolder = Existing(options.RigFolder),
        };
        Environment.CurrentDirectory = options.NotebookFolder;
        foreach (var port in FreePort.From(options.Port))
        {
            var server = Build(options, port);
            try
            {
                await server.application.StartAsync(cancellation);
                if (options.Prepares)
                    _ = Task.Run(() => server.shelf.PrepareAsync(server.application.Lifetime.ApplicationStopping),
                        CancellationToken.None);
                return server;
            }
            catch (IOException exception) when (exception.InnerException is AddressInUseException)
            {
                // Someone took the port in between: the next one.
                await server.DisposeAsync();
            }
        }
        throw new IOException("No free port was found on this machine. Close another server, or name a port with --port.");
    }

    /// <summary>Ends when the server has been stopped.</summary>
    /// <param name="cancellation">Stops the server.</param>
    public async Task RunAsync(CancellationToken cancellation)
    {
        try
        {
            await Task.Delay(Timeout.Infinite, cancellation);
        }
        catch (OperationCanceledException)
        {
            await StopAsync();
        }
    }

    /// <summary>Stops runs, closes the pages' connections, and gives the port back.</summary>
    public async Task StopAsync()
    {
        requests.Watch.StopAll();
        await application.StopAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (isDisposed)
            return;
        isDisposed = true;
        await StopAsync();
        await application.DisposeAsync();
        requests.Dispose();
    }

    private static PageServer Build(PageOptions options, int port)
    {
        // Empty: no settings file, no environment variable and no developer's error page takes part.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { EnvironmentName = Environments.Production,
            ContentRootPath = AppContext.BaseDirectory });
        var strangers = new Strangers(options.Limits);
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel => Listen(kestrel, options, port, strangers));
        builder.Services.AddRoutingCore();
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(5));
        var web = builder.Build();
        var answers = new PageRequests(Answers(options));
        var server = new PageServer(web, (NotebookShelf)answers.Shelf!, answers, OwnAddresses.Of(port, options.Listen));
        server.Map(options, strangers);
        return server;
    }

    private static RequestOptions Answers(PageOptions options) => new()
    {
        DataFolder = options.DataFolder,
        OwnFolder = options.RigFolder,
        Notebooks = folders => new NotebookShelf(options.NotebookFolder, folders),
        OwnFolderInWords = InWords(options.RigFolder),
        CommandFolder = options.CommandFolder,
        Clock = TimeProvider.System,
        Limits = options.Limits,
        Abilities = PageAbilities.All,
        Report = options.Report,
    };

    /// <summary>A folder as a person would write it.</summary>
    private static string InWords(string folder)
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return home.Length > 1 && folder.StartsWith(home + Path.DirectorySeparatorChar, StringComparison.Ordinal)
            ? "~" + folder[home.Length..] : folder;
    }

    private void Map(PageOptions options, Strangers strangers)
    {
        var (files, scenarios, watch) = (requests.Files, requests.Scenarios, requests.Watch);
        var tasks = new TaskFiles(files);
        var gate = new RequestGate(addresses, token, onceKeys, strangers,
            new StudentDoor(addresses.Port, code => tasks.Find(code) is not null));
        var handler = new ExceptionHandler(requests.Report);
        application.Use((context, next) =>
        {
            PageHeaders.AddTo(context);
            return handler.RunAsync(context, async passed =>
            {
                if (await gate.LetsAsync(passed))
                    await next(passed);
            });
        });
        application.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(20),
            KeepAliveTimeout = TimeSpan.FromSeconds(20) });
        application.UseRouting();
        new WebFileEndpoints().Map(application);
        new ShelfEndpoints(shelf).Map(application);
        new RequestEndpoints(requests, options.Limits).Map(application);
        var pages = new PageSockets(watch, options, requests.Report, application.Lifetime.ApplicationStopping);
        new RigEndpoints(requests, pages, options.Limits).Map(application);
        var rooms = new LessonRooms(tasks, files, scenarios, watch);
        new TeacherEndpoints(tasks, rooms, files, scenarios, addresses, options.Limits).Map(application);
        new StudentEndpoints(rooms, options.Limits).Map(application);
        var saved = new SavedPageEndpoints(requests, shelf, options);
        application.Lifetime.ApplicationStopped.Register(saved.Dispose);
        saved.Map(application);
        new LiveEndpoints(requests.Notebooks!, pages, options.Limits).Map(application);
    }

    private static void Listen(KestrelServerOptions kestrel, PageOptions options, int port, Strangers strangers)
    {
        kestrel.AddServerHeader = false;
        kestrel.Limits.MaxRequestBodySize = options.Limits.LargestFileBytes;
        kestrel.Limits.MaxRequestLineSize = 8 * 1024;
        kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
        kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(15);
        // Counted by what they show, and not all alike: those who say nothing would keep the others out.
        kestrel.Limits.MaxConcurrentConnections = null;
        kestrel.Limits.MaxConcurrentUpgradedConnections = options.MostReaders * 2;
        kestrel.ConfigureEndpointDefaults(endpoint =>
        {
            endpoint.Protocols = HttpProtocols.Http1;
            endpoint.Use(strangers.Watch);
        });
        if (options.Listen)
            kestrel.ListenAnyIP(port);
        else
            kestrel.ListenLocalhost(port);
    }

    private Uri AddressAt(string host) => new($"http://{host}:{Port}/?token={token.Text}");

    private static string Existing(string folder)
    {
        var full = Path.GetFullPath(folder);
        return Directory.Exists(full) ? full : throw new DirectoryNotFoundException($"There is no folder \"{folder}\".");
    }
}
