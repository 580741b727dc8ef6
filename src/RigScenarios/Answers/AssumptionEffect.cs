using RigScenarios.Batteries;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>An assumed value with what it moves.</summary>
/// <param name="Value">The value.</param>
/// <param name="Path">The field that replaces it.</param>
/// <param name="Less">Change of the reserve with the lower of the two values that were tried.</param>
/// <param name="More">Change of the reserve with the higher one.</param>
/// <param name="Low">The lower value as text.</param>
/// <param name="High">The higher value as text.</param>
public sealed record AssumptionEffect(AssumedValue Value, string Path, Duration Less, Duration More, string Low, string High)
{
    /// <summary>What it would be with the value of the two that moves more: "7 h 6 min instead of 6 h 40 min", "balance
    /// fails".</summary>
    public required string Outcome { get; init; }

    /// <summary>The value of the two that moves more, as it would stand in a file.</summary>
    public required string Tried { get; init; }

    /// <summary>Whether that value changes the verdict on a question.</summary>
    public required bool ChangesVerdict { get; init; }

    /// <summary>The greater change of the reserve, either way.</summary>
    public Duration Moves => Duration.FromSeconds(Math.Max(Math.Abs(Less.Seconds), Math.Abs(More.Seconds)));

    /// <summary>In words: "Camera A, least voltage, assumed 12 V; if it is 11 V: 7 h 6 min instead of 6 h 40 min."</summary>
    public string Words => $"{AnswerSentences.Upper(Name)}, assumed {Value.Value}; if it is {Tried}: {Outcome}.";

    // A figure of a part names its part; one of the battery's model only itself.
    private string Name => Value.Field.Contains('.', StringComparison.Ordinal) ? Value.Name : $"the battery's {Value.Name}";

    /// <summary>What another answer to the same question would say, against the first: the verdict that differs, or else how
    /// long it lasts.</summary>
    internal static string OutcomeOf(RigAnswer before, RigAnswer after)
    {
        var power = after.Of(QuestionKind.Power)!.Verdict;
        if (power != before.Of(QuestionKind.Power)!.Verdict && (power == Verdict.Fails || !before.Simulation.Completes))
            return AnswerSentences.Lasts(after);
        var other = after.Questions.FirstOrDefault(question => question.Kind != QuestionKind.Power
            && before.Of(question.Kind) is { } now && now.Verdict != question.Verdict);
        if (other is not null)
            return $"{AnswerSentences.Title(other.Kind, after.TheBuild.Stance).ToLowerInvariant()}: {other.Verdict.InWords()} "
                + $"instead of {before.Of(other.Kind)!.Verdict.InWords()}";
        return Lasting(before, after);
    }

    // One day without a clock is asked how long it runs; any other what is left, or when it stops.
    private static string Lasting(RigAnswer before, RigAnswer after)
    {
        if (before.Plan.Days is [{ Starts: null }])
            return $"{Runtime(after)} instead of {Runtime(before)}";
        if (before.Simulation.Completes && after.Simulation.Completes)
            return $"{Left(after)} left instead of {Left(before)}";
        return FirstStop(before) is { } was && FirstStop(after) is { } now
            ? $"it stops {now}, not {was}" : AnswerSentences.Lasts(after);
    }

    private static string Left(RigAnswer answer) => AnswerSentences.ReserveLeft(answer.Tightest.Reserve);

    private static string Runtime(RigAnswer answer) => (answer.Reserve.IsLowerBound ? "more than " : "")
        + AnswerTimes.Length(answer.Simulation.Runtime);

    private static string? FirstStop(RigAnswer answer) => answer.Simulation.FirstToStop?.FirstStop is { } stop
        ? new AnswerTimes(answer.Plan.Days).When(stop.At) : null;
}
