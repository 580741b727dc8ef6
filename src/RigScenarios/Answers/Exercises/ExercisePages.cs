using RigScenarios.Answers.TakeAlong;

namespace RigScenarios.Answers.Exercises;

/// <summary>An exercise on paper: the student's sheet, with no answer on it, and the teacher's key.</summary>
public static class ExercisePages
{
    /// <summary>The student's sheet: the task, what is given, room for what was found.</summary>
    /// <param name="exercise">The exercise.</param>
    public static TakeAlongSheet Student(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var rig = exercise.Rig;
        return new()
        {
            Title = ExerciseSentences.Title(exercise), Subtitle = $"Find what is wrong: {SheetWords.Build(rig)}",
            Days = SheetWords.Days(rig),
            Sections =
            [
                new("The task", SheetForm.Sentences, [.. ExerciseSentences.Task(exercise).Select(line => new[] { line })]),
                .. GivenSections.Of(rig), .. PlaceSections.Cables(rig), .. RigSettings.Of(rig),
                new("What you found", SheetForm.Blanks, [.. Enumerable.Range(1, exercise.Causes.Count)
                    .SelectMany(number => Findings(exercise, number)).Select(row => new[] { row.Question, row.Unit })])
                    { IsWide = true, Columns = ["Your finding"] },
                Cautions(),
            ],
            Foot = "Name:                                        Date:",
        };
    }

    /// <summary>The teacher's key.</summary>
    /// <param name="exercise">The exercise.</param>
    public static TakeAlongSheet Teacher(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return new()
        {
            Title = ExerciseSentences.Title(exercise), Subtitle = $"Teacher's key: {SheetWords.Build(exercise.Rig)}",
            Days = SheetWords.Days(exercise.Rig), Verdict = exercise.Rig.Verdict,
            Headline = AnswerSentences.Headline(exercise.Rig), Questions = AnswerSentences.Questions(exercise.Rig),
            Sections =
            [
                new("The causes", SheetForm.Table, [.. ExerciseKey.Causes(exercise).Select(row => new[]
                {
                    row.What, row.Alone, row.Without, row.Repair, row.Costs,
                })])
                {
                    IsWide = true, Columns = ["What is wrong", "The sound rig with it alone", "This rig without it",
                        "What puts it right", "Costs"],
                },
                new("The task", SheetForm.Sentences, [.. ExerciseSentences.Task(exercise).Select(line => new[] { line })]),
                new("With the key", SheetForm.Sentences, [.. ExerciseKey.Outcome(exercise).Select(line => new[] { line })]),
                new("Hints, the first first", SheetForm.Sentences,
                    [.. ExerciseSentences.Hints(exercise, 3).Select(line => new[] { line })]) { IsWide = true },
                Cautions(),
            ],
            Foot = "Predicted, not measured. Another way that works within the budget is as right as this one.",
        };
    }

    /// <summary>What is asked of a cause, with short names.</summary>
    internal static IReadOnlyList<(string Name, string Question, string Unit)> Findings(Exercise exercise, int number) =>
    [
        ($"cause-{number}", $"Cause {number}: what is wrong, and which figure shows it?", "part, figure"),
        ($"repair-{number}", $"Cause {number}: what puts it right, and what does it cost?",
            $"change, {exercise.Budget?.Currency ?? "money"}"),
    ];

    private static SheetSection Cautions() => new("Cautions", SheetForm.Sentences,
        [[AnswerCautions.Always], [BalanceWords.Lifting]]) { IsWide = true };
}
