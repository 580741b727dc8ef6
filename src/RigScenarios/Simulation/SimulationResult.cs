using RigScenarios.Batteries;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>A stretch of time in which a battery is at one place; times from midnight of the first day.</summary>
/// <param name="Place">Where it is.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="ChargeAtStart">Charge at the begin.</param>
/// <param name="ChargeAtEnd">Charge at the end.</param>
/// <param name="TemperatureAtStart">Its own temperature at the begin.</param>
/// <param name="TemperatureAtEnd">Its own temperature at the end.</param>
public sealed record BatterySpan(
    BatteryPlace Place, Duration Start, Duration End, Ratio ChargeAtStart, Ratio ChargeAtEnd, Temperature TemperatureAtStart,
    Temperature TemperatureAtEnd);

/// <summary>The charge of a battery at a time.</summary>
/// <param name="Time">From midnight of the first day.</param>
/// <param name="Charge">Charge, 0…1.</param>
public sealed record ChargePoint(Duration Time, Ratio Charge);

/// <summary>One battery over all the days.</summary>
public sealed record BatteryTimeline
{
    /// <summary>Where it was, one after the other without gaps.</summary>
    public required IReadOnlyList<BatterySpan> Spans { get; init; }

    /// <summary>Its charge over time: a point wherever something happens, and on the way of a charge; straight lines between
    /// them.</summary>
    public required IReadOnlyList<ChargePoint> Charges { get; init; }

    /// <summary>Charge at the end.</summary>
    public required Ratio ChargeLeft { get; init; }

    /// <summary>Energy that it delivered to the rig.</summary>
    public required Energy Delivered { get; init; }

    /// <summary>Energy that chargers put into it.</summary>
    public required Energy Charged { get; init; }

    /// <summary>Energy that chargers took from the wall for it.</summary>
    public required Energy FromWall { get; init; }

    /// <summary>Charge out of its terminals.</summary>
    public required ElectricCharge ChargeOut { get; init; }

    /// <summary>Charge into its terminals.</summary>
    public required ElectricCharge ChargeIn { get; init; }

    /// <summary>Part of the capacity that went by itself while it rested.</summary>
    public required Ratio SelfDischarge { get; init; }

    /// <summary>Energy that became heat in it.</summary>
    public required Energy Heat { get; init; }

    /// <summary>Change of the energy stored in its cells by charge and discharge, at their open-circuit voltage.</summary>
    public required Energy Stored { get; init; }
}

/// <summary>What a device does.</summary>
public enum DeviceActivity
{
    /// <summary>It is not asked for.</summary>
    Off,

    /// <summary>It runs.</summary>
    Up,

    /// <summary>It runs on the battery inside it.</summary>
    OnOwnBattery,

    /// <summary>It is asked for and does not run.</summary>
    Down,
}

/// <summary>A stretch of time in which a device does one thing; times from midnight of the first day.</summary>
/// <param name="Activity">What it does.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Reason">Why it stopped, if it is down: the first reason since it last ran; null if it is not down.</param>
/// <param name="Awaits"><see cref="StopKind.NothingLeft"/> or <see cref="StopKind.WaitingForCharge"/> while no battery is on the
/// rig and none is coming; null otherwise.</param>
public sealed record DeviceSpan(DeviceActivity Activity, Duration Start, Duration End, StopReason? Reason, StopKind? Awaits)
{
    /// <summary>Whether it is down for nothing but a planned swap and the restart after it.</summary>
    public bool IsPlanned => Reason is { Kind: StopKind.PlannedSwap } && Awaits is null;
}

/// <summary>The first stop of a device that nobody planned.</summary>
/// <param name="At">When.</param>
/// <param name="Reason">Why.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block.</param>
public sealed record DeviceStop(Duration At, StopReason Reason, int Day, string Block);

/// <summary>The moment at which the rig stopped for the first time.</summary>
/// <param name="At">When.</param>
/// <param name="Reason">Why.</param>
/// <param name="RightAfterChange">Whether that held right after a change of what is drawn.</param>
/// <param name="Charge">Charge of the battery on it.</param>
/// <param name="Temperature">Temperature of that battery.</param>
/// <param name="Voltage">Its terminal voltage, with what stops still running; null where nothing could be delivered.</param>
public sealed record RigStop(Duration At, StopReason Reason, bool RightAfterChange, Ratio Charge, Temperature Temperature,
    ElectricPotential? Voltage)
{
    /// <summary>Short name of the battery on it.</summary>
    public required string Battery { get; init; }

    /// <summary>The state of that battery, from which it could rest or run on.</summary>
    public required DischargeStart State { get; init; }
}

