using System.Text.Json;
using Plotly.NET;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Style;
using Figure = RigScenarios.Charts.Figure;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The charting script that every page carries: a part of plotly.js, and what that part draws.</summary>
[Collection(InABrowser.Name)]
public sealed class ChartScriptTests(Chromium chromium)
{
    [Fact]
    public async Task It_draws_the_kinds_of_traces_that_are_said()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync("01-one-build-one-day");
        var kinds = await visit.Page.EvaluateAsync<string[]>("() => Object.keys(Plotly.PlotSchema.get().traces)");
        Assert.Equal(DrawnTraces.Kinds.Order(StringComparer.Ordinal), kinds.Order(StringComparer.Ordinal));
        visit.AssertQuiet();
    }

    [Fact]
    public void It_stands_under_its_licence_and_is_no_more_than_half_of_the_whole()
    {
        Assert.StartsWith("/*\nThe MIT License (MIT)", ChartScript.Plotly, StringComparison.Ordinal);
        Assert.Contains("plotly.js (cartesian", ChartScript.Plotly, StringComparison.Ordinal);
        Assert.InRange(ChartScript.Plotly.Length, 1_000_000, 1_500_000);
    }

    [Theory]
    [InlineData("scatter", true)]
    [InlineData("violin", true)]
    [InlineData("scatterpolar", false)]
    [InlineData("surface", false)]
    public void A_chart_that_it_does_not_draw_is_refused(string kind, bool isDrawn)
    {
        Figure Make() => Figure.FromChart("own", "Own", "Own.", GenericChart.ofTraceObject(false, new Trace(kind)),
            ChartTable.Of("x").With(1));
        if (!isDrawn)
        {
            Assert.Contains($"does not draw \"{kind}\". It draws bar, box,", Assert.Throws<ArgumentException>(Make).Message,
                StringComparison.Ordinal);
            return;
        }
        using var specification = JsonDocument.Parse(Make().Specification);
        Assert.Equal(kind, specification.RootElement.GetProperty("data")[0].GetProperty("type").GetString());
    }
}
