using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>How a build's day on one battery went.</summary>
public sealed record DayResult
{
    /// <summary>The length of the planned day.</summary>
    public required Duration Planned { get; init; }

    /// <summary>
    /// How long the build runs: until its first essential device stops, or the battery ends. A build that survives the day begins
    /// the same
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
    public required IReadOnlyList<DayDeviceStop> Devices { get; init; }

    /// <summary>The blocks of the planned day with their times.</summary>
    public required IReadOnlyList<DayBlockSpan> Blocks { get; init; }

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

    internal static DayResult From(PoweredBuild powered, SimulationResult result)
    {
        var (start, end) = (result.Days[0].Start, result.Days[^1].End);
        var essential = result.Devices.Values.Where(device => device.Essential && device.FirstStop is not null)
            .MinBy(device => device.FirstStop!.At.Seconds)?.FirstStop;
        var why = essential?.Reason ?? result.Reserve.Ends;
        return new DayResult
        {
            Planned = end - start,
            Runtime = result.Runtime,
            RuntimeIsLowerBound = result.Reserve.IsLowerBound,
            EndCause = why?.ToString() ?? "still running after 10 such days",
            PackEndCause = why?.Kind switch
            {
                StopKind.VoltageCutoff => Batteries.EndCause.VoltageCutoff, StopKind.Empty =>
                    Batteries.EndCause.Empty, StopKind.PowerLimit => Batteries.EndCause.PowerLimit,
                StopKind.OverCurrent => Batteries.EndCause.OverCurrent, StopKind.OverTemperature =>
                    Batteries.EndCause.OverTemperature, _ => null,
            },
            EndBlock = essential?.Block ?? result.Blocks[^1].Block,
            Devices = [.. result.Devices.Select(item => new DayDeviceStop(
                item.Key, item.Value.Title, item.Value.Essential, item.Value.FirstStop is null
                    ? result.Runtime : item.Value.Runtime,
                (item.Value.FirstStop?.Reason ?? result.Reserve.Ends)?.ToString() ?? "still running after 10 such days"))],
            Blocks = [.. result.Blocks.Select(block => new DayBlockSpan(block.Block, block.Title, block.Start - start,
                block.End - start, block.Demand))],
            Series = [.. result.Series.Select(point => new DischargePoint(point.Time - start, point.Voltage, point.Current,
                point.Power, point.StateOfCharge, point.Temperature))],
            ChargeLeft = result.Batteries.Values.First().ChargeLeft,
            Delivered = result.FromPacks,
            Margins = [.. result.Limits.Where(limit => limit.Case == LoadCase.Steady
                && limit.Kind is LimitKind.Current or LimitKind.OutputCurrent or LimitKind.Temperature)
                .Select(limit => new LimitMargin($"{limit.Kind} of {limit.Element}", $"{limit.Worst:0.0}", $"{limit.Allowed:0.0}",
                    Ratio.FromDecimalFractions(limit.Share ?? 0).ToUnit(UnitsNet.Units.RatioUnit.Percent), limit.Basis.Source))],
            Assumed = result.Assumed.Values.First(),
            ColdestBattery = result.ColdestBattery,
            ExpectedError = result.ExpectedError,
        };
    }
}

/// <summary>How much of a day is kept.</summary>
/// <param name="SeriesPoints">The number of moments that are kept, about; 0 for none.</param>
public sealed record DayRunOptions(int SeriesPoints = 1200)
{
    /// <summary>End results only: for sweeps.</summary>
    public static DayRunOptions EndOnly { get; } = new(SeriesPoints: 0);
}

/// <summary>When a device stopped.</summary>
/// <param name="Device">Its name in the kit.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Essential">Whether the build is of no use without it.</param>
/// <param name="Runtime">The time from the start of the day until it stopped for good.</param>
/// <param name="Cause">Why, in words.</param>
public sealed record DayDeviceStop(string Device, string Title, bool Essential, Duration Runtime, string Cause);

/// <summary>A block of the planned day with its times from the start.</summary>
/// <param name="Block">Its short name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Demand">The power that the pack must deliver in it, with everything running; the mean where takes and resets
/// alternate.</param>
public sealed record DayBlockSpan(string Block, string Title, Duration Start, Duration End, Power Demand);

/// <summary>A limit with the worst load on it.</summary>
/// <param name="Limit">What is limited, in words.</param>
/// <param name="Worst">The worst value of the day, with its unit.</param>
/// <param name="Allowed">The limit, with its unit.</param>
/// <param name="Margin">What is left, as a share of the limit; negative where it is passed.</param>
/// <param name="Source">What the limit rests on.</param>
public sealed record LimitMargin(string Limit, string Worst, string Allowed, Ratio Margin, string Source);
