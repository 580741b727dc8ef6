using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Charts.Compare;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Search.Compare;

namespace RigScenarios.Tests.Search.Compare;

/// <summary>The page of rigs side by side and its picture show the figures of the comparison, and no others.</summary>
public class SideBySidePageTests
{
    [Fact]
    public void The_picture_has_a_bar_for_each_near_limit_of_each_rig()
    {
        var side = Night();
        var figure = MarginsSideBySide.Of(side)!;
        var shares = side.Limits.Take(8).SelectMany(row => row.Limits).OfType<Limit>().Select(limit => 100 * limit.Share!.Value);

        var bars = JsonNode.Parse(figure.Specification)!["data"]![0]!;
        var ends = bars["base"]!.AsArray().Zip(bars["x"]!.AsArray(), (low, length) => (Low: low!.GetValue<double>(),
            High: low.GetValue<double>() + length!.GetValue<double>()));
        Each.Pair(shares, ends, (share, end) => Assert.Equal(share, share < 0 ? end.Low : end.High, 0.1), atLeast: 10);
        Assert.Contains("cable of the splitter: current (thin-lead)", figure.Specification, StringComparison.Ordinal);
        Assert.Contains("86 % over", figure.Specification, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_near_limit_there_is_no_picture()
    {
        var side = TwoRigs.Of(TwoRigs.Build("bare"), TwoRigs.Build("lamp", "camera: {essential: yes}, lamp: {}"));

        Assert.Empty(side.Limits);
        Assert.Null(MarginsSideBySide.Of(side));
    }

    [Fact]
    public void The_page_has_every_figure_and_every_sentence()
    {
        var side = Night();
        // A number and its unit are not torn apart there.
        var page = System.Net.WebUtility.HtmlDecode(SideBySidePage.Of(side).ToHtml());
        var html = page.Replace('\u00a0', ' ').Replace('\u202f', ' ');
        Each.Of(side.Figures.SelectMany(row => row.Values), value =>
            Assert.Contains(FigureWords.Value(value), html, StringComparison.Ordinal), atLeast: 18);
        Each.Of([.. SideBySideWords.Lines(side), .. SideBySideWords.Against(side, 1), .. SideBySideWords.Causes(side, 1),
            .. SideBySideWords.Broken(side), .. SideBySideWords.Cautions(side), SideBySideWords.Headline(side)], sentence =>
            Assert.Contains(sentence, html, StringComparison.Ordinal), atLeast: 8);
    }

    [Fact]
    public void A_table_has_a_cell_for_each_rig()
    {
        var side = Night();

        Each.Of(SideBySidePage.Figures(side).Rows, row => Assert.Equal(4, row.Count), atLeast: 14);
        Each.Of(SideBySidePage.Limits(side).Rows, row => Assert.Equal(3, row.Count), atLeast: 5);
    }

    private static SideBySide Night() => SideBySide.Of(ScenarioFile.Read(Repository.Data("scenarios", "night-dolly.yaml")), [],
        [],
        AnswerOptions.EndOnly, TestContext.Current.CancellationToken);
}