/// <summary>An element of the wiring that stopped for want of voltage.</summary>
/// <param name="Element">Its name.</param>
/// <param name="At">When.</param>
/// <param name="RightAfterChange">True where it was short right after a block, a take or a reset began.</param>
public sealed record DropOut(string Element, Duration At, bool RightAfterChange);

/// <summary>
/// How much longer it would have gone: after the last block the last day is begun again with the batteries as they stand, the air
/// as it was at the end, and
/// no charging.
/// </summary>
/// <param name="Time">How long the essential devices then run; where they did not last: minus the time from their first stop to
/// the end of the last block in which it was wanted.</param>
/// <param name="IsLowerBound">Whether they still ran when the run was given up.</param>
/// <param name="Energy">Energy that the batteries deliver meanwhile; none where the end was not reached.</param>
/// <param name="Ends">Why it ends; null where the end was not reached, or it was given up.</param>
public sealed record Reserve(Duration Time, bool IsLowerBound, Energy Energy, StopReason? Ends)
{
    /// <summary>A reserve is not looked for beyond this.</summary>
    public static readonly Duration Longest = Duration.FromDays(10);
}

/// <summary>A block of the days; times from midnight of the first day.</summary>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Its short name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Demand">The power that the battery must deliver in it at its nominal voltage, with everything running; the mean
/// where takes and resets alternate.</param>
public sealed record BlockSpan(int Day, string Block, string Title, Duration Start, Duration End, Power Demand);


/// <summary>One device over all the days.</summary>
/// <param name="Title">Its name for people.</param>
/// <param name="Essential">Whether the build is of no use without it.</param>
/// <param name="Spans">What it did, one after the other.</param>
/// <param name="FirstStop">Its first stop that nobody planned; null if there was none.</param>
/// <param name="Runtime">From the first block to that stop; to the end of the last day if there was none.</param>
public sealed record DeviceTimeline(string Title, bool Essential, IReadOnlyList<DeviceSpan> Spans, DeviceStop? FirstStop,
    Duration Runtime);

/// <summary>A time in which an essential device was down; times from midnight of the first day.</summary>
/// <param name="Device">Its name in the kit.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Reason">Why it stopped.</param>
/// <param name="Awaits">What was waited for, where no battery was on the rig and none was coming; null otherwise.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block in which it began.</param>
/// <param name="InTake">Whether the camera rolled when it began.</param>
public sealed record DownTime(string Device, Duration Start, Duration End, StopReason Reason, StopKind? Awaits, int Day,
    string Block, bool InTake)
{
    /// <summary>Whether it is nothing but a planned swap and the restart after it.</summary>
    public bool IsPlanned => Reason.Kind == StopKind.PlannedSwap && Awaits is null;
}

/// <summary>A swap; times from midnight of the first day.</summary>
/// <param name="Time">When it began.</param>
/// <param name="Off">The battery that came off; null if none was there.</param>
/// <param name="On">The battery that went on.</param>
/// <param name="ChargeOff">Charge of the one that came off.</param>
/// <param name="ChargeOn">Charge of the one that went on.</param>
/// <param name="Forced">Whether the rig had stopped before.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block.</param>
public sealed record Swap(Duration Time, string? Off, string On, Ratio? ChargeOff, Ratio ChargeOn, bool Forced,
    int Day, string Block);

/// <summary>What one of the days began and ended with.</summary>
/// <param name="Number">Number of the day, from 1.</param>
/// <param name="Start">Begin of its first block, from midnight of the first day.</param>
/// <param name="End">End of its last block.</param>
/// <param name="ChargeAtStart">Charge of each battery at its begin.</param>
/// <param name="ChargeAtEnd">Charge of each battery at its end.</param>
/// <param name="FromPacks">Energy that the rig took from the batteries.</param>
/// <param name="FromWall">Energy that chargers took from the wall, also in the night after it.</param>
/// <param name="Completes">Whether every essential device ran whenever it was asked for, but for planned swaps.</param>
public sealed record DayOutcome(
    int Number, Duration Start, Duration End, OrderedMap<Ratio> ChargeAtStart, OrderedMap<Ratio> ChargeAtEnd, Energy FromPacks,
    Energy FromWall, bool Completes);

