using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>Words for exercises: the task, the hints, what is said of a solution. None of them tells what was made
/// wrong.</summary>
public static class ExerciseSentences
{
    /// <summary>The title of the student's file and sheet.</summary>
    /// <param name="exercise">The exercise.</param>
    public static string Title(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return $"{exercise.Sound.Scenario.Title}, exercise {exercise.Seed}";
    }

    /// <summary>The task, a sentence an item.</summary>
    /// <param name="exercise">The exercise.</param>
    public static IReadOnlyList<string> Task(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var (find, right) = exercise.Causes.Count == 1 ? ("the cause", "it")
            : ($"the {Number(exercise.Causes.Count)} causes", "them");
        var money = exercise.Budget is { } budget ? $"for {budget} at most" : "without buying anything";
        return
        [
            "An exercise: this rig was sound, and something was made wrong on it on purpose.",
            $"{AnswerSentences.Upper(Symptoms(exercise.Rig))}.",
            $"Find {find}, and put {right} right {money}.",
            "Given, and to be left as it is: the day and its blocks, the air, what is shot, which devices are essential, what "
                + $"parts are, weigh, draw and cost. Things of the kit cost nothing; {CostOfNew(exercise)}.",
        ];
    }

    private static string CostOfNew(Exercise exercise) => exercise.Rig.Scenario is var rig
        && rig.Kit.Values.Select(item => item.Had ?? rig.Costs?.OthersAre).Contains(Had.Rented)
            ? "what comes new, a new battery for a worn one too, costs its rent where it is rented, and else what it costs to buy"
            : "a new battery for a worn one costs what it costs to buy";

    /// <summary>What the rig does, as a clause: "it does not stay where you let go, and the camera stops at 15:10, 2 h before
    /// wrap".</summary>
    /// <param name="rig">The rig as the student gets it.</param>
    public static string Symptoms(RigAnswer rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var all = rig.Questions.Where(question => question.Verdict == Verdict.Fails)
            .OrderByDescending(question => question.Kind == QuestionKind.Balance)
            .Select(question => Symptom(rig, question)).ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.Take(all.Count - 1))}, and {all[^1]}";
    }

    // What anybody on the set would notice, and no figure that names the part.
    private static string Symptom(RigAnswer rig, AnswerQuestion question) => (question.Kind, question.Least?.Kind) switch
    {
        (QuestionKind.Power, _) => AnswerSentences.Stops(rig),
        (QuestionKind.Wiring, _) => "more is asked of the wiring than it may carry",
        (QuestionKind.Balance, LimitKind.TiltAtRest or LimitKind.Creep) => "it nods when you let go",
        (QuestionKind.Balance, LimitKind.Travel) => "the camera plate can't be set so that it balances",
        (QuestionKind.Balance, LimitKind.Load) => "the head carries more than it is rated for",
        (QuestionKind.Balance, _) => "it weighs too much on what holds it",
        (QuestionKind.Stand, LimitKind.Gust) => "the gusts of the day can tip it over",
        (QuestionKind.Stand, LimitKind.TipAngle) => "it tips over by itself",
        (QuestionKind.Stand, _) => "something carries more than it is rated for",
        _ => "a battery does not get there",
    };

    /// <summary>The hints up to a step, one line for each cause and step.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="step">1: which question, 2: which thing, 3: which figure.</param>
    public static IReadOnlyList<string> Hints(Exercise exercise, int step)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentOutOfRangeException.ThrowIfLessThan(step, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, 3);
        return [.. Enumerable.Range(0, step).SelectMany(at => exercise.Causes.Select(cause => cause.Hints[at]).Distinct()
            .Select(hint => $"Hint {at + 1}: {hint}"))];
    }

    /// <summary>What is said of a solution, the verdict first.</summary>
    /// <param name="check">The check.</param>
    public static IReadOnlyList<string> Of(ExerciseCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var lines = new List<string> { VerdictOf(check) };
        lines.AddRange(check.Refused.Select(change => $"Not allowed: {change.Path}. {change.Why}"));
        if (check.Answer is { } answer)
            lines.AddRange(AnswerSentences.Questions(answer).Where(line => check.Open.Any(question => question.Kind == line.Kind))
                .Select(line => $"{line.Title}: {line.Words}"));
        if (check.Open.Count > 0)
            lines.Add(check.CausesLeft switch
            {
                0 => "None of the causes that were planted is in the way any more; what is left came with your changes.",
                1 => "One cause is still there.",
                var left => $"{AnswerSentences.Upper(Number(left))} causes are still there.",
            });
        lines.Add(Cost(check));
        return lines;
    }

    /// <summary>The verdict on a solution in a sentence.</summary>
    /// <param name="check">The check.</param>
    public static string VerdictOf(ExerciseCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        if (check.Answer is not { } answer)
            return "Not solved: the build or a day of the exercise is not there any more.";
        if (check.IsSolved)
            return $"Solved: {AnswerSentences.Lasts(answer)}, and no question is worse than on the sound rig.";
        if (check.Open.Count > 0)
            return $"Not solved yet: {string.Join(", ", check.Open.Select(question =>
                AnswerSentences.Title(question.Kind, answer.TheBuild.Stance).ToLowerInvariant()))} "
                    + (check.Open.Count == 1 ? "is" : "are") + " still worse than on the sound rig.";
        return check.Refused.Count > 0 ? "Not solved: it works, but something was changed that is given."
            : check.IsWithinBudget == false ? "Not solved: it works, but it costs too much."
            : "Not known: it works, but the price of something is not known.";
    }

    /// <summary>What a solution costs, in a sentence.</summary>
    /// <param name="check">The check.</param>
    public static string Cost(ExerciseCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        var budget = check.Exercise.Budget is { } most ? $"{most} may be spent" : "nothing may be spent";
        if (check.Bought.Count == 0)
            return $"It costs nothing; {budget}.";
        var what = string.Join(", ", check.Bought.Select(thing =>
            $"{thing.Words} ({(thing.Price is { } price ? $"{price}" : "price not known")})"));
        var sum = check.Cost is { } cost ? $"{(check.IsCostUnknown ? "at least " : "")}{cost}" : "an amount that is not known";
        return $"It costs {sum}: {what}; {budget}.";
    }

    /// <summary>A small number in words.</summary>
    internal static string Number(int count) => count switch { 1 => "one", 2 => "two", 3 => "three", _ => $"{count}" };
}
