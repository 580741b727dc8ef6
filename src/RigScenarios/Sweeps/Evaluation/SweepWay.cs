using UnitsNet;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>Which of the program's computations a sweep goes through.</summary>
public enum SweepWayKind
{
    /// <summary>Many discharges at a time, the wiring reduced to a formula at the battery's terminals.</summary>
    Batch,

    /// <summary>The simulation of the days, scenario by scenario.</summary>
    Simulation,

    /// <summary>The whole answer, scenario by scenario.</summary>
    Answer,

    /// <summary>The rig at rest, its journeys and its cost, scenario by scenario: no day is run.</summary>
    AtRest,
}

/// <summary>The way that a sweep goes, and why. It is chosen for all of a sweep, whatever part of it is run; of a batch the few
/// scenarios that it does not tell for certain are simulated.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Reason">Why, as a sentence: what lets it go the quick way, or what stands against that.</param>
public sealed record SweepWay(SweepWayKind Kind, string Reason)
{
    /// <summary>By how much the current of the reduced wiring differs from that of the wiring itself at most, over the battery's
    /// voltages, as a share; null where nothing was reduced.</summary>
    public Ratio? ReductionError { get; init; }
}
