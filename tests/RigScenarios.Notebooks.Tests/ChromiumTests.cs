using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Notebooks.Tests.Charts;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>The page as a browser draws it, where Chromium is installed: charts are there, and no text lies over
/// another.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed partial class ChromiumTests(TrialRun trial)
{
    // Writes into the page how many charts were drawn and which texts of a chart overlap by more than two pixels both ways.
    private const string Measure = """
        <pre id="measured"></pre><script>
        window.addEventListener("load", function () { setTimeout(function () {
          var told = [];
          document.querySelectorAll(".rs-chart, .rs-sheet").forEach(function (chart) {
            var texts = Array.prototype.filter.call(chart.querySelectorAll("text"), function (t) {
              return t.textContent.trim() !== "" && t.getBoundingClientRect().width > 0;
            });
            texts.forEach(function (a, i) { texts.slice(i + 1).forEach(function (b) {
              var p = a.getBoundingClientRect(), q = b.getBoundingClientRect();
              if (Math.min(p.right, q.right) - Math.max(p.left, q.left) > 2
                && Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top) > 2)
                told.push(a.textContent + " / " + b.textContent);
            }); });
            var whole = chart.getBoundingClientRect();
            texts.forEach(function (a) {
              var p = a.getBoundingClientRect();
              if (p.left < whole.left - 2 || p.right > whole.right + 2) told.push(a.textContent + " / leaves the chart");
            });
          });
          document.getElementById("measured").textContent =
            "charts " + document.querySelectorAll(".rs-chart .main-svg .cartesianlayer").length
              + "; overlaps [" + told.join("; ") + "]";
        }, 300); });
        </script></body>
        """;

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task The_notebooks_page_is_drawn_and_no_text_lies_over_another(int width) =>
        Assert.Equal("charts 2; overlaps []", await MeasureAsync(NotebookPage.Of(trial.Run).ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Charts_that_are_hard_to_lay_out_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {ChartGallery.Count}; overlaps []", await MeasureAsync(ChartGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Charts_of_fits_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {FitGallery.Count}; overlaps []", await MeasureAsync(FitGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Charts_of_aging_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {AgingGallery.Count}; overlaps []", await MeasureAsync(AgingGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Charts_of_money_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {CostGallery.Count}; overlaps []", await MeasureAsync(CostGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Charts_of_spread_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {SpreadGallery.Count}; overlaps []", await MeasureAsync(SpreadGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Pictures_of_balance_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {BalanceGallery.Charts}; overlaps []", await MeasureAsync(BalanceGallery.Page().ToHtml(), width));

    [Theory]
    [InlineData(1200)]
    [InlineData(500)]
    public async Task Pictures_of_days_with_several_batteries_have_no_text_over_another(int width) =>
        Assert.Equal($"charts {TimelineGallery.Charts}; overlaps []", await MeasureAsync(TimelineGallery.Page().ToHtml(), width));

    [Fact]
    public async Task An_overlap_would_be_seen() => Assert.Equal(
        "charts 1; overlaps [first / second]",
        await MeasureAsync(new ChartPage { Title = "Overlap" }.With(ChartGallery.TwoTextsAtOnePlace()).ToHtml(), 1200));

    private static async Task<string> MeasureAsync(string html, int width)
    {
        var chromium = OtherProgram.Find("chromium", "chromium-browser");
        Assert.SkipWhen(chromium is null, "Chromium is not installed");
        var folder = Directory.CreateTempSubdirectory("chromium-").FullName;
        try
        {
            var file = Path.Combine(folder, "page.html");
            // The page's policy lets no script run but its own: this one is named to it.
            var measure = Measure[(Measure.IndexOf("<script>", StringComparison.Ordinal) + 8)..Measure.IndexOf("</script>",
                StringComparison.Ordinal)].ReplaceLineEndings("\n");
            html = html.Replace("script-src ", $"script-src 'sha256-{Convert.ToBase64String(
                SHA256.HashData(Encoding.UTF8.GetBytes(measure)))}' ", StringComparison.Ordinal);
            await File.WriteAllTextAsync(file, html.Replace("</body>", Measure, StringComparison.Ordinal),
                TestContext.Current.CancellationToken);
            var (_, dom, errors) = await OtherProgram.RunAsync(
                chromium,
                [
                    "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update", "--disable-sync", $"--user-data-dir={Path.Combine(folder, "profile")}",
                    $"--window-size={width},2400", "--virtual-time-budget=10000", "--dump-dom", new Uri(file).AbsoluteUri,
                ],
                folder,
                TestContext.Current.CancellationToken);
            return Measured().Match(dom) is { Success: true } found ? WebUtility.HtmlDecode(found.Value) : errors;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [GeneratedRegex("charts [0-9]+; overlaps \\[.*?\\](?=</pre>)", RegexOptions.Singleline, 10_000)]
    private static partial Regex Measured();
}
