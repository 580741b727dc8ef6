using System.Globalization;
using Microsoft.Playwright;
using RigScenarios.Page.Tests.Folders;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>
/// `browser FOLDER VISITS CHANGES`: serves a folder that `rigscenarios site` wrote, as a plain server would, and opens its form
/// with a demo in Chromium: the time from a first visit to the first verdict and to the first answer with its charts, on this
/// processor and on one slowed to a quarter; then how long a change takes until the verdict and until all of its answer is drawn,
/// for a part that is dragged and for another temperature.
/// </summary>
internal static class BrowserCommand
{
    public const string Usage = "browser FOLDER VISITS CHANGES";

    private const string Form = "rig.html?file=samples/winter-harbour.yaml";
    private const string Air = "input[type=text][data-path='days.day-one.ambient']";
    private const string Note = """
        addEventListener('rs-verdict', event => {
          window.firstVerdict ??= performance.now();
          window.verdictDrawn = event.detail.drawn;
        });
        addEventListener('rs-updated', () => { window.firstAnswer ??= performance.now(); });
        """;

    // Not by polling: the page's policy lets no text be run as a script.
    private const string Answered = """
        () => new Promise(done => {
          if (window.firstAnswer) done();
          else addEventListener('rs-updated', () => setTimeout(done), { once: true });
        })
        """;

    private const string Change = """
        ([selector, text]) => new Promise((done, failed) => {
          const tell = event => {
            removeEventListener('rs-updated', tell);
            clearTimeout(limit);
            done([window.verdictDrawn, event.detail.drawn]);
          };
          const limit = setTimeout(() => failed(new Error(`nothing came for ${text}`)), 120000);
          addEventListener('rs-updated', tell);
          const input = document.querySelector(selector);
          input.value = text;
          input.dispatchEvent(new Event('input', { bubbles: true }));
          input.dispatchEvent(new Event('change', { bubbles: true }));
        })
        """;

    public static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments.Length != 3 || !File.Exists(Path.Combine(arguments[0], "rig.html"))
            || !int.TryParse(arguments[1], CultureInfo.InvariantCulture, out var visits) || visits < 1
            || !int.TryParse(arguments[2], CultureInfo.InvariantCulture, out var changes) || changes < 20)
        {
            await Console.Error.WriteLineAsync($"Usage: {Usage}, with a folder that rigscenarios site wrote, at least one visit "
                + "and at least 20 changes");
            return 2;
        }
        if (OpenedPage.Find() is not { } chromium)
        {
            await Console.Error.WriteLineAsync("This needs Chromium on the path; it was not found.");
            return 2;
        }

        await using var server = await StaticServer.StartAsync(arguments[0]);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium
            .LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox", "--disable-gpu"] });
        var address = new Uri(server.Address, Form).ToString();
        await StartsAsync(browser, address, visits, slowed: 1);
        await StartsAsync(browser, address, visits, slowed: 4);

        await using var context = await NewAsync(browser, slowed: 1);
        var page = await OpenAsync(context, address, slowed: 1);
        PageCommand.Tell("a part dragged: pointer to all drawn", await DragCommand.MovesAsync(page, "plate", changes));
        await AirAsync(page, changes);
        return 0;
    }

    private static async Task StartsAsync(IBrowser browser, string address, int visits, int slowed)
    {
        var (verdicts, times, work) = (new List<double>(), new List<double>(), new List<double>());
        for (var i = 0; i < visits; i++)
        {
            await using var context = await NewAsync(browser, slowed);
            var page = await OpenAsync(context, address, slowed);
            verdicts.Add(await page.EvaluateAsync<double>("() => window.firstVerdict"));
            times.Add(await page.EvaluateAsync<double>("() => window.firstAnswer"));
            work.Add(await ProcessorTimeAsync(page));
        }
        var how = slowed == 1 ? "" : $", on a processor slowed to 1/{slowed}, all on one thread";
        PageCommand.Tell($"first visit to the first verdict{how}", verdicts);
        PageCommand.Tell($"first visit to all of the first answer drawn{how}", times);
        // Less moved by what else the machine does.
        PageCommand.Tell("processor time of that, of all the page's threads", work);
    }

    private static async Task AirAsync(IPage page, int changes)
    {
        var (verdicts, drawn) = (new List<double>(), new List<double>());
        for (var i = 0; i < changes; i++)
        {
            // A temperature of its own each time: no day is known yet.
            var text = string.Create(CultureInfo.InvariantCulture, $"{-8 + (i * 0.01):0.00} °C");
            var times = await page.EvaluateAsync<double[]>(Change, new[] { Air, text });
            // The first tenth warms up.
            if (i < changes / 10)
                continue;
            verdicts.Add(times[0]);
            drawn.Add(times[1]);
        }
        PageCommand.Tell("another air temperature: change to verdict drawn", verdicts);
        PageCommand.Tell("another air temperature: change to all drawn", drawn);
    }

    private static async Task<double> ProcessorTimeAsync(IPage page)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Performance.enable");
        var metrics = (await session.SendAsync("Performance.getMetrics"))!.Value.GetProperty("metrics");
        return 1000 * metrics.EnumerateArray().First(metric => metric.GetProperty("name").GetString() == "ProcessTime")
            .GetProperty("value").GetDouble();
    }

    private static Task<IBrowserContext> NewAsync(IBrowser browser, int slowed) => browser.NewContextAsync(new()
    {
        ViewportSize = new() { Width = 1280, Height = 900 },
        // The frame in the worker's place is none of the page's own.
        BypassCSP = slowed > 1,
        ServiceWorkers = ServiceWorkerPolicy.Block,
    });

    private static async Task<IPage> OpenAsync(IBrowserContext context, string address, int slowed)
    {
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(600_000);
        await page.AddInitScriptAsync(Note);
        if (slowed > 1)
        {
            await page.AddInitScriptAsync(await File.ReadAllTextAsync(
                Path.Combine(AppContext.BaseDirectory, "InBrowser", "one-thread.js")));
            var session = await context.NewCDPSessionAsync(page);
            await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = slowed });
        }
        await page.GotoAsync(address);
        await page.EvaluateAsync(Answered);
        return page;
    }
}