/// <summary>How the days went.</summary>
public sealed record SimulationResult
{
    /// <summary>Whether a device was wanted at any time between two.</summary>
    internal bool WasWanted(string device, Duration from, Duration to)
    {
        // Spans stand in the order of time, and in a day of short takes there are tens of thousands of them.
        var spans = Devices[device].Spans;
        for (var i = SortedPlace.CountWhile(spans.Count, at => spans[at].End <= from); i < spans.Count
            && spans[i].Start < to; i++)
        {
            if (spans[i].Activity != DeviceActivity.Off)
                return true;
        }

        return false;
    }

    /// <summary>Whether every essential device ran whenever it was asked for, but for planned swaps and the restarts after
    /// them.</summary>
    public bool Completes => Days.All(day => day.Completes);

    /// <summary>The batteries, in the order of the plan.</summary>
    public required OrderedMap<BatteryTimeline> Batteries { get; init; }

    /// <summary>The small pack that carries the rig through swaps; null if there is none.</summary>
    public BatteryTimeline? HotSwap { get; init; }

    /// <summary>The devices, in the order of the build.</summary>
    public required OrderedMap<DeviceTimeline> Devices { get; init; }

    /// <summary>The essential device that stops first, planned swaps aside; null where none does.</summary>
    public DeviceTimeline? FirstToStop => Devices.Values.Where(device => device is { Essential: true, FirstStop: not null })
        .MinBy(device => device.FirstStop!.At.Seconds);

    /// <summary>Times in which an essential device was down, in order.</summary>
    public required IReadOnlyList<DownTime> DownTimes { get; init; }

    /// <summary>The swaps, in order; batteries put on before a day begins are none.</summary>
    public required IReadOnlyList<Swap> Swaps { get; init; }

    /// <summary>Day by day.</summary>
    public required IReadOnlyList<DayOutcome> Days { get; init; }

    /// <summary>The least charge of a battery that came off in a swap; null if there was none.</summary>
    public required Ratio? LeastChargeAtSwap { get; init; }

    /// <summary>Charge left at the end in all batteries together, as energy at their open-circuit voltage.</summary>
    public required Energy EnergyLeft { get; init; }

    /// <summary>Energy that the rig took from the batteries.</summary>
    public required Energy FromPacks { get; init; }

    /// <summary>Energy that the chargers took from the wall.</summary>
    public required Energy FromWall { get; init; }

    /// <summary>From the first block to the first unplanned stop of an essential device; to the end of the last day and through
    /// the reserve if there is none.</summary>
    public required Duration Runtime { get; init; }

    /// <summary>How much longer it would have gone.</summary>
    public required Reserve Reserve { get; init; }

    /// <summary>The moment at which the rig stopped for the first time; null if it never did.</summary>
    public required RigStop? FirstStop { get; init; }

    /// <summary>What dropped out by itself, in order.</summary>
    public required IReadOnlyList<DropOut> DropOuts { get; init; }

    /// <summary>The limits of wiring and battery with the worst against each, the one with the least left first; empty if they
    /// were not kept.</summary>
    public required IReadOnlyList<Limit> Limits { get; init; }

    /// <summary>The largest loads of each element of the wiring, by name; empty if they were not kept.</summary>
    public required OrderedMap<ElementLoad> Loads { get; init; }

    /// <summary>Points over time, two at each change; empty if none were kept.</summary>
    public required IReadOnlyList<SeriesPoint> Series { get; init; }

    /// <summary>The blocks of all days, in order.</summary>
    public required IReadOnlyList<BlockSpan> Blocks { get; init; }

    /// <summary>The stretches of work: blocks, and in blocks that repeat takes the takes and resets.</summary>
    public required IReadOnlyList<PlannedStretch> Stretches { get; init; }

    /// <summary>The wiring.</summary>
    public required WiringNetwork Network { get; init; }

    /// <summary>Temperature of the battery that was coldest.</summary>
    public required Temperature ColdestBattery { get; init; }

    /// <summary>Every default that stands in for something not known, by battery.</summary>
    public required OrderedMap<IReadOnlyList<AssumedValue>> Assumed { get; init; }

    /// <summary>How far off runtimes may be, as a share, and why.</summary>
    public required ExpectedError ExpectedError { get; init; }
}
