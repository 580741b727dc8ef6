using RigScenarios.Answers;
using RigScenarios.Cells;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

public class UsualUncertaintyTests
{
    private static readonly DateOnly Today = new(2026, 11, 30);

    [Fact]
    public void Every_end_of_what_is_usual_is_accepted_by_every_rig_of_the_project()
    {
        var rigs = Directory.EnumerateFiles(Repository.Data("scenarios"), "*.yaml").Order()
            .Select(ScenarioFile.Read).SelectMany(scenario => scenario.Builds.Keys.Select(build => (scenario, build)));
        Each.Of(rigs, rig =>
        {
            var usual = Of(rig.scenario, rig.build);
            PlanCheck.Run(new() { Uncertain = usual.Fields, Correlations = usual.Correlations },
                rig.scenario.AskedOn(Today), TestContext.Current.CancellationToken);
            Assert.Equal(usual.Figures.Count, usual.Figures.DistinctBy(figure => figure.Field.Path).Count());
            // The median is the figure as it stands, where the scenario has one and its spread is even to both sides.
            Each.Of(usual.Figures.Where(figure => figure.Field.Spread is NormalSpread), figure =>
                Assert.Equal(((NormalSpread)figure.Field.Spread).Middle, figure.Field.Spread.NumberAt(0.5),
                    Math.Abs(((NormalSpread)figure.Field.Spread).Middle) * 0.01), 3);
        }, 10);
    }

    [Fact]
    public void A_label_is_never_varied_for_the_rules_of_transport_go_by_it()
    {
        var usual = Of(ScenarioFile.Read(Repository.Data("scenarios", "island-crossing.yaml")), "tripod");

        Each.HasNot(usual.Figures, figure => figure.Field.Path.EndsWith("battery.energy", StringComparison.Ordinal), 10);
        Assert.Contains(usual.Figures, figure => figure.Field.Path == "parts.brick-98wh.battery.capacity");
    }

    [Fact]
    public void Each_figure_has_its_reason_and_its_source_or_says_that_it_has_none()
    {
        var usual = Of(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")), "tripod");

        Each.Of(usual.Figures, figure =>
        {
            Assert.NotEmpty(figure.Why);
            Assert.NotEmpty(figure.Act);
            Assert.True(figure.Source!.Standing is Standing.CommonPractice or Standing.FromMemory
                || figure.Source.Title.Length + figure.Source.Authors.Length > 0);
        }, 30);
        var air = usual.Figures.Single(figure => figure.Field.Path == "days.day-one.ambient");
        Assert.Equal("-8 °C +- 1.34 °C", air.Field.Spread.Words);
        Assert.Equal("Met Office", air.Source!.Authors);
    }

    [Fact]
    public void What_a_fit_has_told_is_not_doubted_again()
    {
        var scenario = ScenarioPath.SetAll(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")),
            [("builds.tripod.battery.runtime-known-to", "6 %"), ("builds.tripod.battery.load-scale", "1.1")]);

        var usual = Of(scenario, "tripod");

        Each.HasNot(usual.Figures, figure => figure.Field.Path.Contains(".power.", StringComparison.Ordinal)
            || figure.Field.Path.EndsWith("capacity-left", StringComparison.Ordinal)
            || figure.Field.Path.EndsWith("battery.capacity", StringComparison.Ordinal), 10);
        var spread = (NormalSpread)usual.Figures
            .Single(figure => figure.Field.Path == "builds.tripod.battery.load-scale").Field.Spread;
        Assert.Equal(1.1, spread.Middle);
        // In quadrature with the 5 % that are claimed for the model, which are 95 of 100: √(6² + (5/1.96)²) % of 1.1.
        Assert.Equal(1.1 * Math.Sqrt((0.06 * 0.06) + (0.05 * 0.05 / 3.8415)), spread.Deviation, 1e-3);
    }

    [Fact]
    public void A_spread_that_is_given_goes_before_the_usual_one_and_keeps_its_name()
    {
        var usual = Of(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")), "tripod");
        var given = new UncertainField("days.day-one.ambient", Spread.Uniform(-1, 1));

        var changed = usual.With([given], []);

        var air = changed.Figures.Single(figure => figure.Field.Path == given.Path);
        Assert.Equal((given, true), (air.Field, air.IsGiven));
        Assert.Equal(usual.Figures.Single(figure => figure.Field.Path == given.Path).Name, air.Name);
        Assert.Equal(usual.Figures.Count, changed.Figures.Count);
    }

    private static UsualUncertainty Of(Scenario scenario, string build) => UsualUncertainty.Of(RigAnswer.Of(scenario, build, [],
        AnswerOptions.EndOnly with { Today = Today, FollowsUp = false }, null, TestContext.Current.CancellationToken));
}
