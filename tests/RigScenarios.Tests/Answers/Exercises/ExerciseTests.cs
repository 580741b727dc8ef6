using RigScenarios.Answers;
using RigScenarios.Answers.Exercises;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Answers.Exercises;

/// <summary>What an exercise promises of its causes, each run again apart from it.</summary>
public sealed class ExerciseTests
{
    public static TheoryData<string, string> Demos => Drawing.Demos;

    [Theory]
    [MemberData(nameof(Demos))]
    public void Each_cause_alone_makes_it_fail_and_without_any_of_them_it_fails_less(string demo, string build)
    {
        Drawn.Cases(100, 4, random =>
        {
            var exercise = Drawing.Of(random.Next(1_000_000), demo);
            Assert.Equal(build, exercise.Rig.Build);
            Assert.Equal(3, exercise.Causes.Select(cause => cause.Slot).Distinct().Count());
            var planted = exercise.Causes.SelectMany(cause => cause.Settings);
            Assert.NotEqual(Verdict.Fails, exercise.Sound.Verdict);
            var all = Drawing.Run(exercise, exercise.Sound.Scenario, planted);
            Assert.Equal(Verdict.Fails, all.Verdict);
            Each.Of(exercise.Causes, cause =>
            {
                Assert.Equal(Verdict.Fails, Drawing.Run(exercise, exercise.Sound.Scenario, cause.Settings).Verdict);
                var without = Drawing.Run(exercise, exercise.Sound.Scenario,
                    exercise.Causes.Where(other => other != cause).SelectMany(other => other.Settings));
                Assert.True(Badness(without) < Badness(all), $"{cause.Words} {Badness(without)} of {Badness(all)}");
            }, atLeast: 3);
        });
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_key_holds_within_the_budget_and_the_untouched_rig_solves_nothing(string demo, string build)
    {
        Drawn.Cases(200, 4, random =>
        {
            var exercise = Drawing.Of(random.Next(1_000_000), demo);
            Assert.Equal(build, exercise.Rig.Build);
            var key = exercise.With(Drawing.Key(exercise));
            var check = ExerciseCheck.Of(exercise, key, TestContext.Current.CancellationToken);
            Assert.True(check.IsSolved, string.Join('\n', ExerciseSentences.Of(check)));
            Assert.Equal(exercise.KeyCost?.Amount, check.Cost?.Amount);
            Assert.Equal(exercise.Sound.Questions.Select(question => question.Verdict),
                check.Answer!.Questions.Select(question => question.Verdict));
            var nothing = ExerciseCheck.Of(exercise, exercise.StudentScenario, TestContext.Current.CancellationToken);
            Assert.False(nothing.IsSolved);
            Assert.Equal(3, nothing.CausesLeft);
            Assert.Empty(nothing.Refused);
            Assert.Null(nothing.Cost);
        });
    }

    [Fact]
    public void Each_repair_of_the_key_leaves_one_cause_less()
    {
        var exercise = Drawing.Of(1);
        Each.Of(exercise.Causes, cause =>
        {
            var one = exercise.With(cause.Repair.Settings.Select(setting => (setting.Path, setting.Value)));
            Assert.Equal(2, ExerciseCheck.Of(exercise, one, TestContext.Current.CancellationToken).CausesLeft);
        }, atLeast: 3);
    }

    [Fact]
    public void The_same_seed_gives_the_same_exercise_and_others_give_others()
    {
        string Told(int seed) => ExerciseKey.Markdown(Drawing.Of(seed));
        Assert.Equal(Told(11), Told(11));
        var different = Enumerable.Range(1, 12).Select(seed => string.Join('|',
            Drawing.Of(seed).Causes.Select(cause => cause.Words).Order(StringComparer.Ordinal))).Distinct().Count();
        Assert.True(different >= 9, $"{different} different ones of 12");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Fewer_causes_are_drawn_where_fewer_are_wanted(int causes) =>
        Assert.Equal(causes, Drawing.Of(3, causes: causes).Causes.Count);

    [Fact]
    public void It_works_for_a_rig_in_the_hand_that_has_no_head()
    {
        var exercise = Exercise.Draw(Drawing.Demo("market-hall"), "hand", [], 4, 2,
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(Verdict.Fails, exercise.Rig.Of(QuestionKind.Power)!.Verdict);
        Assert.True(ExerciseCheck.Of(exercise, exercise.With(Drawing.Key(exercise)),
            TestContext.Current.CancellationToken).IsSolved);
    }

    [Fact]
    public void A_rig_that_fails_as_it_is_is_refused_with_what_fails()
    {
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() => Exercise.Draw(Drawing.Demo("winter-harbour"),
            "shoulder", ["day-one"], 1, cancellation: TestContext.Current.CancellationToken)).Problems);
        Assert.Equal("builds.shoulder", problem.Path);
        Assert.Contains("Power: The camera stops at", problem.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_with_too_little_to_go_wrong_is_refused()
    {
        // Ten minutes of work: no worn battery and no pause makes this fail.
        var demo = Drawing.Demo("market-hall");
        var morning = demo.Days["morning"];
        var idle = demo with { Days = demo.Days.With("morning", morning with
        {
            Blocks = new([KeyValuePair.Create("look", morning.Blocks["rigging"] with { Length = Duration.FromMinutes(10) })]),
        }) };
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() => Exercise.Draw(idle, "hand", [], 1,
            cancellation: TestContext.Current.CancellationToken)).Problems);
        Assert.Contains("no 3 were found", problem.Problem, StringComparison.Ordinal);
        Assert.Contains("fewer causes", problem.Accepted!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_of_causes_out_of_range_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawing.Of(1, causes: 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Drawing.Of(1, causes: 4));
    }

    [Fact]
    public void It_stops_when_it_is_told_to()
    {
        using var stopping = new CancellationTokenSource();
        var told = new Told(() => stopping.Cancel());
        Assert.Throws<OperationCanceledException>(() => Exercise.Draw(Drawing.Demo("pottery-class"), "tripod", [], 1,
            progress: told, cancellation: stopping.Token));
    }

    // What fails counts hours and shares; what is worse than holding counts a little.
    private static double Badness(RigAnswer answer) =>
        answer.Questions.Sum(question => question.Shortfall + (0.01 * (int)question.Verdict));

    private sealed class Told(Action tell) : IProgress<double>
    {
        public void Report(double value) => tell();
    }
}
