using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A page that was saved as a file, opened as a file.</summary>
[Collection(InABrowser.Name)]
public sealed class SavedPageTests(Chromium chromium)
{
    private const string Foreign = """
        <script>document.title = "taken over"</script>
        <img src="x:" onerror="document.title = 'taken over'">
        <svg onload="document.title = 'taken over'"></svg>
        <a id="here" href="javascript:document.title = 'taken over'">here</a>
        <img src="https://elsewhere.example/picture.png">
        <form action="https://elsewhere.example/"><button id="send">send</button></form>
        <iframe src="https://elsewhere.example/"></iframe>
        </main>
        """;

    [Fact]
    public async Task Its_charts_are_drawn_and_the_browser_complains_of_nothing()
    {
        var page = await SavedAsync();
        Assert.Matches("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src 'sha256-", page);
        Assert.DoesNotContain("script-src 'unsafe-inline'", page, StringComparison.Ordinal);
        var (opened, said, asked) = await OpenAsync(page);
        var charts = await opened.Locator(".rs-chart").CountAsync();
        Assert.NotEqual(0, charts);
        await opened.WaitForFunctionAsync(
            "() => [...document.querySelectorAll('.rs-chart')].every(chart => chart.querySelector('.main-svg'))");
        // Each has its lines, and the button that keeps a picture of it works.
        Assert.NotEqual(0, await opened.Locator(".rs-chart .scatterlayer path").CountAsync());
        Assert.StartsWith("data:image/png", await opened.EvaluateAsync<string>(
            "() => Plotly.toImage(document.querySelector('.rs-chart'), { format: 'png', width: 400, height: 300 })"),
            StringComparison.Ordinal);
        await opened.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Empty(said);
        Assert.Empty(asked);
        await opened.CloseAsync();
    }

    [Fact]
    public async Task What_somebody_put_into_it_neither_runs_nor_asks_elsewhere()
    {
        var page = await SavedAsync();
        var (opened, said, asked) = await OpenAsync(page.Replace("</main>", Foreign, StringComparison.Ordinal));
        await opened.WaitForFunctionAsync(
            "() => [...document.querySelectorAll('.rs-chart')].every(chart => chart.querySelector('.main-svg'))");
        await opened.EvaluateAsync("() => document.getElementById('here').click()");
        await opened.EvaluateAsync("() => document.getElementById('send').click()");
        await opened.WaitForTimeoutAsync(300);
        Assert.NotEqual("taken over", await opened.TitleAsync());
        Assert.Empty(asked);
        Assert.StartsWith("file:", opened.Url, StringComparison.Ordinal);
        // Refused by the policy and not for some other reason.
        Each.Of(said, words => Assert.Contains("Content Security Policy", words, StringComparison.Ordinal));
        Assert.True(said.Count >= 4, string.Join('\n', said));
        await opened.CloseAsync();
    }

    private static async Task<string> SavedAsync()
    {
        await using var server = await TrialServer.StartAsync(ownNotebooks: true);
        using var answer = await server.GetAsync("/api/page/01-one-build-one-day");
        return await answer.TextAsync();
    }

    private async Task<(IPage Page, List<string> Said, List<string> Asked)> OpenAsync(string page)
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("rigscenarios-saved-").FullName, "page.html");
        await File.WriteAllTextAsync(file, page, TestContext.Current.CancellationToken);
        var opened = await chromium.Browser.NewPageAsync();
        var (said, asked) = (new List<string>(), new List<string>());
        opened.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
                said.Add(message.Text);
        };
        opened.PageError += (_, error) => said.Add(error);
        // What the policy refuses is told as a request too, but none that went out.
        opened.Response += (_, response) =>
        {
            if (!response.Url.StartsWith("file:", StringComparison.Ordinal)
                && !response.Url.StartsWith("data:", StringComparison.Ordinal)
                && !response.Url.StartsWith("blob:", StringComparison.Ordinal))
                asked.Add(response.Url);
        };
        await opened.GotoAsync(new Uri(file).AbsoluteUri);
        Directory.Delete(Path.GetDirectoryName(file)!, recursive: true);
        return (opened, said, asked);
    }
}
