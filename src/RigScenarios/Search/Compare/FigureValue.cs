namespace RigScenarios.Search.Compare;

/// <summary>A figure of one rig.</summary>
/// <param name="Amount">The figure; null where it is not known.</param>
public sealed record FigureValue(FigureAmount? Amount)
{
    /// <summary>Whether it is at least that: something of it has no figure, or nobody waited for its end.</summary>
    public bool IsAtLeast { get; init; }

    /// <summary>Why it is not known, or why it is only a least figure, as a clause; empty where it is known.</summary>
    public string Missing { get; init; } = "";

    /// <summary>What it rests on, for a margin: its limit in words; empty for other figures.</summary>
    public string RestsOn { get; init; } = "";

    internal double? Number => Amount?.Number;

    internal static FigureValue NotKnown(string why) => new((FigureAmount?)null) { Missing = why };
}

/// <summary>How a rig's figure stands to that of the base.</summary>
public enum Standing
{
    /// <summary>Better, by more than both figures may be off.</summary>
    Better,

    /// <summary>Worse, by more than both figures may be off.</summary>
    Worse,

    /// <summary>Different, where neither way is better.</summary>
    Different,

    /// <summary>The same, or different by no more than the figures may be off: no difference that the prediction can
    /// tell.</summary>
    NoneToTell,

    /// <summary>One of both figures is not known, or they can't be compared.</summary>
    NotKnown,
}

/// <summary>A figure of a rig against that of the base.</summary>
public sealed record FigureDifference
{
    /// <summary>The rig's figure less the base's, in the figure's unit; null where one is not known.</summary>
    public FigureAmount? Amount { get; init; }

    /// <summary>Whether the difference is at least that large, because one of both figures has no end.</summary>
    public bool IsAtLeast { get; init; }

    /// <summary>How far off the difference may be, either way: the stated errors of both figures, what they share left out. Null
    /// where the difference is not known.</summary>
    public FigureAmount? Within { get; init; }

    /// <summary>How it stands.</summary>
    public required Standing Standing { get; init; }

    /// <summary>Why nothing can be said, as a clause; empty where something can.</summary>
    public string Missing { get; init; } = "";

    /// <summary>What the difference comes from; null where there is none to tell, or nobody asked.</summary>
    public DifferenceSplit? Split { get; init; }
}

/// <summary>How a difference was split among what changed.</summary>
public enum SplitWay
{
    /// <summary>The figure is a sum over parts, and so is the difference: exact.</summary>
    Sum,

    /// <summary>Only one thing changed, so that all of it is its doing.</summary>
    OnlyChange,

    /// <summary>The mean over all orders of making the changes one after the other; each set of them was run.</summary>
    OrderFreeMean,

    /// <summary>What is lost when one change is left out: some sets of changes make no rig that can be run.</summary>
    LeaveOneOut,

    /// <summary>Not split: <see cref="DifferenceSplit.Missing"/> says why.</summary>
    None,
}

/// <summary>What a difference comes from.</summary>
/// <param name="Way">How it was split.</param>
/// <param name="Shares">The shares, the largest first; those of nothing are left out.</param>
public sealed record DifferenceSplit(SplitWay Way, IReadOnlyList<DifferenceShare> Shares)
{
    /// <summary>What the shares leave over, where they need not add up: it comes from changes acting together. Null where
    /// nothing is left over.</summary>
    public FigureAmount? Together { get; init; }

    /// <summary>Why it was not split, as a clause; empty where it was.</summary>
    public string Missing { get; init; } = "";
}

/// <summary>A part of a difference.</summary>
/// <param name="Name">What it comes from, in words.</param>
/// <param name="Amount">How much of it, in the figure's unit.</param>
public sealed record DifferenceShare(string Name, FigureAmount Amount);
