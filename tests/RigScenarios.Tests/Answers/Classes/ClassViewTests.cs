using RigScenarios.Answers;
using RigScenarios.Answers.Classes;
using RigScenarios.Answers.Exercises;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.Balance;

namespace RigScenarios.Tests.Answers.Classes;

/// <summary>What a class is told, and what it is not.</summary>
public sealed class ClassViewTests
{
    [Fact]
    public void While_all_is_hidden_no_word_of_the_answer_is_told()
    {
        var lesson = Lessons.Ready(Lessons.Harbour);
        Assert.Equal(9, lesson.Asked.Count);
        var view = Lessons.View(lesson, lesson.Answer);
        Assert.True(view.IsHiding);
        Assert.False(view.TellsBalance);
        Assert.Null(view.Answer);
        Assert.Empty(view.Lines);
        Each.Of(view.Estimates, told => Assert.Null(told.Answer), atLeast: 9);
        var words = Lessons.Words(view);
        Each.Of(Answers(lesson), answer => Assert.DoesNotContain(answer, words, StringComparison.Ordinal), atLeast: 12);
    }

    [Fact]
    public void What_is_not_hidden_is_told_and_the_verdict_of_all_is_not()
    {
        var lesson = Lessons.Ready(Lessons.Harbour with { Shown = [QuestionKind.Wiring, QuestionKind.Balance] });
        var view = Lessons.View(lesson, lesson.Answer);
        Assert.Equal([QuestionKind.Wiring, QuestionKind.Balance], view.Lines.Select(line => line.Kind));
        Assert.Equal(["wiring", "centre", "setting"], view.Estimates.Where(told => told.Answer is not null)
            .Select(told => told.Asked.Name));
        Assert.Null(view.Answer);
        // The drawing shows what it tips over, too.
        Assert.False(view.TellsBalance);
        Assert.DoesNotContain(AnswerSentences.Headline(lesson.Answer), Lessons.Words(view), StringComparison.Ordinal);
    }

    [Fact]
    public void Once_it_is_revealed_all_is_told_of_the_rig_as_it_is_set()
    {
        var lesson = Lessons.Ready(Lessons.Harbour);
        var cold = lesson.AnswerTo(new Dictionary<string, string> { ["air"] = "-18" }, TestContext.Current.CancellationToken);
        var view = Lessons.View(lesson, cold, isRevealed: true);
        Assert.False(view.IsHiding);
        Assert.Same(cold, view.Answer);
        Assert.Equal(AnswerSentences.Questions(cold).Count, view.Lines.Count);
        // The teacher's own question has no answer here.
        Assert.Equal(["own-1"], view.Estimates.Where(told => told.Answer is null).Select(told => told.Asked.Name));
        Assert.Equal(AnswerSentences.Headline(cold), view.Estimates.Single(told => told.Asked.Name == "works").Answer);
        Assert.NotEqual(AnswerSentences.Headline(cold), AnswerSentences.Headline(lesson.Answer));
    }

    [Fact]
    public void The_key_of_an_exercise_is_told_with_the_rest_and_not_with_what_is_open()
    {
        var lesson = Lessons.Ready(Lessons.Pottery);
        var keys = ExerciseKey.Causes(lesson.Exercise!);
        var open = Lessons.View(lesson, lesson.Answer);
        Assert.NotNull(open.Answer);
        Assert.True(open.IsHiding);
        Assert.Contains("Three causes are still there.", open.Check);
        Assert.Equal(["cause-1", "repair-1", "cause-2", "repair-2", "cause-3", "repair-3"],
            open.Estimates.Select(told => told.Asked.Name));
        var words = Lessons.Words(open);
        Each.Of(keys.SelectMany(key => new[] { key.What, key.Repair }),
            key => Assert.DoesNotContain(key, words, StringComparison.Ordinal), atLeast: 6);
        var told = Lessons.View(lesson, lesson.Answer, isRevealed: true);
        Assert.Equal(keys.Select(key => key.What), told.Estimates.Where((_, i) => i % 2 == 0).Select(one => one.Answer));
    }

    [Fact]
    public void A_drawing_of_the_parts_alone_tells_neither_mass_nor_centre()
    {
        var balance = Lessons.Ready(Lessons.Harbour).Answer.Balance!;
        string All(RigDrawingOptions options)
        {
            var drawing = RigDrawing.Of(balance.Rig.Placed, options);
            return string.Join('\n', [drawing.Svg, drawing.NarrowSvg, drawing.AlternativeText, drawing.Caption,
                .. drawing.Data.Rows.SelectMany(row => row)]);
        }
        var (blank, full) = (All(RigDrawingOptions.Blank(balance)), All(RigDrawingOptions.Of(balance)));
        foreach (var mark in (string[])["centre of gravity", "rs-centre", "camera plate"])
        {
            Assert.Contains(mark, full, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(mark, blank, StringComparison.OrdinalIgnoreCase);
        }
        Assert.Contains("data-part", blank, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_has_the_task_and_no_answer_and_its_solution_has_them()
    {
        var lesson = Lessons.Ready(Lessons.Harbour with { Estimates = ["energy", "works"] });
        var (blank, solved) = (Cells(ClassSheets.Blank(lesson)), Cells(ClassSheets.Solved(lesson)));
        Assert.Contains("Then make it colder.", blank);
        Assert.Contains("-20 to 10 °C", blank);
        Assert.Contains("What would you ask the gaffer?", blank);
        var words = string.Join('\n', blank);
        Each.Of(Answers(lesson), answer => Assert.DoesNotContain(answer, words, StringComparison.Ordinal), atLeast: 12);
        Assert.Contains(AnswerSentences.Headline(lesson.Answer), solved);
        Assert.Contains("What would you ask the gaffer?", solved);
        Assert.DoesNotContain(solved, cell => cell.StartsWith("Until when", StringComparison.Ordinal));
        var exercise = Lessons.Ready(Lessons.Pottery);
        var key = ExerciseKey.Causes(exercise.Exercise!)[0].What;
        Assert.DoesNotContain(key, Cells(ClassSheets.Blank(exercise)));
        Assert.Contains(key, Cells(ClassSheets.Solved(exercise)));
    }

    /// <summary>Every sentence that the answer has to say.</summary>
    private static List<string> Answers(ClassLesson lesson) => [AnswerSentences.Headline(lesson.Answer),
        .. AnswerSentences.Questions(lesson.Answer).Select(line => line.Words),
        .. Lessons.View(lesson, lesson.Answer, isRevealed: true).Estimates.Select(told => told.Answer).OfType<string>(),
        .. TakeAlongSheets.Of(lesson.Answer, SheetKind.Solution).Sections[0].Rows.Select(row => row[1])];

    private static List<string> Cells(TakeAlongSheet sheet) => [sheet.Title, sheet.Subtitle, sheet.Headline, .. sheet.Days,
        .. sheet.Questions.Select(line => line.Words), .. sheet.Sections.SelectMany(section => section.Rows)
            .SelectMany(row => row)];
}
