using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Search.Compare;

namespace RigScenarios.Tests.Search.Compare;

/// <summary>The rigs between two rigs: with no change made it is the one, with all of them the other.</summary>
public class MixedRigTests
{
    private static readonly AnswerOptions Options = AnswerOptions.EndOnly with { Today = new DateOnly(2026, 11, 30),
        FollowsUp = false };

    public static TheoryData<string, string, string, string> Pairs => new()
    {
        { "winter-harbour", "tripod", "winter-harbour", "shoulder" },
        { "winter-harbour", "shoulder", "winter-harbour", "tripod" },
        { "teaching-kit", "camera-only", "teaching-kit", "full-rig" },
        { "teaching-kit", "full-rig", "teaching-kit", "with-monitor" },
        { "market-hall", "tripod", "market-hall", "hand" },
        { "night-dolly", "thin-lead", "night-dolly", "heavy-lead" },
        { "market-hall", "tripod", "winter-harbour", "tripod" },
        { "night-dolly", "thin-lead", "market-hall", "hand" },
        { "winter-harbour", "shoulder", "teaching-kit", "full-rig" },
        { "island-crossing", "tripod", "market-hall", "shoulder" },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void No_change_is_the_base_and_all_changes_are_the_other(string file, string build, string otherFile,
        string otherBuild)
    {
        var (from, to) = (Answer(file, build), Answer(otherFile, otherBuild));
        var groups = RigChanges.Between(from, to);
        var cancellation = TestContext.Current.CancellationToken;

        Assert.InRange(groups.Count, 1, 6);
        Same(from, MixedRig.Answer(from, to, groups, 0, cancellation));
        Same(to, MixedRig.Answer(from, to, groups, (1 << groups.Count) - 1, cancellation));
    }

    [Fact]
    public void What_feeds_a_device_comes_with_it()
    {
        // The focus motor hangs on a control that only the shoulder build has: one change, and no set of changes leaves it in
        // the air.
        var (from, to) = (Answer("winter-harbour", "tripod"), Answer("winter-harbour", "shoulder"));
        var groups = RigChanges.Between(from, to);

        Assert.Contains(groups, group => group.Name == "focus motor with its focus control");
        Assert.DoesNotContain(groups, group => group.Kind == ChangeKind.Wiring);
        Each.Of(Enumerable.Range(0, 1 << groups.Count), set =>
        {
            var mix = MixedRig.Answer(from, to, groups, set, TestContext.Current.CancellationToken);
            Assert.NotNull(mix);
            Assert.Equal(mix.TheBuild.Devices.ContainsKey("focus-motor"), mix.TheBuild.Splitters.ContainsKey("focus-control"));
        }, atLeast: 8);
    }

    [Fact]
    public void The_same_rig_has_no_changes()
    {
        var answer = Answer("market-hall", "tripod");

        Assert.Empty(RigChanges.Between(answer, Answer("market-hall", "tripod")));
        Assert.NotEmpty(RigChanges.Between(answer, Answer("market-hall", "hand")));
    }

    private static RigAnswer Answer(string file, string build) => RigAnswer.Of(
        ScenarioFile.Read(Repository.Data("scenarios", $"{file}.yaml")), build, [], Options,
        cancellation: TestContext.Current.CancellationToken);

    private static void Same(RigAnswer expected, RigAnswer? found)
    {
        Assert.NotNull(found);
        Assert.Equal(expected.Simulation.Runtime.Seconds, found.Simulation.Runtime.Seconds, 1.0);
        Each.Of(ComparedFigure.For([expected]).Where(figure => figure.Kind != FigureKind.Cost), figure =>
        {
            var (one, other) = (figure.Of(expected), figure.Of(found));
            Assert.Equal(one.Number is null, other.Number is null);
            Assert.Equal(one.Number ?? 0, other.Number ?? 0, 0.02);
        }, atLeast: 9);
        Assert.Equal(expected.Questions.Select(question => question.Verdict), found.Questions.Select(question =>
            question.Verdict));
    }
}
