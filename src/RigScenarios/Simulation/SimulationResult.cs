using RigScenarios.Batteries;
using RigScenarios.Parts;
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
    BatteryPlace Place, Duration Start, Duration End, Ratio ChargeAtStart, Ratio ChargeAtEnd, Temperature TemperatureAtStart, Temperature TemperatureAtEnd);

/// <summary>The charge of a battery at a time.</summary>
/// <param name="Time">From midnight of the first day.</param>
/// <param name="Charge">Charge, 0…1.</param>
public sealed record ChargePoint(Duration Time, Ratio Charge);

/// <summary>One battery over all the days.</summary>
public sealed record BatteryTimeline
{
    /// <summary>Where it was, one after the other without gaps.</summary>
    public required IReadOnlyList<BatterySpan> Spans { get; init; }

    /// <summary>Its charge over time: a point wherever something happens, and on the way of a charge; straight lines between them.</summary>
    public required IReadOnlyList<ChargePoint> ChargeCourse { get; init; }

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

/// <summary>Why a device is down.</summary>
public enum DownCause
{
    /// <summary>The battery is swapped, as planned; the restart after it counts as well.</summary>
    PlannedSwap,

    /// <summary>It ran short of voltage, or the battery ended.</summary>
    DropOut,

    /// <summary>No battery is left, and none will come from a charger.</summary>
    NothingLeft,

    /// <summary>No battery is fit for use until one is charged.</summary>
    WaitingForCharge,
}

/// <summary>A stretch of time in which a device does one thing; times from midnight of the first day.</summary>
/// <param name="Activity">What it does.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Cause">Why it is down; null if it isn't.</param>
/// <param name="Because">The same with names, such as "drop-out of camera" or "voltage cut-off"; null if it is not down.</param>
public sealed record DeviceSpan(DeviceActivity Activity, Duration Start, Duration End, DownCause? Cause, string? Because);

/// <summary>One device over all the days.</summary>
/// <param name="Title">Its name for people.</param>
/// <param name="Essential">Whether the build is of no use without it.</param>
/// <param name="Spans">What it did, one after the other.</param>
public sealed record DeviceTimeline(string Title, bool Essential, IReadOnlyList<DeviceSpan> Spans);

/// <summary>A time in which an essential device was down; times from midnight of the first day.</summary>
/// <param name="Device">Its name in the kit.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Cause">Why.</param>
/// <param name="Because">The same with names.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block in which it began.</param>
/// <param name="InTake">Whether the camera rolled when it began.</param>
public sealed record DownTime(string Device, Duration Start, Duration End, DownCause Cause, string Because, int Day, string Block, bool InTake);

/// <summary>A swap; times from midnight of the first day.</summary>
/// <param name="Time">When it began.</param>
/// <param name="Off">The battery that came off; null if none was there.</param>
/// <param name="On">The battery that went on.</param>
/// <param name="ChargeOff">Charge of the one that came off.</param>
/// <param name="ChargeOn">Charge of the one that went on.</param>
/// <param name="Forced">Whether the rig had stopped before.</param>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block.</param>
public sealed record Swap(Duration Time, string? Off, string On, Ratio? ChargeOff, Ratio ChargeOn, bool Forced, int Day, string Block);

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
    int Number, Duration Start, Duration End, OrderedMap<Ratio> ChargeAtStart, OrderedMap<Ratio> ChargeAtEnd, Energy FromPacks, Energy FromWall, bool Completes);

/// <summary>How the days went.</summary>
public sealed record SimulationResult
{
    /// <summary>Whether every essential device ran whenever it was asked for, but for planned swaps and the restarts after them.</summary>
    public bool Completes => Days.All(day => day.Completes);

    /// <summary>The batteries, in the order of the plan.</summary>
    public required OrderedMap<BatteryTimeline> Batteries { get; init; }

    /// <summary>The small pack that carries the rig through swaps; null if there is none.</summary>
    public BatteryTimeline? HotSwap { get; init; }

    /// <summary>The devices, in the order of the build.</summary>
    public required OrderedMap<DeviceTimeline> Devices { get; init; }

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

    /// <summary>
    /// How long that would carry the rig at the mean power of the days: an estimate, with everything used to the last. The cold and the cut-offs leave some of it in.
    /// </summary>
    public required Duration TimeLeft { get; init; }

    /// <summary>Energy that the rig took from the batteries.</summary>
    public required Energy FromPacks { get; init; }

    /// <summary>Energy that the chargers took from the wall.</summary>
    public required Energy FromWall { get; init; }

    /// <summary>The limits of the build that the days come near, closest first.</summary>
    public required IReadOnlyList<LimitMargin> Margins { get; init; }

    /// <summary>Every default that stands in for something not known, by battery.</summary>
    public required OrderedMap<IReadOnlyList<AssumedValue>> Assumed { get; init; }

    /// <summary>How far off runtimes may be, as a share, and why.</summary>
    public required ExpectedError ExpectedError { get; init; }
}
