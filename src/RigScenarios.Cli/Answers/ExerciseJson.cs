using RigScenarios.Answers;
using RigScenarios.Answers.Exercises;
using RigScenarios.Limits;
using RigScenarios.Parts;

namespace RigScenarios.Cli.Answers;

/// <summary>An exercise for programs: the task, and what the models say of a solution. The key is in no document but its
/// own file.</summary>
internal static class ExerciseJson
{
    /// <summary>The document.</summary>
    public static string Text(Exercise exercise, ExerciseCheck? check, int? hint,
        IReadOnlyList<(string What, string File)> written) => JsonText.Of(new
        {
            format = "rigscenarios exercise 1",
            title = ExerciseSentences.Title(exercise),
            seed = exercise.Seed,
            build = exercise.Rig.Build,
            days = exercise.Rig.Days,
            causes = exercise.Causes.Count,
            budget = Amount(exercise.Budget),
            task = ExerciseSentences.Task(exercise),
            hints = hint is { } step ? ExerciseSentences.Hints(exercise, step) : [],
            rig = AnswerShape.Of(exercise.Rig, null),
            check = check is null ? null : new
            {
                solved = check.IsSolved,
                words = ExerciseSentences.Of(check),
                verdict = check.Answer?.Verdict.InWords(),
                open = check.Open.Select(question => question.Kind.ToString().ToLowerInvariant()),
                causes_left = check.CausesLeft,
                refused = check.Refused.Select(change => new { path = change.Path, why = change.Why }),
                bought = check.Bought.Select(thing => new { words = thing.Words, count = thing.Count,
                    price = Amount(thing.Price) }),
                cost = Amount(check.Cost),
                cost_known = !check.IsCostUnknown,
                within_budget = check.IsWithinBudget,
            },
            files = written.Select(file => new { what = file.What, file = file.File }),
        });

    private static object? Amount(Money? money) =>
        money is { } known ? new { amount = known.Amount, currency = known.Currency } : null;
}
