using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers;

/// <summary>What an answer rests on is found by trying, and told with the field and what it would be otherwise.</summary>
public sealed class RestsOnTests
{
    // Invented: a camera of 24 W with an assumed least voltage on a label battery, for a day without a clock.
    private static readonly Scenario Rig = SmallScenario.Read(SmallScenario.Text(
        devices: "{own: {essential: yes}}", blocks: "{all: {length: 2 h, others: record}}",
        battery: ", capacity-left: 80 %",
        parts: """
              label: {kind: battery, name: Label, mass: 700 g, battery: {energy: 98 Wh, voltage: 14.4 V}}
              own: {kind: body, name: Own camera, power: {off: 0 W, standby: 10 W, record: 24 W},
                voltage: {minimum: 13 V, maximum: 17 V}, assumed: [voltage.minimum]}
            """)
        .Replace("flat: {part: flat}", "flat: {part: label}", StringComparison.Ordinal)
        .Replace("camera: {part: camera}", "own: {part: own}", StringComparison.Ordinal));

    [Fact]
    public void A_least_voltage_is_told_with_what_another_one_would_give()
    {
        var now = Asked(Rig);
        var rest = Assert.Single(
            LeadingAssumptions.RestsOn(Found(now)), one => one.Path == "parts.own.voltage.minimum");
        // 13 V by a twelfth either way; the one that moves more is told.
        var (tried, then) = new[] { "11.92 V", "14.08 V" }
            .Select(volts => (volts, Asked(ScenarioPath.Set(Rig, rest.Path, volts))))
                .MaxBy(one => Moved(one.Item2));
        Assert.Equal(now.Of(QuestionKind.Power)!.Verdict, then.Of(QuestionKind.Power)!.Verdict);
        Assert.Equal(
            $"Own camera, least voltage, assumed 13 V; if it is {tried}: {Length(then)} instead of {Length(now)}.", rest.Text);

        double Moved(RigAnswer answer) => Math.Abs((answer.Reserve.Time - now.Reserve.Time).Seconds);
    }

    [Fact]
    public void A_growth_by_the_rule_is_tried_at_both_ends_of_what_is_usual()
    {
        var effect = Assert.Single(Found(Asked(Rig)),
            one => one.Path == "builds.one.battery.resistance-growth");
        Assert.Equal(("1.34", "1", "2"), (effect.Value.Value, effect.Low, effect.High));
    }

    [Fact]
    public void What_a_growth_says_is_no_longer_assumed_once_it_is_given() =>
        Assert.DoesNotContain(
            Found(
                Asked(ScenarioPath.Set(Rig, "builds.one.battery.resistance-growth", "1.2"))),
            one => one.Path == "builds.one.battery.resistance-growth");

    [Theory]
    [InlineData("winter-harbour", "tripod", "day-one")]
    [InlineData("night-dolly", "on-the-dolly", "night")]
    public void At_most_three_are_told_each_with_a_field_of_the_file(string demo, string build, string day)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", demo + ".yaml"));
        build = scenario.Builds.ContainsKey(build) ? build : scenario.Builds.Keys.First();
        day = scenario.Days.ContainsKey(day) ? day : scenario.Days.Keys.First();
        var effects = Found(RigAnswer.Of(scenario, build, [day], cancellation: Stop));
        var rests = LeadingAssumptions.RestsOn(effects);
        Assert.Equal(Math.Min(3, effects.Count), rests.Count);
        Each.Of(effects, effect => Assert.NotNull(ScenarioPath.Set(scenario, effect.Path, effect.Tried)));
        Each.Of(effects, effect => Assert.True(effect.ChangesVerdict || effect.Moves.Minutes >= 1));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static RigAnswer Asked(Scenario scenario) => RigAnswer.Of(scenario, "one", [], cancellation: Stop);

    private static IReadOnlyList<AssumptionEffect> Found(RigAnswer answer) =>
        LeadingAssumptions.Find(answer, cancellation: Stop);

    private static string Length(RigAnswer answer) => AnswerTimes.Length(answer.Simulation.Runtime);
}
