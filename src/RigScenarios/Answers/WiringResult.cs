using RigScenarios.Batteries;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>One moment of a day, with voltages and currents everywhere.</summary>
public sealed record WiringMoment(Duration At, int Block, OperatingPoint Point, IReadOnlyList<string> Stopped, Ratio Charge,
    Temperature Pack);

/// <summary>When a device stopped.</summary>
public sealed record WiringStop(Duration At, string? Because);

/// <summary>How the wiring's day went.</summary>
public sealed record WiringResult
{
    /// <summary>From the start to the end.</summary>
    public required Duration EndTime { get; init; }

    /// <summary>The battery's own end cause.</summary>
    public required EndCause? PackEndCause { get; init; }

    /// <summary>The element that stopped the rig.</summary>
    public required string? EndedBy { get; init; }

    /// <summary>What ended it, in words.</summary>
    public required string EndCause { get; init; }

    /// <summary>The stop of the first essential device.</summary>
    public required Duration BuildRuntime { get; init; }

    /// <summary>Each device with its stop.</summary>
    public required OrderedMap<WiringStop> Devices { get; init; }

    /// <summary>What dropped out.</summary>
    public required IReadOnlyList<DropOut> DropOuts { get; init; }

    /// <summary>Charge at the end.</summary>
    public required Ratio Charge { get; init; }

    /// <summary>The limits.</summary>
    public required IReadOnlyList<Limit> Limits { get; init; }

    internal static WiringResult From(SimulationResult result)
    {
        var (start, end) = (result.Days[0].Start, result.Days[^1].End);
        var rig = result.FirstStop;
        return new WiringResult
        {
            EndTime = (rig?.At ?? end) - start,
            PackEndCause = rig is null ? Batteries.EndCause.TimeLimit : rig.Reason.Kind switch
            {
                StopKind.VoltageCutoff => Batteries.EndCause.VoltageCutoff, StopKind.Empty =>
                    Batteries.EndCause.Empty, StopKind.PowerLimit => Batteries.EndCause.PowerLimit,
                StopKind.OverCurrent => Batteries.EndCause.OverCurrent, StopKind.OverTemperature =>
                    Batteries.EndCause.OverTemperature, _ => null,
            },
            EndedBy = rig?.Reason is { Kind: StopKind.ShortOfVoltage } shortOf ? shortOf.Element : null,
            EndCause = rig?.Reason.ToString() ?? "time limit",
            BuildRuntime = result.Devices.Values.Where(device => device.Essential).Select(device => device.Runtime)
                .Append((rig?.At ?? end) - start).MinBy(time => time.Seconds),
            Devices = new(result.Devices.Select(item => KeyValuePair.Create(item.Key,
                new WiringStop(item.Value.Runtime, item.Value.FirstStop?.Reason.Element)))),
            DropOuts = [.. result.DropOuts.Select(drop => drop with { At = drop.At - start })],
            Charge = rig?.Charge ?? result.Batteries.Values.First().ChargeLeft,
            Limits = result.Limits,
        };
    }
}
