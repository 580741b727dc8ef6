using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Pictures and numbers of every drawing and chart, from living pages and from pages that were kept as a file.</summary>
[Collection(InABrowser.Name)]
public sealed class KeptFilesTests(Chromium chromium)
{
    public static TheoryData<string> Notebooks =>
        ["00-will-it-work", "02-battery-size-and-load-mix", "03-the-cold", "04-placement-and-balance",
            "06-what-fails-first", "07-three-days-four-batteries",
            "08-which-uncertainty-matters", "09-a-batterys-life",
            "10-fit-your-own-battery", "11-the-best-rig-for-the-money", "12-find-the-causes"];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task Numbers_of_a_chart_read_back_are_the_charts_own(string notebook)
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(notebook);
        await visit.Page.Locator(".is-renewed").First.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        var charts = await visit.Page.EvaluateAsync<JsonElement>("""
            () => [...document.querySelectorAll(".version-now")].flatMap(version => [...version.querySelectorAll("*")])
              .map(element => element.rsPart).filter(part => part?.type === "figure")
              .map(part => ({ slug: part.slug, specification: part.specification,
                csv: window.rigKeep.csvOfChart(part.specification) }))
            """);
        Each.Of(charts.EnumerateArray(), chart =>
        {
            var rows = Read(chart.GetProperty("csv").GetString()!);
            var specification = chart.GetProperty("specification");
            if (specification.GetProperty("points").TryGetProperty("rows", out var told))
            {
                // What is drawn is not what it stands for: the chart tells its rows itself.
                Assert.Equal(told.EnumerateArray().Select(row => row.EnumerateArray().Select(Text).ToList()),
                    rows.Select(row => row.Select(cell => cell.Text).ToList()));
                Assert.Contains(rows[0], title => title.Text.EndsWith(')'));
                return;
            }
            var series = specification.GetProperty("points").GetProperty("series");
            var shown = specification.GetProperty("data").EnumerateArray().Where((_, i) =>
                i < series.GetArrayLength() && series[i].ValueKind != JsonValueKind.Null).ToList();
            var points = shown.Sum(Points);
            var slug = chart.GetProperty("slug").GetString();
            Assert.Equal((slug, points), (slug, rows.Count - 1));
            // One row a point, as wide as the head; beside names only plain numbers, all of them the chart's.
            var own = shown.SelectMany(Numbers).ToHashSet();
            Each.Of(rows.Skip(1), row =>
            {
                Assert.Equal(rows[0].Count, row.Count);
                foreach (var cell in row.Where(cell => !cell.IsText && cell.Text.Length > 0))
                    Assert.Contains(double.Parse(cell.Text, NumberStyles.Float, CultureInfo.InvariantCulture), own);
            });
            Each.Of(rows[0], title => Assert.True(title.IsText));
            Assert.Contains(rows[0], title => title.Text.EndsWith(')'));
        });
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_drawing_is_kept_as_a_picture_that_stands_alone_by_night_too()
    {
        await using var visit = await Visit.BeginAsync(chromium, night: true);
        await visit.ReadAsync("04-placement-and-balance");
        var tools = visit.Page.Locator(".version-now .rs-drawing").First.Locator(".tools");
        await tools.WaitForAsync();
        var svg = await TextAsync(visit.Page, tools, "SVG");
        Assert.StartsWith("<svg xmlns=\"http://www.w3.org/2000/svg\"", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("var(", svg, StringComparison.Ordinal);
        Assert.Contains("fill=\"#9db8ca\"", svg, StringComparison.Ordinal);
        // A browser draws it alone: on white, with its words.
        var alone = await chromium.Browser.NewPageAsync();
        await alone.SetContentAsync($"<body style=\"background:#888\">{svg}</body>");
        Assert.Equal("rgb(255, 255, 255)", await alone.Locator("svg > rect").First
            .EvaluateAsync<string>("paper => getComputedStyle(paper).fill"));
        Assert.NotEqual(0, await alone.Locator("svg text").CountAsync());
        Assert.Equal("hidden", await alone.Locator("svg .rs-rail").First
            .EvaluateAsync<string>("rail => getComputedStyle(rail).visibility"));
        await alone.CloseAsync();
        await AssertPictureAsync(visit.Page, tools);
        Assert.Contains(",", await TextAsync(visit.Page, tools, "CSV"), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Each_drawing_and_chart_of_the_form_has_its_files()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.GoAsync("/rig?file=samples/island-crossing.yaml");
        await visit.Page.Locator("#answer-parts .rs-drawing .tools").First.WaitForAsync();
        var pictures = visit.Page.Locator("#answer-parts .rs-figure");
        Assert.True(await pictures.CountAsync() >= 4);
        Assert.Equal(await pictures.CountAsync(), await visit.Page.Locator("#answer-parts .rs-figure > .tools").CountAsync());
        for (var i = 0; i < await pictures.CountAsync(); i++)
            await AssertPictureAsync(visit.Page, pictures.Nth(i).Locator(".tools"));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_kept_page_gives_pictures_and_numbers_without_a_program()
    {
        await using var server = await TrialServer.StartAsync(ownNotebooks: true);
        using var answer = await server.GetAsync("/api/page/04-placement-and-balance");
        var file = Path.Combine(Directory.CreateTempSubdirectory("rigscenarios-kept-").FullName, "page.html");
        await File.WriteAllTextAsync(file, await answer.TextAsync(), TestContext.Current.CancellationToken);
        var page = await chromium.Browser.NewPageAsync();
        var complaints = new List<string>();
        page.PageError += (_, error) => complaints.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                complaints.Add(message.Text);
        };
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        var pictures = page.Locator(".rs-figure");
        Assert.Equal(await pictures.CountAsync(), await page.Locator(".rs-figure > .rs-keep").CountAsync());
        foreach (var kind in (string[])[".rs-drawing", ":not(.rs-drawing)"])
        {
            var tools = page.Locator($".rs-figure{kind}").First.Locator(".rs-keep");
            await AssertPictureAsync(page, tools);
            Assert.Contains("<svg", await TextAsync(page, tools, "SVG"), StringComparison.Ordinal);
            Assert.True(Read((await TextAsync(page, tools, "CSV")).TrimStart('\ufeff')).Count > 3);
        }
        Assert.Empty(complaints);
        await page.CloseAsync();
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
    }

    private static string Text(JsonElement cell) => cell.ValueKind == JsonValueKind.String ? cell.GetString()! : cell.ToString();

    private static async Task AssertPictureAsync(IPage page, ILocator tools)
    {
        var download = await page.RunAndWaitForDownloadAsync(() =>
            tools.GetByRole(AriaRole.Button, new() { Name = "PNG" }).ClickAsync());
        var bytes = await File.ReadAllBytesAsync(await download.PathAsync());
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], bytes[..4]);
        // Width and height stand in the first piece of a PNG (ISO/IEC 15948:2004, 11.2.2 [from memory]).
        Assert.True(((bytes[16] << 24) | (bytes[17] << 16) | (bytes[18] << 8) | bytes[19]) >= 1000);
        Assert.True(bytes.Length > 5000);
    }

