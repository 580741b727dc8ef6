using System.Diagnostics;
using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>
/// Where an element of a page is, once it stays there. A drawing is put anew whenever an answer comes: between two drawings its
/// parts are nowhere, and a box read at once may be that of the drawing before.
/// </summary>
internal static class StandingStill
{
    /// <summary>Waits until the element is seen at the same place in two frames of the page, and gives that place.</summary>
    /// <exception cref="TimeoutException">It was not within the patience of <see cref="MachineBrowser"/>.</exception>
    public static async Task<LocatorBoundingBoxResult> BoxAsync(ILocator element)
    {
        var watch = Stopwatch.StartNew();
        LocatorBoundingBoxResult? before = null;
        while (watch.ElapsedMilliseconds < MachineBrowser.Patience)
        {
            var now = await element.BoundingBoxAsync();
            if (now is not null && before is not null && IsSame(now, before))
                return now;
            before = now;
            await element.Page.EvaluateAsync(
                "() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))");
        }
        throw new TimeoutException($"{element} does not stand still.");
    }

    private static bool IsSame(LocatorBoundingBoxResult now, LocatorBoundingBoxResult before) =>
        (now.X, now.Y, now.Width, now.Height) == (before.X, before.Y, before.Width, before.Height);
}
