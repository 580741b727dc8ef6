using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>How a build's day on one battery went.</summary>
public sealed record DayResult
{
    /// <summary>The length of the planned day.</summary>
    public required Duration Planned { get; init; }

    /// <summary>
    /// How long the build runs: until its first essential device stops, or the battery ends. A build that survives the day begins the same
    /// day again, so that this is longer than the day.
    /// </summary>
    public required Duration Runtime { get; init; }

    /// <summary>Whether <see cref="Runtime"/> is only a lower bound, because the run was given up after many days.</summary>
    public required bool RuntimeIsLowerBound { get; init; }

    /// <summary>Runtime less planned length: negative where the day is not reached.</summary>
    public Duration Margin => Runtime - Planned;

    /// <summary>Whether the build runs to the end of the planned day.</summary>
    public bool ReachesEnd => Margin.Seconds >= -1e-6;

    /// <summary>Why <see cref="Runtime"/> ended, in words: "voltage cut-off", "empty", "drop-out of camera", …</summary>
    public required string EndCause { get; init; }

    /// <summary>The pack's own end cause; null if a drop-out ended the runtime.</summary>
    public required EndCause? PackEndCause { get; init; }

    /// <summary>The short name of the block in which the runtime ended.</summary>
    public required string EndBlock { get; init; }

    /// <summary>Each device with the time at which it stopped, in the order of the build.</summary>
    public required IReadOnlyList<DeviceStop> Devices { get; init; }

    /// <summary>The blocks of the planned day with their times.</summary>
    public required IReadOnlyList<BlockSpan> Blocks { get; init; }

    /// <summary>The planned day as a series of moments; it stops where the run stops. Empty if none was asked for.</summary>
    public required IReadOnlyList<DischargePoint> Series { get; init; }

    /// <summary>The charge left at the end of the planned day, or where the run stopped before.</summary>
    public required Ratio ChargeLeft { get; init; }

    /// <summary>Energy that the pack delivered within the planned day.</summary>
    public required Energy Delivered { get; init; }

    /// <summary>The limits that this build comes near, closest first.</summary>
    public required IReadOnlyList<LimitMargin> Margins { get; init; }

    /// <summary>Every default that stands in for something not known.</summary>
    public required IReadOnlyList<AssumedValue> Assumed { get; init; }

    /// <summary>The battery's temperature at its coldest within the planned day.</summary>
    public required Temperature ColdestBattery { get; init; }

    /// <summary>How far off the runtime may be, as a share, and why.</summary>
    public required ExpectedError ExpectedError { get; init; }
}

/// <summary>When a device stopped.</summary>
/// <param name="Device">Its name in the kit.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Essential">Whether the build is of no use without it.</param>
/// <param name="Runtime">The time from the start of the day until it stopped for good.</param>
/// <param name="Cause">Why, in words.</param>
public sealed record DeviceStop(string Device, string Title, bool Essential, Duration Runtime, string Cause);

/// <summary>A block of the planned day with its times from the start.</summary>
/// <param name="Block">Its short name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Demand">The power that the pack must deliver in it, with everything running; the mean where takes and resets alternate.</param>
public sealed record BlockSpan(string Block, string Title, Duration Start, Duration End, Power Demand);

/// <summary>A limit with the worst load on it.</summary>
/// <param name="Limit">What is limited, in words.</param>
/// <param name="Worst">The worst value of the day, with its unit.</param>
/// <param name="Allowed">The limit, with its unit.</param>
/// <param name="Margin">What is left, as a share of the limit; negative where it is passed.</param>
/// <param name="Source">What the limit rests on.</param>
public sealed record LimitMargin(string Limit, string Worst, string Allowed, Ratio Margin, string Source);
