using Microsoft.Playwright;

namespace RigScenarios.Benchmarks;

/// <summary>
/// `pictures [FOLDER]`: opens the living page of each notebook in Chromium and saves the picture that stands for it, by the
/// page's
/// own button: notebooks/pictures, and docs/pictures/day.png. With a folder, the first screens of all notebooks go there, wide
/// and
/// on a phone, to be looked at.
/// </summary>
internal static class PicturesCommand
{
    public const string Usage = "pictures [FOLDER]";

    /// <summary>The notebook, and the short name of the chart or drawing that stands for it.</summary>
    private static readonly (string Notebook, string Slug)[] Pictures =
    [
        ("00-will-it-work", "batteries-over-the-days"), ("01-one-build-one-day", "day"),
        ("02-battery-size-and-load-mix", "runtime-over-capacity"), ("03-the-cold", "cold-loads"),
        ("04-placement-and-balance", "rig-tripod"), ("05-one-kit-three-stances", "tipping-tripod"),
        ("06-what-fails-first", "wiring-thin-lead"), ("07-three-days-four-batteries", "batteries-over-the-days"),
        ("08-which-uncertainty-matters", "one-at-a-time"), ("09-a-batterys-life", "years-ahead"),
        ("10-fit-your-own-battery", "fitted-day"), ("11-the-best-rig-for-the-money", "rig-front"),
        ("12-find-the-causes", "rig-tripod"),
    ];

    private const string DayOfReadme = "01-one-build-one-day";

    private const string Shown = """
        slug => [...document.querySelectorAll('*')].find(part => part.rsPart?.slug === slug && part.rsHasTools)
        """;

    public static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments.Length > 1 || !Directory.Exists(Path.Combine("notebooks", "pictures")))
        {
            await Console.Error.WriteLineAsync($"Usage: {Usage}, from the folder of the solution.");
            return 2;
        }
        // A server works in the notebooks' folder.
        var root = Environment.CurrentDirectory;
        foreach (var (notebook, slug) in Pictures)
        {
            await using var opened = await OpenedPage.OpenAsync(Path.Combine(root, "notebooks", $"{notebook}.ipynb"));
            if (opened is null)
                return 2;
            if (arguments is [var folder])
                await FirstScreensAsync(opened.Page, Path.Combine(root, folder, notebook));
            await SaveAsync(opened.Page, slug, "SVG", Path.Combine(root, "notebooks", "pictures", $"{notebook}.svg"));
            if (notebook == DayOfReadme)
                await SaveAsync(opened.Page, slug, "PNG", Path.Combine(root, "docs", "pictures", "day.png"));
        }
        return 0;
    }

    private static async Task FirstScreensAsync(IPage page, string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        foreach (var (name, width, height) in new[] { ("wide", 1280, 800), ("phone", 390, 844) })
        {
            await page.SetViewportSizeAsync(width, height);
            await page.WaitForTimeoutAsync(1000);
            await page.ScreenshotAsync(new() { Path = $"{path}-{name}.png" });
        }
        await page.SetViewportSizeAsync(1280, 800);
    }

    private static async Task SaveAsync(IPage page, string slug, string button, string path)
    {
        IElementHandle? part = null;
        try
        {
            await page.WaitForFunctionAsync(Shown, slug);
            part = (await page.EvaluateHandleAsync(Shown, slug)).AsElement();
        }
        catch (TimeoutException late)
        {
            var there = await page.EvaluateAsync<string[]>(
                "() => [...document.querySelectorAll('*')].map(part => part.rsPart?.slug).filter(Boolean)");
            throw new IOException($"{path}: the page has no \"{slug}\", but {string.Join(", ", there)}.", late);
        }
        var saved = await part!.QuerySelectorAsync($".tools button:text-is('{button}')");
        var download = await page.RunAndWaitForDownloadAsync(() => saved!.ClickAsync());
        await download.SaveAsAsync(path);
        Console.WriteLine($"{Path.GetFileName(path)}, {new FileInfo(path).Length / 1000} kB");
    }
}
