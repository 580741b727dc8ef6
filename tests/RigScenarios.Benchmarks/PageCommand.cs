using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace RigScenarios.Benchmarks;

/// <summary>
/// `page NOTEBOOK PARAMETER LOW HIGH CHANGES`: opens the notebook's living page in Chromium, moves one slider step by step, each
/// step after the charts of the one before are drawn, and tells the times that the page itself measured and the server's memory.
/// </summary>
internal static class PageCommand
{
    public const string Usage = "page NOTEBOOK PARAMETER LOW HIGH CHANGES";

    // One step: the control's event as a reader's hand would make it, then the page's own event when the charts on the screen are
    // drawn.
    private const string Step = """
        ([name, value]) => new Promise((done, failed) => {
          const slider = document.querySelector(`#control-${name}`).parentElement.querySelector('input[type=range]');
          const tell = event => {
            if (event.detail.queue !== 'now') return;
            removeEventListener('rs-updated', tell);
            clearTimeout(limit);
            done([event.detail.drawn, event.detail.milliseconds, event.detail.server]);
          };
          const limit = setTimeout(() => {
            removeEventListener('rs-updated', tell);
            failed(new Error(`no chart came for ${value}`));
          }, 60000);
          addEventListener('rs-updated', tell);
          slider.value = value;
          slider.dispatchEvent(new Event('input', { bubbles: true }));
        })
        """;

    public static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments.Length != 5 || !TryNumber(arguments[2], out var low) || !TryNumber(arguments[3], out var high)
            || !int.TryParse(arguments[4], CultureInfo.InvariantCulture, out var changes) || changes < 20)
        {
            await Console.Error.WriteLineAsync($"Usage: {Usage}, with at least 20 changes, such as: page "
                + "notebooks/01-one-build-one-day.ipynb degreesColder -10 10 1000");
            return 2;
        }

        await using var opened = await OpenedPage.OpenAsync(arguments[0]);
        if (opened is null)
            return 2;
        // The chart to be redrawn stands on the screen, as it does before whoever drags.
        await opened.Page.Locator(".version-now figure").First.ScrollIntoViewIfNeededAsync();
        await MeasureAsync(opened.Page, arguments[1], low, high, changes);
        return 0;
    }

    private static async Task MeasureAsync(IPage page, string parameter, double low, double high, int changes)
    {
        var (drawn, framed, computed) = (new List<double>(), new List<double>(), new List<double>());
        var before = (Managed: 0L, Process: 0L);
        for (var i = 0; i < changes; i++)
        {
            // The first tenth warms up: its memory is the base.
            if (i == changes / 10)
                before = Memory();
            var value = Math.Round(low + (high - low) * ((i * 37 + 11) % 101) / 100, 1).ToString(CultureInfo.InvariantCulture);
            var times = (await page.EvaluateAsync<JsonElement>(Step, new[] { parameter, value })).EnumerateArray()
                .Select(time => time.GetDouble()).ToList();
            if (i < changes / 10)
                continue;
            drawn.Add(times[0]);
            framed.Add(times[1]);
            computed.Add(times[2]);
        }

        var after = Memory();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{changes} changes of {parameter}, one after the other"));
        Tell("slider to chart drawn", drawn);
        Tell("slider to frame shown", framed);
        Tell("of that in the server", computed);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"server's memory from change {changes / 10} to {changes}: managed "
            + $"{(after.Managed - before.Managed) / 1e6:+0.0;-0.0} MB, process "
                + $"{(after.Process - before.Process) / 1e6:+0.0;-0.0} MB, in all {after.Process / 1e6:0} MB"));
    }

    internal static void Tell(string what, List<double> times)
    {
        times.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {what}: median {times[times.Count / 2]:0} ms, 95 of 100 within "
            + $"{times[times.Count * 95 / 100]:0} ms"));
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    private static (long Managed, long Process) Memory()
    {
        using var process = Process.GetCurrentProcess();
        return (GC.GetTotalMemory(forceFullCollection: true), process.WorkingSet64);
    }
}
