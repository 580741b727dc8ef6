using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What an answer is asked with.</summary>
public sealed record AnswerOptions
{
    /// <summary>The reserve that is wished after the last block; less of it is "close". Null for no wish.</summary>
    public Duration? Wish { get; init; }

    /// <summary>The day on which it is asked: a journey without a date is meant for it, and the life of a battery goes until it
    /// where it names no other. Null leaves such lives without an end, and such journeys to the first day of the edition of
    /// the rules that is held.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>Whether every battery is taken to be there on the days, whatever the journeys before them leave behind: to see
    /// what that costs.</summary>
    public bool EverythingArrives { get; init; }

    /// <summary>The number of points that the series keeps, about; 0 for none.</summary>
    public int SeriesPoints { get; init; } = 400;

    /// <summary>Whether it is also looked what rest or warmth would give back to a battery that stopped in the cold, and how far
    /// the time hangs on the batteries' own heat: for answers that people read.</summary>
    public bool FollowsUp { get; init; } = true;

    /// <summary>End results only: for sweeps and searches. The figures are the same.</summary>
    public static AnswerOptions EndOnly { get; } = new() { SeriesPoints = 0 };
}
