using RigScenarios.Answers;
using RigScenarios.Answers.Fitted;
using RigScenarios.Charts.Fits;
using RigScenarios.Files;
using RigScenarios.Notebooks.Tests.Domain;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>A day on the battery of the label and on the fitted one.</summary>
public sealed class FittedDayChartTests
{
    // 150 Wh at 14.4 V (data/parts/batteries.yaml).
    private const double LabelAmpereHours = 150 / 14.4;

    [Fact]
    public void Both_batteries_begin_with_what_they_hold_and_the_band_lies_around_the_fitted_one()
    {
        var scenario = ScenarioPath.SetAll(
            ScenarioFile.Read(Path.Combine(DemoData.Root, "data/scenarios/market-hall.yaml")),
        [
            ("builds.tripod.battery.capacity-left", "90 %"), ("builds.tripod.battery.load-scale", "1.05"),
            ("builds.tripod.battery.runtime-known-to", "5 %"),
        ]);
        var answer = RigAnswer.Of(scenario, "tripod", ["morning"], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        var band = DayBand.Of(answer, TestContext.Current.CancellationToken);
        Assert.True(band.Least.Simulation.Runtime < band.Fitted.Simulation.Runtime
            && band.Fitted.Simulation.Runtime < band.Most.Simulation.Runtime);
        Assert.True(band.Fitted.Simulation.Runtime < band.AsLabelled.Simulation.Runtime);
        // Nothing of the fit stays with the battery of the label.
        Assert.Null(band.AsLabelled.TheBuild.Battery.RuntimeKnownTo);
        Assert.Null(band.AsLabelled.TheBuild.Battery.LoadScale);

        var figure = FittedDayChart.Of(band);
        Assert.Equal("fitted-day", figure.Slug);
        Assert.Contains("charge left (Ah)", FigureParts.Words(figure), StringComparison.Ordinal);
        var lines = FigureParts.Lines(figure).ToDictionary(line => line["name"]!.GetValue<string>(),
            line => line["y"]!.AsArray()[0]!.GetValue<double>(), StringComparer.Ordinal);
        Assert.Equal(0.9 * LabelAmpereHours, lines["as your notes say"], 0.01);
        Assert.Equal(LabelAmpereHours, lines["new, as the label has it"], 0.01);
    }
}
