using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;

namespace RigScenarios.Benchmarks;

/// <summary>
/// `drag FILE PART CHANGES`: opens a notebook's living page, or the form of one's own rig with a sample scenario, in Chromium,
/// takes a part of the drawing and moves
/// it step by step, each step after what followed from the one before is drawn. Tells the times that the page itself measured.
/// </summary>
internal static class DragCommand
{
    public const string Usage = "drag NOTEBOOK|SCENARIO PART CHANGES";

    private const string Listen = """
        () => {
          window.updated = new Promise(done => addEventListener('rs-updated',
            event => done([event.detail.drawn, event.detail.milliseconds, event.detail.server]), { once: true }));
        }
        """;

    public static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments.Length != 3 || !int.TryParse(arguments[2], CultureInfo.InvariantCulture, out var changes) || changes < 20)
        {
            await Console.Error.WriteLineAsync($"Usage: {Usage}, with at least 20 changes, such as: drag "
                + "data/scenarios/winter-harbour.yaml plate 200");
            return 2;
        }

        await using var opened = await OpenedPage.OpenAsync(arguments[0]);
        if (opened is null)
            return 2;
        var (drawn, framed, computed) = (new List<double>(), new List<double>(), new List<double>());
        await foreach (var times in StepsAsync(opened.Page, arguments[1], changes))
        {
            drawn.Add(times[0]);
            framed.Add(times[1]);
            computed.Add(times[2]);
        }
        Console.WriteLine(FormattableString.Invariant($"{changes} moves of {arguments[1]}, one after the other"));
        PageCommand.Tell("pointer to all drawn", drawn);
        PageCommand.Tell("pointer to frame shown", framed);
        if (computed.Exists(time => time > 0))
            PageCommand.Tell("of that in the server", computed);
        return 0;
    }

    /// <summary>Drags a part to and fro; the times from the pointer's move until all was drawn.</summary>
    public static async Task<List<double>> MovesAsync(IPage page, string part, int changes)
    {
        var drawn = new List<double>();
        await foreach (var times in StepsAsync(page, part, changes))
            drawn.Add(times[0]);
        return drawn;
    }

    private static async IAsyncEnumerable<List<double>> StepsAsync(IPage page, string name, int changes)
    {
        var part = page.Locator($".rs-can-move[data-part=\"{name}\"]:visible").First;
        await part.EvaluateAsync("part => part.scrollIntoView({ block: 'center' })");
        var box = (await part.Locator("polygon").BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 0; i < changes; i++)
        {
            await page.EvaluateAsync(Listen);
            // To and fro within a stretch that most mounts have; no step stays where it is.
            await page.Mouse.MoveAsync(x + (((i * 7) + 5) % 23) - 11, y);
            var times = (await page.EvaluateAsync<JsonElement>("() => window.updated")).EnumerateArray()
                .Select(time => time.GetDouble()).ToList();
            // The first tenth warms up.
            if (i >= changes / 10)
                yield return times;
        }
        await page.Mouse.UpAsync();
    }
}