    private static async Task<string> TextAsync(IPage page, ILocator tools, string format)
    {
        var download = await page.RunAndWaitForDownloadAsync(() =>
            tools.GetByRole(AriaRole.Button, new() { Name = format }).ClickAsync());
        return await File.ReadAllTextAsync(await download.PathAsync());
    }

    private static int Points(JsonElement trace) => trace.GetProperty("type").GetString() is "heatmap" or "contour"
        ? trace.GetProperty("x").GetArrayLength() * trace.GetProperty("y").GetArrayLength()
        : trace.GetProperty("x").EnumerateArray().Count(x => x.ValueKind == JsonValueKind.Number);

    private static IEnumerable<double> Numbers(JsonElement trace)
    {
        foreach (var name in (string[])["x", "y", "base"])
        {
            if (trace.TryGetProperty(name, out var values))
                foreach (var value in values.EnumerateArray().Where(value => value.ValueKind == JsonValueKind.Number))
                    yield return value.GetDouble();
        }
        if (trace.TryGetProperty("base", out var begins))
            foreach (var (begin, length) in begins.EnumerateArray().Zip(trace.GetProperty("x").EnumerateArray()))
                yield return double.Parse((begin.GetDouble() + length.GetDouble()).ToString("G12", CultureInfo.InvariantCulture),
                    CultureInfo.InvariantCulture);
        if (trace.TryGetProperty("z", out var map))
            foreach (var value in map.EnumerateArray().SelectMany(row => row.EnumerateArray())
                .Where(value => value.ValueKind == JsonValueKind.Number))
                yield return value.GetDouble();
    }

    /// <summary>A reader of RFC 4180, apart from the writer.</summary>
    private static List<List<(string Text, bool IsText)>> Read(string csv)
    {
        List<List<(string, bool)>> rows = [];
        List<(string, bool)> row = [];
        for (var i = 0; i < csv.Length;)
        {
            var text = new System.Text.StringBuilder();
            var isText = csv[i] == '"';
            if (isText)
            {
                for (i++; csv[i] != '"' || (i + 1 < csv.Length && csv[i + 1] == '"'); i++)
                    text.Append(csv[i] == '"' ? csv[++i] == '"' ? '"' : '?' : csv[i]);
                i++;
            }
            else
                for (; csv[i] is not (',' or '\r'); i++)
                    text.Append(csv[i]);
            row.Add((text.ToString(), isText));
            if (csv[i] == ',')
            {
                i++;
                // A line that ends with a comma ends with an empty field.
                if (csv[i] == '\r')
                    row.Add(("", false));
            }
            if (csv[i] == '\r')
            {
                Assert.Equal('\n', csv[i + 1]);
                rows.Add(row);
                row = [];
                i += 2;
            }
        }
        return rows;
    }
}
