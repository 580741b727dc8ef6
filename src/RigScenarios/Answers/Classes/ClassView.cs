using RigScenarios.Answers.Exercises;
using RigScenarios.Answers.TakeAlong;

namespace RigScenarios.Answers.Classes;

/// <summary>An estimate that is asked for, with its answer where that may be told.</summary>
/// <param name="Asked">What is asked.</param>
/// <param name="Answer">What the program says; null where it is hidden, or where the program has nothing to say.</param>
public sealed record ToldEstimate(AskedEstimate Asked, string? Answer);

/// <summary>
/// What a class may be told of an answer: what is given, the questions that are not hidden, and all of it once it is revealed.
/// This is the one place that decides it, for whatever page or sheet shows it.
/// </summary>
public sealed record ClassView
{
    /// <summary>A line for each day.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>What is known of an exercise, beside the teacher's words: what it does, the budget, what stays as it is; none
    /// otherwise.</summary>
    public required IReadOnlyList<string> Known { get; init; }

    /// <summary>What is given, with what the student has set.</summary>
    public required IReadOnlyList<SheetSection> Given { get; init; }

    /// <summary>The questions that may be told.</summary>
    public required IReadOnlyList<QuestionLine> Lines { get; init; }

    /// <summary>The titles of the questions that are hidden.</summary>
    public required IReadOnlyList<string> Hidden { get; init; }

    /// <summary>The whole answer; null while anything of it is hidden.</summary>
    public RigAnswer? Answer { get; init; }

    /// <summary>Whether drawings may show what is computed of balance, tripod and joints.</summary>
    public required bool TellsBalance { get; init; }

    /// <summary>What is asked.</summary>
    public required IReadOnlyList<ToldEstimate> Estimates { get; init; }

    /// <summary>What the check says of the student's rig; none where it is no exercise, or while the answer is hidden.</summary>
    public IReadOnlyList<string> Check { get; init; } = [];

    /// <summary>Whether anything is left to be revealed: hidden questions, or answers to what is asked.</summary>
    public required bool IsHiding { get; init; }

    /// <summary>What is to be taken care of, whatever the answer: cautions that rest on a verdict would tell it.</summary>
    public static IReadOnlyList<string> Cautions { get; } = [AnswerCautions.Always, BalanceWords.Lifting];

    /// <summary>What may be told.</summary>
    /// <param name="lesson">The task, made ready.</param>
    /// <param name="answer">The answer for what the student has set.</param>
    /// <param name="isRevealed">Whether the student may see all.</param>
    /// <param name="cancellation">Stops it.</param>
    public static ClassView Of(ClassLesson lesson, RigAnswer answer, bool isRevealed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(answer);
        var lines = AnswerSentences.Questions(answer);
        bool Tells(QuestionKind kind) => isRevealed || lesson.Task.Shown.Contains(kind);
        var tellsAll = lines.All(line => Tells(line.Kind));
        return new()
        {
            Days = SheetWords.Days(answer),
            Known = ClassSheets.Known(lesson),
            Given = ClassSheets.Given(answer),
            Lines = [.. lines.Where(line => Tells(line.Kind))],
            Hidden = [.. lines.Where(line => !Tells(line.Kind)).Select(line => line.Title)],
            Answer = tellsAll ? answer : null,
            TellsBalance = Tells(QuestionKind.Balance) && Tells(QuestionKind.Stand),
            Estimates = Told(lesson, answer, isRevealed, kind => kind is { } one ? Tells(one) : tellsAll),
            Check = tellsAll && lesson.Exercise is { } exercise
                ? ExerciseSentences.Of(ExerciseCheck.Of(exercise, answer.Scenario, cancellation)) : [],
            IsHiding = !isRevealed && (!tellsAll || lesson.Asked.Any(asked => IsKey(asked))),
        };
    }

    /// <summary>What the program says of all that is asked, of the rig as it is given: for the teacher.</summary>
    /// <param name="lesson">The task, made ready.</param>
    public static IReadOnlyList<ToldEstimate> Answers(ClassLesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Told(lesson, lesson.Answer, isRevealed: true, _ => true);
    }

    private static IReadOnlyList<ToldEstimate> Told(ClassLesson lesson, RigAnswer answer, bool isRevealed,
        Func<QuestionKind?, bool> tells)
    {
        // The key of an exercise is told when everything is, and not with the questions that are open from the start.
        var key = lesson.Exercise is { } exercise && isRevealed ? ClassSheets.Key(exercise) : null;
        var known = TakeAlong.Estimates.Of(answer);
        return [.. lesson.Asked.Select(asked => new ToldEstimate(asked, IsKey(asked) ? key?.GetValueOrDefault(asked.Name)
            : tells(asked.Kind) ? known.FirstOrDefault(one => one.Name == asked.Name)?.Answer : null))];
    }

    private static bool IsKey(AskedEstimate asked) => asked.Name.StartsWith("cause-", StringComparison.Ordinal)
        || asked.Name.StartsWith("repair-", StringComparison.Ordinal);
}
