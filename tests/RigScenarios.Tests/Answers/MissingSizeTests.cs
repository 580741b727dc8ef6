using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>Without the size of what is heavy and reaches far there is no verdict on balance, and the answer says what is
/// missing.</summary>
public sealed class MissingSizeTests
{
    private const string Build = "tripod";

    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    [Theory]
    [InlineData(PartKind.Lens, "stick out")]
    [InlineData(PartKind.Battery, "behind its plate")]
    [InlineData(PartKind.Body, "How long, wide and high")]
    public void A_heavy_thing_without_a_size_leaves_balance_not_known(PartKind kind, string asked)
    {
        var thing = On(kind);
        var answer = RigAnswer.Of(
            Without(thing), Build, ["day-one"], cancellation: TestContext.Current.CancellationToken);
        var question = answer.Of(QuestionKind.Balance)!;
        Assert.Equal(Verdict.NotKnown, question.Verdict);
        Assert.Equal($"parts.{Harbour.Kit[thing].Part}.size", Assert.Single(question.MissingPaths));
        var line = Assert.Single(AnswerSentences.Questions(answer), one => one.Kind == QuestionKind.Balance).Words;
        Assert.Contains(asked, line, StringComparison.Ordinal);
        Assert.Contains(question.MissingPaths[0], line, StringComparison.Ordinal);
        Assert.Null(BalanceWords.Setting(answer.Balance!));
        Assert.DoesNotContain(question.Limits, limit => limit.Kind is LimitKind.Travel or LimitKind.TiltAtRest);
        Assert.Contains(answer.Balance!.Assumed, value => value.Field == question.MissingPaths[0]);
    }

    [Fact]
    public void With_all_sizes_nothing_is_missing() => Assert.Empty(ScenarioBalance.Of(Harbour, Build).SizesMissing);

    [Fact]
    public void A_small_thing_is_a_point_and_listed()
    {
        // 40 g: at most 64 mm, 0.025 N·m, less than any head's friction.
        var small = Without(On(PartKind.Monitor), Mass.FromGrams(40));
        var balance = ScenarioBalance.Of(small, Build);
        Assert.Empty(balance.SizesMissing);
        Assert.Contains(balance.Assumed, value => value.Field == $"parts.{Harbour.Kit[On(PartKind.Monitor)].Part}.size"
            && value.Value.StartsWith("a point", StringComparison.Ordinal));
    }

    [Fact]
    public void A_small_thing_that_turns_the_rig_by_more_than_is_held_is_asked_for()
    {
        var heavy = Without(On(PartKind.Monitor), Mass.FromKilograms(2));
        Assert.Equal(On(PartKind.Monitor), Assert.Single(ScenarioBalance.Of(heavy, Build).SizesMissing).Thing);
    }

    // 0.3 kg in a box of 1 litre, four times as long as wide: 0.252 m long, so 126 mm from its end to its middle.
    [Fact]
    public void The_reach_is_that_of_a_long_light_box()
    {
        var reach = Assert.Single(UnknownReach.On(
            ScenarioBalance.Of(Without(On(PartKind.Monitor), Mass.FromGrams(300)), Build).Rig));
        Assert.Equal(126, reach.AtMost.Millimeters, 0.1);
        Assert.Equal(0.3 * 9.80665 * 0.126, reach.Moment.NewtonMeters, 1e-3);
        Assert.Empty(UnknownReach.Needed([reach], Torque.FromNewtonMeters(0.4)));
        Assert.Single(UnknownReach.Needed([reach], Torque.FromNewtonMeters(0.3)));
    }

    private static string On(PartKind kind) =>
        Harbour.Builds[Build].Things.First(name => Harbour.PartOf(name)?.Kind == kind);

    private static Scenario Without(string thing, Mass? mass = null)
    {
        var id = Harbour.Kit[thing].Part;
        var part = Harbour.FindPart(id)!;
        return Harbour with { Parts = Harbour.Parts.With(id, part with { Size = null, Mass = mass ?? part.Mass }) };
    }
}
