using RigScenarios.Answers;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>What the one answer says of a choice, as far as a search asks.</summary>
public sealed record RigFigures
{
    /// <summary>Why there is no answer: the parts do not make a sound rig. Null where there is one.</summary>
    public string? Refused { get; init; }

    /// <summary>The answer in one sentence; empty where there is none.</summary>
    public string Headline { get; init; } = "";

    /// <summary>The verdict; <see cref="Verdict.Fails"/> where the parts make no rig.</summary>
    public Verdict Verdict { get; init; } = Verdict.Fails;

    /// <summary>Each question of the answer in a line.</summary>
    public IReadOnlyList<QuestionLine> Questions { get; init; } = [];

    /// <summary>How long it would run on after the tightest day; below 0 where that is not reached, null where no battery gets
    /// there.</summary>
    public Duration? Reserve { get; init; }

    /// <summary>Whether it would run on for longer than that.</summary>
    public bool IsReserveLowerBound { get; init; }

    /// <summary>The part of all energy that the batteries could have given which is then left; null where the days are not
    /// reached.</summary>
    public Ratio? ReserveShare { get; init; }

    /// <summary>The limit with the least share left; null where none is known.</summary>
    public Limit? Least { get; init; }

    /// <summary>Mass of the rig without head and tripod; null where that of something on it is not known.</summary>
    public Mass? Mass { get; init; }

    /// <summary>What the airline must be asked beforehand, in a sentence; empty where nothing, or where flying is not
    /// asked.</summary>
    public string AskFirst { get; init; } = "";

    /// <summary>For each must, in the order of <see cref="RigMust"/>, why it does not hold; empty where it does. A must that is
    /// not asked holds.</summary>
    public required IReadOnlyList<string> Failing { get; init; }

    /// <summary>For each must, in the order of <see cref="RigMust"/>, how far it is from holding: 0 where it does or is not told
    /// here, infinity where the parts make no rig. Good for comparing choices of one question, and for nothing else.</summary>
    internal IReadOnlyList<double> Shortfalls { get; init; } = [];

    /// <summary>Whether a must holds.</summary>
    /// <param name="must">The must.</param>
    public bool Holds(RigMust must) => Failing[(int)must].Length == 0;
}

/// <summary>What can be asked of a choice, in the order in which it is told.</summary>
public enum RigMust
{
    /// <summary>The parts make a rig that can be wired and put together.</summary>
    Fits,

    /// <summary>It lasts the days.</summary>
    Lasts,

    /// <summary>Its batteries fly in the cabin.</summary>
    Flies,

    /// <summary>It balances.</summary>
    Balances,

    /// <summary>No limit is passed.</summary>
    Holds,

    /// <summary>It weighs no more than is wanted.</summary>
    Mass,

    /// <summary>It costs no more than the budget.</summary>
    Budget,
}
