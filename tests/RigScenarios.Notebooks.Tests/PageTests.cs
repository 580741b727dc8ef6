using System.Text.RegularExpressions;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Notebooks.Tests.Places;
using Snapshooter.Xunit3;

namespace RigScenarios.Notebooks.Tests;

[Collection(OneNotebookAtATime.Name)]
public sealed partial class PageTests(TrialRun trial)
{
    private readonly string page = NotebookPage.Of(trial.Run).ToHtml();

    [Fact]
    public void The_drawing_script_is_there_once() =>
        Assert.Single(Regex.Matches(page, "plotly\\.js \\(cartesian - minified\\) v2", RegexOptions.None,
            TimeSpan.FromSeconds(10)));

    [Fact]
    public void Nothing_is_fetched_when_it_opens()
    {
        var own = page.Replace(ChartScript.Html, "", StringComparison.Ordinal);
        Assert.True(own.Length < page.Length);
        Assert.DoesNotMatch(Fetched(), own);
    }

    [Fact]
    public void Raw_html_in_prose_stays_text()
    {
        Assert.Contains("&lt;script&gt;document.title=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>document.title=", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Pages_refer_to_pages() => Assert.Contains("href=\"second.html#part\"", page, StringComparison.Ordinal);

    [Theory]
    [InlineData("[x](javascript:go())", "href=\"#\"")]
    [InlineData("![plan](https://example.org/plan.png)", "<a href=\"https://example.org/plan.png\">plan</a>")]
    [InlineData("[web](https://example.org)", "href=\"https://example.org\"")]
    public void Links_do_nothing_unasked(string markdown, string expected) =>
        Assert.Contains(expected, MarkdownProse.ToHtml(markdown, ".", name => name + ".html"), StringComparison.Ordinal);

    [Fact]
    public void The_page_reads_as_it_did() => Snapshot.Match(FigureData().Replace(
        page[page.IndexOf("<main>", StringComparison.Ordinal)..page.IndexOf("</body>", StringComparison.Ordinal)], "${call}…"));

    [Fact]
    public async Task A_failed_run_says_on_its_page_why_it_stopped()
    {
        var run = await NotebookRunner.RunAsync(
            NotebookFile.Load(Checkout.TestNotebook("runtime-error.ipynb")), cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("cell 3, line 4: The divisor is zero; give another.", NotebookPage.Of(run).ToHtml(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_written_whole_and_leaves_nothing_else_behind()
    {
        var folder = Directory.CreateTempSubdirectory("pages-").FullName;
        try
        {
            var path = Path.Combine(folder, "new", "trial.html");
            await NotebookPage.Of(trial.Run).WriteAsync(path, TestContext.Current.CancellationToken);
            Assert.Equal([path], Directory.EnumerateFiles(Path.GetDirectoryName(path)!));
            Assert.Equal(page, await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [GeneratedRegex(
        "<(script|img|iframe|source|video|audio|embed|link|object)[^>]*(src|href|data)=[\"']?(https?:)?//"
            + "|@import|url\\((\"|')?(https?:)?//", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Fetched();

    [GeneratedRegex("(?<call>rigFigure\\(\"[a-z-]+\", ).*", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex FigureData();
}
