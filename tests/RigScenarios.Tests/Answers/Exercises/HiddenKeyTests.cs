using RigScenarios.Answers.Exercises;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;

namespace RigScenarios.Tests.Answers.Exercises;

/// <summary>What a student gets tells nothing of what was made wrong; what a teacher gets tells all of it.</summary>
public sealed class HiddenKeyTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(12)]
    public void No_word_of_the_key_stands_in_what_a_student_gets(int seed)
    {
        var exercise = Drawing.Of(seed);
        var student = new[]
        {
            ScenarioFile.Text(exercise.StudentScenario), SheetPage.Of(ExercisePages.Student(exercise), whole: true),
            string.Join('\n', ExerciseSentences.Task(exercise)),
        };
        Each.Of(exercise.Causes, cause => Each.Of(student, text =>
        {
            Assert.DoesNotContain(cause.Words, text, StringComparison.Ordinal);
            Assert.DoesNotContain(cause.Repair.Words, text, StringComparison.Ordinal);
            Each.Of(cause.Hints, hint => Assert.DoesNotContain(hint, text, StringComparison.Ordinal), atLeast: 3);
            Each.Of(cause.Repair.Settings, setting =>
                Assert.DoesNotContain($"{setting}", text, StringComparison.Ordinal));
        }, atLeast: 3), atLeast: 3);
        // Nor the rig as it was: one build, and no comment.
        Assert.Single(exercise.StudentScenario.Builds);
        Assert.DoesNotContain("#", student[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_spare_part_in_the_kit_tells_nothing_for_there_is_one_of_each_kind_that_could_be_swapped()
    {
        // Of each seed: a bag with a monitor, a transmitter and a head, whatever was planted.
        Each.Of(Enumerable.Range(1, 8), seed =>
        {
            var bag = Drawing.Of(seed).StudentScenario.Kit.Keys.Where(name => name.EndsWith("-in-the-bag",
                StringComparison.Ordinal)).Order(StringComparer.Ordinal);
            Assert.Equal(["head-in-the-bag", "monitor-in-the-bag", "transmitter-in-the-bag"], bag);
        }, atLeast: 8);
    }

    [Fact]
    public void The_key_has_every_cause_with_what_it_does_and_what_puts_it_right()
    {
        var exercise = Drawing.Of(2);
        var texts = new[] { ExerciseKey.Markdown(exercise),
            System.Net.WebUtility.HtmlDecode(SheetPage.Of(ExercisePages.Teacher(exercise), whole: true)).Replace('\u00a0', ' ') };
        Each.Of(texts, text => Each.Of(ExerciseKey.Causes(exercise), row =>
        {
            Assert.Contains(row.What, text, StringComparison.Ordinal);
            Assert.Contains(row.Alone, text, StringComparison.Ordinal);
            Assert.Contains(row.Without, text, StringComparison.Ordinal);
            Assert.Contains(row.Repair, text, StringComparison.Ordinal);
        }, atLeast: 3), atLeast: 2);
        Each.Of(exercise.Causes.SelectMany(cause => cause.Repair.Settings), setting =>
            Assert.Contains($"--fix \"{setting}\"", texts[0], StringComparison.Ordinal), atLeast: 3);
    }

    [Fact]
    public void The_students_file_reads_back_to_the_rig_from_any_folder()
    {
        using var folder = new TemporaryFolder();
        var exercise = Drawing.Of(1);
        var file = Path.Combine(folder.Path, "deep", "student.yaml");
        var from = Repository.Data("scenarios", "pottery-class.yaml");
        ScenarioFile.Write(MovedFile.Of(exercise.StudentScenario, from, file), file);
        var (read, problems) = ScenarioFile.TryRead(file);
        Assert.Empty(problems);
        Assert.Equal(["parts-from"], ChangedFields.Between(exercise.StudentScenario, read!).Select(change => change.Path));
        var check = ExerciseCheck.Of(exercise, read!, TestContext.Current.CancellationToken);
        Assert.Empty(check.Refused);
        Assert.Equal(3, check.CausesLeft);
    }

    // Worn battery, height of the tripod, camera plate: what is wrong with this rig stands on its sheet as a figure, unmarked.
    [Fact]
    public void The_sheet_has_the_figures_from_which_the_causes_can_be_found()
    {
        var exercise = Drawing.Of(2);
        var rows = ExercisePages.Student(exercise).Sections.SelectMany(section => section.Rows)
            .Select(row => string.Join(": ", row)).ToList();
        Assert.Equal(["age of brick", "height of the tripod", "setting of the head"],
            exercise.Causes.Select(cause => cause.Slot).Order(StringComparer.Ordinal));
        Assert.Contains("brick: 14.4: 290: 100: 82", rows);
        Assert.Contains("height of the head's seat: 1.84 m", rows);
        Assert.Contains("camera plate on the head: -45 mm", rows);
        Assert.Contains("counterbalance: 10.0 N·m", rows);
        Assert.Contains("head in the bag: Light fluid head", rows);
    }

    [Fact]
    public void Hints_come_in_three_steps_the_general_first()
    {
        var exercise = Drawing.Of(1);
        var (one, three) = (ExerciseSentences.Hints(exercise, 1), ExerciseSentences.Hints(exercise, 3));
        Assert.Equal(one, three.Take(one.Count));
        Each.Of(one, hint => Assert.StartsWith("Hint 1: Look at the question of ", hint, StringComparison.Ordinal));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExerciseSentences.Hints(exercise, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ExerciseSentences.Hints(exercise, 4));
    }
}
