using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Answers.Exercises;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Answers.Classes;

/// <summary>What a class may be given to change, and what stays locked.</summary>
public sealed class ClassControlsTests
{
    public static TheoryData<string> Samples => [.. Repository.ScenarioFiles
        .Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_figure_can_be_taken_from_end_to_end_and_every_choice_to_what_it_is(string sample)
    {
        var scenario = Lessons.Sample(sample);
        Each.Of(scenario.Builds.Keys, build =>
        {
            var answer = RigAnswer.Of(scenario, build, [scenario.Days.Keys.First()], AnswerOptions.EndOnly, null,
                TestContext.Current.CancellationToken);
            var controls = ClassControls.Of(answer);
            Assert.Equal(controls.Count, controls.Select(control => control.Name).Distinct(StringComparer.Ordinal).Count());
            Each.Of(controls, control =>
            {
                var own = new ClassControl[] { control };
                foreach (var end in control.IsNumber
                    ? new[] { control.Least, control.Greatest } : [])
                {
                    var value = end.ToString(System.Globalization.CultureInfo.InvariantCulture);
                    var changed = ClassControls.Apply(scenario, answer.Days, own, new Dictionary<string, string>
                    {
                        [control.Name] = value,
                    });
                    Assert.True(value == control.Start || !ReferenceEquals(changed, scenario), control.Name);
                }
                if (!control.IsNumber)
                    Assert.Contains(control.Start, control.Choices.Select(choice => choice.Value));
                Assert.Same(scenario, ClassControls.Apply(scenario, answer.Days, own,
                    new Dictionary<string, string> { [control.Name] = control.Start }));
            }, atLeast: 20);
        });
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_rig_whose_controls_all_stand_where_they_begin_is_answered_as_its_file_says(string sample)
    {
        var scenario = Lessons.Sample(sample);
        var build = scenario.Builds.Keys.First();
        var days = new[] { scenario.Days.Keys.First() };
        var answer = RigAnswer.Of(scenario, build, days, AnswerOptions.EndOnly, null, TestContext.Current.CancellationToken);
        // But for the settings of a head that the file leaves open: those begin in the middle, and not where they should be.
        var task = Lessons.Harbour with { Build = build, Days = days, Estimates = [], Controls =
            [.. ClassControls.Of(answer).Where(control => control.IsGiven || !control.Name.Contains("on-head",
                StringComparison.Ordinal)).Select(control => new OpenControl(control.Name))] };
        var lesson = ClassLesson.Of(task, scenario, null, TestContext.Current.CancellationToken);
        Assert.Equal(AnswerSentences.Headline(answer), AnswerSentences.Headline(lesson.Answer));
        Assert.Equal(AnswerSentences.Questions(answer).Select(line => line.Verdict),
            AnswerSentences.Questions(lesson.Answer).Select(line => line.Verdict));
    }

    [Fact]
    public void An_open_setting_of_the_head_begins_in_the_middle_of_its_way_and_tells_nothing()
    {
        var task = Lessons.Harbour with { Controls = [new("builds.tripod.on-head.plate-at")] };
        var lesson = Lessons.Ready(task);
        var plate = Assert.Single(lesson.Controls);
        Assert.False(plate.IsGiven);
        Assert.Equal((plate.Least + plate.Greatest) / 2, double.Parse(plate.Start,
            System.Globalization.CultureInfo.InvariantCulture), 0.51);
        var best = lesson.Answer.Balance!.Best!.CameraPlate.Millimeters;
        Assert.NotEqual($"{Math.Round(best)}", plate.Start);
        Assert.Equal(plate.Start, $"{lesson.Answer.Balance.AsSet!.CameraPlate.Millimeters}");
    }

    [Fact]
    public void Colder_air_is_that_of_the_whole_day()
    {
        var lesson = Lessons.Ready(Lessons.Harbour);
        var cold = lesson.AnswerTo(new Dictionary<string, string> { ["air"] = "-18" }, TestContext.Current.CancellationToken);
        var (before, after) = (lesson.Answer.Scenario.Days["day-one"], cold.Scenario.Days["day-one"]);
        Assert.Equal(-18, (after.Ambient ?? after.AmbientPoints.MinBy(point => point.Temperature.Kelvins)!.Temperature)
            .DegreesCelsius, 9);
        Assert.NotEqual(before, after);
        Assert.True(cold.Simulation.Runtime < lesson.Answer.Simulation.Runtime);
        Assert.Equal(["coldest air: -8 °C → -18 °C"], lesson.Changes(new Dictionary<string, string> { ["air"] = "-18" }));
    }

    [Theory]
    [InlineData("builds.tripod.battery.charge", "50", "locked")]
    [InlineData("title", "mine", "locked")]
    [InlineData("air", "-21", "goes from -20 °C to 10 °C")]
    [InlineData("air", "cold", "number")]
    [InlineData("air", "NaN", "number")]
    [InlineData("air", "1e400", "number")]
    public void What_is_locked_or_out_of_bounds_is_refused_by_name(string name, string value, string words)
    {
        var lesson = Lessons.Ready(Lessons.Harbour);
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() =>
            lesson.With(new Dictionary<string, string> { [name] = value })).Problems);
        Assert.Equal(name, problem.Path);
        Assert.Contains(words, problem.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_rig_does_not_have_is_told_all_at_once_with_the_nearest_name()
    {
        var task = Lessons.Harbour with
        {
            Controls = [new("builds.tripod.battery.charg"), new("air", 5, -5)], Estimates = ["energi"],
        };
        var problems = Assert.Throws<ScenarioProblemsException>(() => Lessons.Ready(task)).Problems;
        Assert.Equal(["controls.1.field", "controls.2", "estimates"], problems.Select(problem => problem.Path));
        Assert.Equal(["builds.tripod.battery.charge", null, "energy"], problems.Select(problem => problem.Nearest));
    }

    [Fact]
    public void Every_exercise_can_be_put_right_with_controls_alone()
    {
        Drawn.Cases(1, 6, random =>
        {
            var seed = random.Next(1_000_000);
            var all = Lessons.Ready(Lessons.Pottery with { Seed = seed }).AllControls;
            var lesson = Lessons.Ready(Lessons.Pottery with { Seed = seed,
                Controls = [.. all.Select(control => new OpenControl(control.Name))] });
            var exercise = lesson.Exercise!;
            // As a student would set them: the key's values in the controls' units.
            var settings = exercise.Causes.SelectMany(cause => cause.Repair.Settings).ToDictionary(setting => setting.Path,
                setting => setting.Value.Split(' ')[0], StringComparer.Ordinal);
            Each.Of(settings.Keys, path => Assert.Contains(path, lesson.Controls.Select(control => control.Name)));
            var untouched = lesson.With(Lessons.Nothing);
            Assert.False(ExerciseCheck.Of(exercise, untouched, TestContext.Current.CancellationToken).IsSolved);
            var check = ExerciseCheck.Of(exercise, lesson.With(settings), TestContext.Current.CancellationToken);
            Assert.True(check.IsSolved, string.Join('\n', ExerciseSentences.Of(check)));
        });
    }

    [Fact]
    public void An_exercise_offers_nothing_that_a_solution_may_not_change()
    {
        var lesson = Lessons.Ready(Lessons.Pottery);
        var names = lesson.AllControls.Select(control => control.Name).ToList();
        Assert.DoesNotContain(ClassControl.Air, names);
        Each.HasNot(names, name => name.StartsWith("parts.", StringComparison.Ordinal)
            || name.EndsWith(".length", StringComparison.Ordinal) || name.EndsWith(".wind", StringComparison.Ordinal),
            atLeast: 20);
        Assert.Equal(Verdict.Fails, lesson.Answer.Verdict);
    }
}
