using RigScenarios.Answers.Exercises;
using RigScenarios.Answers.TakeAlong;

namespace RigScenarios.Answers.Classes;

/// <summary>A task on paper: the sheet for the class, on which nothing stands that is hidden, and its solution.</summary>
public static class ClassSheets
{
    private const string ForATalk = "A question of your teacher's: for a talk.";

    /// <summary>The sheet for the class: the task, what is given, what may be changed, room for one's own estimates.</summary>
    /// <param name="lesson">The task, made ready.</param>
    public static TakeAlongSheet Blank(ClassLesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new()
        {
            Title = lesson.Task.Title, Subtitle = Subtitle("Your own estimate", lesson), Days = SheetWords.Days(lesson.Answer),
            Sections =
            [
                .. Text(lesson), .. Given(lesson.Answer), .. Open(lesson),
                new("Your estimate", SheetForm.Blanks, [.. lesson.Asked.Select(asked => new[] { asked.Question, asked.Unit })])
                    { IsWide = true },
                ExerciseSheet.Cautions(),
            ],
            Foot = "Name:                                        Date:",
        };
    }

    /// <summary>The solution for the teacher.</summary>
    /// <param name="lesson">The task, made ready.</param>
    public static TakeAlongSheet Solved(ClassLesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        if (lesson.Exercise is { } exercise)
        {
            var key = ExercisePages.Teacher(exercise);
            return key with { Title = lesson.Task.Title, Sections = [.. key.Sections, .. Own(lesson)] };
        }
        return ExerciseSheet.Solved(lesson.Answer) with
        {
            Title = lesson.Task.Title, Subtitle = Subtitle("Solution", lesson),
            Questions = AnswerSentences.Questions(lesson.Answer),
            Sections =
            [
                .. Text(lesson),
                new("The answers", SheetForm.Table, [.. ClassView.Answers(lesson).Select(told =>
                    new[] { told.Asked.Question, told.Answer ?? ForATalk })])
                    { IsWide = true, Columns = ["Question", "Answer"] },
                new("Cautions", SheetForm.Sentences, [.. AnswerCautions.Of(lesson.Answer).Select(caution => new[] { caution })])
                    { IsWide = true },
            ],
        };
    }

    /// <summary>What is given of a rig: no figure in it is computed.</summary>
    internal static IReadOnlyList<SheetSection> Given(RigAnswer answer) =>
    [
        .. GivenSections.Of(answer), .. PlaceSections.Cables(answer), .. RigSettings.Of(answer),
    ];

    /// <summary>What is known of an exercise, beside the teacher's words; nothing of a rig as it stands in its file.</summary>
    internal static IReadOnlyList<string> Known(ClassLesson lesson) =>
        lesson.Exercise is { } exercise ? ExerciseSentences.Task(exercise) : [];

    /// <summary>The answers to what is asked of an exercise, by the names of the questions.</summary>
    internal static Dictionary<string, string> Key(Exercise exercise) => ExerciseKey.Causes(exercise).Index()
        .SelectMany(row => new[] { ($"cause-{row.Index + 1}", row.Item.What),
            ($"repair-{row.Index + 1}", $"{row.Item.Repair} It costs {row.Item.Costs}.") })
        .ToDictionary(one => one.Item1, one => one.Item2, StringComparer.Ordinal);

    private static string Subtitle(string what, ClassLesson lesson) =>
        $"{what}: {lesson.Answer.Scenario.Title}, {SheetWords.Build(lesson.Answer)}";

    private static IEnumerable<SheetSection> Text(ClassLesson lesson)
    {
        string[][] lines = [.. (lesson.Task.Text ?? "").Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0)
            .Concat(Known(lesson)).Select(line => new[] { line })];
        if (lines.Length > 0)
            yield return new("The task", SheetForm.Sentences, lines);
    }

    private static IEnumerable<SheetSection> Open(ClassLesson lesson)
    {
        if (lesson.Controls.Count > 0)
            yield return new("What you may change", SheetForm.Table, [.. lesson.Controls.Select(control => new[]
            {
                control.Label, control.InWords(control.Start), control.IsNumber
                    ? $"{ClassControl.Text(control.Least)} to {control.InWords(ClassControl.Text(control.Greatest))}"
                    : string.Join(", ", control.Choices.Select(choice => choice.Title)),
            })])
            {
                Columns = ["What", "Now", "From and to"], GoesAs = 3, Keeps = 3, Things = "things that may be changed",
            };
    }

    private static IEnumerable<SheetSection> Own(ClassLesson lesson)
    {
        string[][] own = [.. lesson.Task.OwnQuestions.Select(question => new[] { question, ForATalk })];
        if (own.Length > 0)
            yield return new("Your own questions", SheetForm.Table, own) { IsWide = true, Columns = ["Question", "Answer"] };
    }
}
