using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>How a pack's run through its wiring went, and what ended it.</summary>
public sealed record WiringResult
{
    /// <summary>From the start of the run to its end.</summary>
    public required Duration EndTime { get; init; }

    /// <summary>The pack's own end cause, or the time limit; null if the last essential device stopped.</summary>
    public required EndCause? PackEndCause { get; init; }

    /// <summary>The element that stopped the last essential device; null if none did.</summary>
    public required string? EndedBy { get; init; }

    /// <summary>What ended the run, in words: "voltage cut-off", "drop-out of camera", …</summary>
    public string EndCause => EndedBy is { } element ? $"drop-out of {element}" : PackEndCause!.Value.InWords();

    /// <summary>True where the run ended right after a block began, or at the start.</summary>
    public required bool AtStep { get; init; }

    /// <summary>Blocks that were finished before the end.</summary>
    public required int BlocksFinished { get; init; }

    /// <summary>The state at the end.</summary>
    public required DischargeStart FinalState { get; init; }

    /// <summary>Voltage of the pack's terminals at the end, with the element still running that dropped out; null for a power limit right after a block began.</summary>
    public required ElectricPotential? EndVoltage { get; init; }

    /// <summary>The stop of the first essential device; <see cref="EndTime"/> if none stopped before.</summary>
    public required Duration BuildRuntime { get; init; }

    /// <summary>Each device with its stop, by name.</summary>
    public required OrderedMap<WiringStop> Devices { get; init; }

    /// <summary>What dropped out by itself, in order.</summary>
    public required IReadOnlyList<DropOut> DropOuts { get; init; }

    /// <summary>The largest loads of each element, by name.</summary>
    public required OrderedMap<ElementLoad> Loads { get; init; }

    /// <summary>What is left to each limit, least first (docs/wiring.md, "Margins").</summary>
    public required IReadOnlyList<WiringMargin> Margins { get; init; }

    /// <summary>Points over time at the pack's terminals, as many as the options allow for each stretch between two drop-outs.</summary>
    public required IReadOnlyList<DischargePoint> Series { get; init; }
}

/// <summary>When a device stopped.</summary>
/// <param name="At">From the start of the run.</param>
/// <param name="Because">The element that stopped it, itself or one above it; null if it ran, or was off, to the end of the run.</param>
public sealed record WiringStop(Duration At, string? Because);

/// <summary>An element that stopped for want of voltage.</summary>
/// <param name="Element">Its name.</param>
/// <param name="At">From the start of the run.</param>
/// <param name="RightAfterChange">True where it was short right after a block began, or at the start.</param>
public sealed record DropOut(string Element, Duration At, bool RightAfterChange);

/// <summary>The largest loads of an element over a run.</summary>
/// <param name="Current">Largest current into it.</param>
/// <param name="At">When that is first reached.</param>
/// <param name="OutputCurrent">Largest current out of it; regulators only.</param>
/// <param name="OutputAt">When that is first reached; regulators only.</param>
/// <param name="LowestInlet">Lowest voltage at its inlet while it was held against its minimum; null if it has none, or never was.</param>
/// <param name="LowestAt">When that is first reached.</param>
public sealed record ElementLoad(
    ElectricCurrent Current, Duration At, ElectricCurrent? OutputCurrent, Duration? OutputAt, ElectricPotential? LowestInlet, Duration? LowestAt);

/// <summary>What is left to one limit.</summary>
/// <param name="Element">Name of the element; "pack" for the pack.</param>
/// <param name="Limit">What is limited, in words.</param>
/// <param name="Worst">The worst value of the run, with its unit.</param>
/// <param name="Allowed">The limit, with its unit.</param>
/// <param name="Margin">What is left as a share of the limit; negative where it is passed.</param>
/// <param name="At">The worst moment, from the start of the run.</param>
/// <param name="Remedy">What would widen the margin, in words.</param>
public sealed record WiringMargin(string Element, string Limit, string Worst, string Allowed, Ratio Margin, Duration At, string Remedy);
