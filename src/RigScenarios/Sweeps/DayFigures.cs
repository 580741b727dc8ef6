using RigScenarios.Simulation;

namespace RigScenarios.Sweeps;

/// <summary>What a table tells of the days of one scenario: the one definition of these figures for every kind of sweep and every
/// way through it. What is null is not known.</summary>
internal sealed record DayFigures
{
    /// <summary>Whether every essential device ran whenever it was asked for, planned swaps aside.</summary>
    public required bool Lasts { get; init; }

    /// <summary>From the first block to the first unplanned stop of an essential device, or through the reserve, h.</summary>
    public double? Runtime { get; init; }

    /// <summary>The moment at which that ends, h from midnight of the first day.</summary>
    public double? EndsAt { get; init; }

    /// <summary>How long the essential devices would run on after the last block; below zero what is missing, h.</summary>
    public double? Reserve { get; init; }

    /// <summary>Whether they still ran when the run was given up.</summary>
    public bool? ReserveIsLowerBound { get; init; }

    /// <summary>Why the runtime ends; null where it was given up.</summary>
    public string? StoppedBy { get; init; }

    /// <summary>The block in which it stops; null where the days are lasted.</summary>
    public string? StoppedIn { get; init; }

    /// <summary>Energy that the rig took from the batteries, Wh.</summary>
    public double? FromBatteries { get; init; }

    /// <summary>What is left in all batteries at the end, Wh at their open-circuit voltage.</summary>
    public double? EnergyLeft { get; init; }

    /// <summary>Temperature of the battery that was coldest, °C.</summary>
    public double? Coldest { get; init; }

    /// <summary>Where no battery gets to the days: they are not lasted, and of the rest nothing is known.</summary>
    public static DayFigures NothingArrives { get; } = new() { Lasts = false };

    /// <summary>The figures of days that were simulated.</summary>
    /// <param name="result">How they went.</param>
    public static DayFigures Of(SimulationResult result) => new()
    {
        Lasts = result.Completes,
        Runtime = result.Runtime.Hours,
        EndsAt = (result.Days[0].Start + result.Runtime).Hours,
        Reserve = result.Reserve.Time.Hours,
        ReserveIsLowerBound = result.Reserve.IsLowerBound,
        StoppedBy = SweptDays.Ends(result)?.ToString(),
        StoppedIn = SweptDays.FirstStop(result)?.Block,
        FromBatteries = result.FromPacks.WattHours,
        EnergyLeft = result.EnergyLeft.WattHours,
        Coldest = result.ColdestBattery.DegreesCelsius,
    };
}
