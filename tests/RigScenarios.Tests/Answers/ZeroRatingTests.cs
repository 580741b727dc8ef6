using System.Text.RegularExpressions;
using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using UnitsNet;
using static RigScenarios.Tests.Answers.ByHandRig;

namespace RigScenarios.Tests.Answers;

/// <summary>Zero, nothing and unknown are three things: a rating of 0 is a rating, and whatever is beyond it fails.</summary>
public partial class ZeroRatingTests(ITestOutputHelper output)
{
    /// <summary>A field of the rig by hand with its value, and the limit that it sets. In the rig the centre of gravity is off
    /// the middle of the camera plate as it is set, so that each of them is passed.</summary>
    public static TheoryData<string, string, LimitKind> Ratings => new()
    {
        { "tilt-lock: 8 N·m", "tilt-lock: 0 N·m", LimitKind.TiltLock },
        { "slide: 60 mm", "slide: 0 mm", LimitKind.Travel },
        { "friction: 0.4 N·m, drag: 2 N·m", "friction: 0 N·m, drag: 0 N·m", LimitKind.Creep },
        { "friction: 0.4 N·m, drag: 2 N·m", "friction: 0 N·m, drag: 2 N·m", LimitKind.TiltAtRest },
    };

    [Theory]
    [MemberData(nameof(Ratings))]
    public void A_rating_of_0_fails_as_one_of_next_to_nothing_does(string field, string zero, LimitKind kind)
    {
        var none = Of(zero);
        var little = Of(zero.Replace(": 0 N·m", ": 0.001 N·m", StringComparison.Ordinal)
            .Replace(": 0 mm", ": 0.001 mm", StringComparison.Ordinal));
        Assert.True(little.IsPassed);
        Assert.True(none.IsPassed);
        Assert.Equal(0.0, (double)none.Allowed!.Value);
        Assert.Equal(double.NegativeInfinity, none.Share);
        Assert.DoesNotContain("no rating", LimitSentences.Of(none, null), StringComparison.Ordinal);
        HasNoInfinity(LimitSentences.Of(none, null));
        HasNoInfinity(AnswerShape.Limit(none).ToJsonString());

        Limit Of(string instead)
        {
            // Set off its best place by 40 mm, and the counterbalance with it.
            var text = Text(more: "").Replace(field, instead, StringComparison.Ordinal)
                .Replace("on-head: {base-depth: 0 mm}", "on-head: {base-depth: 0 mm, slide-middle: 90 mm, plate-at: 60 mm}",
                    StringComparison.Ordinal);
            return ScenarioBalance.Of(Read(text), "one").BalanceLimits.First(limit => limit.Kind == kind);
        }
    }

    [Fact]
    public void A_lock_of_an_arm_that_holds_nothing_fails_and_stands_first()
    {
        var harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var balance = ScenarioBalance.Of(ScenarioPath.Set(harbour, "parts.arm-short.arm.lock-torque", "0 N·m"), "tripod");
        var limit = balance.StandLimits[0];
        Assert.Equal(("monitor-arm", LimitKind.Moment), (limit.Element, limit.Kind));
        Assert.Equal("monitor arm: 0.66 N·m to hold of 0.0 N·m rated, 0.66 N·m over, lock under monitor arm",
            LimitSentences.Of(limit, null));
        Assert.Equal(Verdict.Fails, balance.StandVerdict);
        // The joints' own order and figures say the same: it is the weakest, and there is no part of nothing.
        Assert.Equal("monitor-arm", balance.Joints[0].RatedBy);
        Assert.Null(balance.Joints[0].MarginShare);
        Assert.True(balance.Joints[0].Margins.Moment < Torque.Zero);
    }

    [Fact]
    public void A_drag_of_0_a_drag_that_nobody_knows_and_one_that_is_given_are_three_things()
    {
        Limit Creep(string drag) =>
            ScenarioBalance.Of(Read(Text().Replace(", drag: 2 N·m", drag, StringComparison.Ordinal)), "one")
            .BalanceLimits.First(limit => limit.Kind == LimitKind.Creep);
        // 0.4 N·m of friction and 2 °/s of 10 °/s of the drag.
        Assert.Equal(0.8, Creep(", drag: 2 N·m").Allowed!.As(UnitsNet.Units.TorqueUnit.NewtonMeter), 12);
        Assert.Equal(0.4, Creep(", drag: 0 N·m").Allowed!.As(UnitsNet.Units.TorqueUnit.NewtonMeter), 12);
        Assert.Equal((LimitForce.Rating, "parts file; up to 2 °/s, our choice"),
            (Creep(", drag: 0 N·m").Basis.Force, Creep(", drag: 0 N·m").Basis.Source));
        Assert.Equal((LimitForce.Default, "parts file; drag not known, none counted"),
            (Creep("").Basis.Force, Creep("").Basis.Source));
    }

