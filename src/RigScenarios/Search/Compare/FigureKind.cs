namespace RigScenarios.Search.Compare;

/// <summary>The figures that stand side by side, in the order in which they are told. A new one is a line here, a type that says
/// what it is, and a line of words.</summary>
public enum FigureKind
{
    /// <summary>How long the essential devices would run on after the last block; below zero how much is missing.</summary>
    Reserve,

    /// <summary>What is left to the wiring's nearest limit, as a share of what is allowed.</summary>
    WiringLeft,

    /// <summary>The same of head, shoulder or hand.</summary>
    BalanceLeft,

    /// <summary>The same of tripod and joints.</summary>
    StandLeft,

    /// <summary>Mass of the rig, without head and tripod.</summary>
    Mass,

    /// <summary>What all devices take at their inlets while they record, with what plate, regulators and
    /// splitters take for themselves.</summary>
    Draw,

    /// <summary>Moment of the rig about the zero point of its frame, nose down positive.</summary>
    Moment,

    /// <summary>The centre of gravity, forward of the zero point of the rig's frame.</summary>
    CentreForward,

    /// <summary>The centre of gravity, above the zero point of the rig's frame.</summary>
    CentreUp,

    /// <summary>What is still to be paid for the build and its days, bought and rented.</summary>
    Cost,
}

/// <summary>Which way a figure is wanted.</summary>
public enum FigureGoal
{
    /// <summary>The larger the better.</summary>
    Large,

    /// <summary>The smaller the better.</summary>
    Small,

    /// <summary>Neither is better by itself.</summary>
    Neither,
}