    [Fact]
    public void A_drag_next_to_nothing_ends_in_no_infinite_speed()
    {
        var head = new FluidHead
        {
            CameraPlateTravel = new(Length.FromMillimeters(-1), Length.FromMillimeters(1)), AxisDepth = Length.Zero,
            Counterbalance = Counterbalance.OfRange(Torque.Zero, Torque.FromNewtonMeters(1)), Friction = Torque.Zero,
            Drag = Torque.FromNewtonMeters(1e-320), TiltUp = Angle.FromDegrees(-30), TiltDown = Angle.FromDegrees(30),
        };
        var rig = ScenarioBalance.Of(Read(Text()), "one").Mass;
        Assert.Null(HeadBalance.Of(head, rig).CreepSpeed);
        Assert.Equal(LetGo.Falls, HeadBalance.Of(head, rig).WhenLetGo);
    }

    [Fact]
    public void Where_nothing_stands_against_a_rating_of_0_nothing_is_left()
    {
        var limit = new Limit("head", LimitKind.TiltLock, Torque.Zero, Torque.Zero, LimitBasis.PartsFile);
        Assert.False(limit.IsPassed);
        Assert.Equal(0, limit.Share);
        Assert.True(StatedErrors.IsClose(limit));
        Assert.False(AnswerDetails.HoldsWithEase(limit));
        Assert.Equal("0 % left", LimitSentences.Left(limit));
        // A gust that nobody expects leaves all there is.
        var calm = new Limit("tripod", LimitKind.Gust, Speed.FromMetersPerSecond(9), Speed.Zero, LimitBasis.PartsFile);
        Assert.Equal(double.PositiveInfinity, calm.Share);
        Assert.Equal("9.0 m/s left", LimitSentences.Left(calm));
    }

    [Fact]
    public void Of_two_ratings_of_0_the_one_with_more_against_it_comes_first()
    {
        Limit Lock(double moment) =>
            new("head", LimitKind.TiltLock, Torque.FromNewtonMeters(moment), Torque.Zero, LimitBasis.PartsFile);
        Assert.Equal([3.0, 2, 1], Limit.LeastLeftFirst([Lock(1), Lock(3), Lock(2)]).Select(limit => (double)limit.Worst.Value));
    }

    [Theory]
    [InlineData("", "measured (in-hands.greatest-effort)")]
    [InlineData("in-hands: {greatest-effort: 0 N·m}", "beyond the greatest effort that you gave, 0.0 N·m: it can't be held so.")]
    [InlineData("in-hands: {greatest-effort: 1 N·m}", "beyond the greatest effort that you gave, 1.0 N·m: it can't be held so.")]
    [InlineData("in-hands: {greatest-effort: 60 N·m}", "of the greatest effort that you gave; a published fit")]
    public void An_effort_of_0_is_no_effort_that_nobody_measured(string effort, string words)
    {
        var balance = ScenarioBalance.Of(Read(Text(more: effort, stance: "hand")), "one");
        Assert.Contains(words, BalanceWords.Answer(balance), StringComparison.Ordinal);
        Assert.DoesNotContain("-0.0", BalanceWords.Answer(balance), StringComparison.Ordinal);
    }

    [Fact]
    public void A_head_that_is_not_weighed_is_told_where_the_whole_is_lifted()
    {
        var text = Text().Replace("name: Head, mass: 2 kg,", "name: Head,", StringComparison.Ordinal);
        var balance = ScenarioBalance.Of(Read(text), "one");
        Assert.Contains(balance.Assumed, assumed => assumed.Value == "none counted"
            && assumed.Name == "mass of head when the whole is lifted");
        Assert.DoesNotContain(ScenarioBalance.Of(Read(Text()), "one").Assumed, assumed => assumed.Value == "none counted");
    }

    [Theory]
    [InlineData("winter-harbour.yaml")]
    [InlineData("teaching-kit.yaml")]
    public void Every_figure_of_a_file_set_to_0_is_refused_or_answered_as_one_next_to_0_is(string name)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", name));
        var (answered, refused) = (0, 0);
        foreach (var (path, text) in ScenarioPath.NumericFields(scenario))
        {
            var unit = Number().Replace(text, "");
            if (Verdicts(scenario, path, "0" + unit) is not { } zero)
            {
                refused++;
                continue;
            }
            answered++;
            if (Verdicts(scenario, path, "0.000001" + unit) is { } little)
                Assert.True(zero == little, $"{path}: with 0{unit} {zero}; with a millionth {little}");
        }
        output.WriteLine($"{answered} answered, {refused} refused");
        Assert.InRange(answered, 30, 500);
    }

    /// <summary>The verdicts, and how many limits have no rating; null where the value is refused.</summary>
    private static string? Verdicts(Scenario scenario, string path, string value)
    {
        Scenario changed;
        try
        {
            changed = ScenarioPath.Set(scenario, path, value);
        }
        catch (ScenarioProblemsException)
        {
            return null;
        }
        var options = AnswerOptions.EndOnly with { Today = new DateOnly(2026, 9, 1) };
        return string.Join("; ", changed.Builds.Keys.Select(build =>
        {
            var answer = RigAnswer.Of(changed, build, [changed.Days.Keys.First()], options);
            HasNoInfinity(AnswerShape.Of(answer, null).ToJsonString());
            return string.Join(", ", answer.Questions.Select(question => $"{question.Kind} {question.Verdict.InWords()}, "
                + $"{question.Limits.Count(limit => limit.Allowed is null)} unrated"));
        }));
    }

    private static void HasNoInfinity(string text)
    {
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^-?[0-9.]+(E[+-]?[0-9]+)?", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
