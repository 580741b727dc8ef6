using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>What a part is, in the words of the trade.</summary>
public enum PartKind
{
    /// <summary>A camera body.</summary>
    Body,

    /// <summary>A lens.</summary>
    Lens,

    /// <summary>An adapter between lens and body.</summary>
    LensAdapter,

    /// <summary>A battery.</summary>
    Battery,

    /// <summary>A battery plate.</summary>
    Plate,

    /// <summary>A monitor or monitor-recorder.</summary>
    Monitor,

    /// <summary>A wireless video transmitter.</summary>
    Transmitter,

    /// <summary>A lens-drive motor.</summary>
    Motor,

    /// <summary>A controller or receiver of lens-drive motors.</summary>
    MotorController,

    /// <summary>A follow focus turned by hand.</summary>
    FollowFocus,

    /// <summary>A cage around the body.</summary>
    Cage,

    /// <summary>Rods.</summary>
    Rods,

    /// <summary>An arm that holds an accessory.</summary>
    Arm,

    /// <summary>A regulator, also one in a dummy battery.</summary>
    Regulator,

    /// <summary>A handle.</summary>
    Handle,

    /// <summary>A tripod head.</summary>
    Head,

    /// <summary>A tripod.</summary>
    Tripod,

    /// <summary>A shoulder pad.</summary>
    ShoulderPad,

    /// <summary>A charger.</summary>
    Charger,

    /// <summary>A cable.</summary>
    Cable,

    /// <summary>A box that gives the power of one inlet on to several outlets.</summary>
    Splitter,

    /// <summary>A support, such as a lens support or base plate.</summary>
    Support,
}

/// <summary>What can be bought or rented: one entry of a parts file.</summary>
public sealed record Part
{
    /// <summary>What it is.</summary>
    public PartKind Kind { get; init; }

    /// <summary>Its name for people.</summary>
    public string Name { get; init; } = "";

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>Mass.</summary>
    public Mass? Mass { get; init; }

    /// <summary>How far the true mass may be from it, either way; null if nobody said.</summary>
    public Mass? MassWithin { get; init; }

    /// <summary>Outer size.</summary>
    public BoxSize? Size { get; init; }

    /// <summary>Its centre of mass, from the middle of its box; null if nobody knows it.</summary>
    public AxisOffsets? Centre { get; init; }

    /// <summary>How far its centre moves forward when it is zoomed or focused; lenses only, null if not known.</summary>
    public Length? CentreMoves { get; init; }

    /// <summary>Where on its box it is held; null for what is usual for its kind.</summary>
    public MountingFace? HeldAt { get; init; }

    /// <summary>Focal length, for people; lenses only.</summary>
    public string? FocalLength { get; init; }

    /// <summary>Price to buy.</summary>
    public Money? Buy { get; init; }

    /// <summary>Price to rent for a day.</summary>
    public Money? RentPerDay { get; init; }

    /// <summary>Price to rent for a week; null for 3 days' rent.</summary>
    public Money? RentPerWeek { get; init; }

    /// <summary>Price to rent for a month; null for 10 days' rent.</summary>
    public Money? RentPerMonth { get; init; }

    /// <summary>What it brings when it is sold at the end of the years that are looked at; null to work it out from the
    /// price.</summary>
    public Money? Resale { get; init; }

    /// <summary>What it draws in each state; null if it draws nothing.</summary>
    public PowerDraw? Power { get; init; }

    /// <summary>The voltage it accepts at its own inlet.</summary>
    public VoltageWindow? Voltage { get; init; }

    /// <summary>The greatest current it takes.</summary>
    public ElectricCurrent? MaximumCurrent { get; init; }

    /// <summary>The mass it is rated to carry, for heads, tripods, arms, rods.</summary>
    public Mass? RatedLoad { get; init; }

    /// <summary>What the label of a device says, where other figures were made of it; null where nobody said.</summary>
    public LabelData? Label { get; init; }

    /// <summary>What its label says; batteries only.</summary>
    public Battery? Battery { get; init; }

    /// <summary>Plates only.</summary>
    public PlateData? Plate { get; init; }

    /// <summary>Regulators only.</summary>
    public RegulatorData? Regulator { get; init; }

    /// <summary>Chargers only.</summary>
    public ChargerData? Charger { get; init; }

    /// <summary>Power cables only.</summary>
    public CableData? Cable { get; init; }

    /// <summary>Splitters only.</summary>
    public SplitterData? Splitter { get; init; }

    /// <summary>Heads only.</summary>
    public HeadData? Head { get; init; }

    /// <summary>Tripods only.</summary>
    public LegsData? Legs { get; init; }

    /// <summary>Rods only.</summary>
    public RodData? Rods { get; init; }

    /// <summary>Arms only.</summary>
    public ArmData? Arm { get; init; }

    /// <summary>The interfaces that what holds it must give, in the words of the trade: <c>75 mm bowl</c>; empty where nobody
    /// said.</summary>
    public Interfaces Needs { get; init; } = [];

    /// <summary>The interfaces that it gives to what sits on it; empty where nobody said, so that nothing is ruled out.</summary>
    public Interfaces Gives { get; init; } = [];

    /// <summary>
    /// The fields whose figure nobody read on a label but somebody assumed, by their keys in files, such as <c>mass</c> or
    /// <c>power.standby</c>. A result lists those that entered it.
    /// </summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];
}

/// <summary>What stands on a device's label. Figures that were made of it stand in <see cref="Part.Assumed"/>.</summary>
/// <param name="Voltage">The one voltage on it.</param>
/// <param name="Current">The current on it: the most that the device takes.</param>
public sealed record LabelData(ElectricPotential? Voltage = null, ElectricCurrent? Current = null);

/// <summary>What a device draws at its own inlet in each of its states, as constant power unless <see cref="Load"/> says
/// otherwise.</summary>
/// <param name="Off">Switched off; 0 W unless a device draws something then.</param>
/// <param name="Standby">Switched on, not recording; null if not known.</param>
/// <param name="Record">Recording, or doing its work; null if not known.</param>
public sealed record PowerDraw(Power? Off = null, Power? Standby = null, Power? Record = null)
{
    /// <summary>How the draw goes with the voltage; the powers then hold at the voltage of its feed: the label's of a battery, a
    /// regulator's output. Null for constant power.</summary>
    public LoadKind? Load { get; init; }

    /// <summary>The part of a working time in which it draws <see cref="Record"/>; standby the rest. Motors; null for all of
    /// it.</summary>
    public Ratio? Duty { get; init; }

    /// <summary>The most that it draws for moments of its work, such as a motor against a stiff ring; null if not
    /// known.</summary>
    public Power? Peak { get; init; }

    /// <summary>What it draws for a moment when it is switched on; null if not known.</summary>
    public StartUpDraw? StartUp { get; init; }

    /// <summary>This draw with the values of another where that one has any.</summary>
    public PowerDraw With(PowerDraw? other) =>
        other is null ? this : new PowerDraw(other.Off ?? Off, other.Standby ?? Standby, other.Record ?? Record)
    {
        Load = other.Load ?? Load,
        Duty = other.Duty ?? Duty,
        Peak = other.Peak ?? Peak,
        StartUp = other.StartUp ?? StartUp,
    };

    /// <summary>This draw so many times, in every state.</summary>
    /// <param name="factor">How many times; 0 or more.</param>
    public PowerDraw Times(double factor) => factor == 1 ? this : this with
    {
        Off = Times(Off, factor), Standby = Times(Standby, factor), Record = Times(Record, factor), Peak = Times(Peak, factor),
        StartUp = StartUp is { } start ? start with { Power = Times(start.Power, factor)!.Value } : null,
    };

    private static Power? Times(Power? one, double factor) =>
        one is { } power ? UnitsNet.Power.FromWatts(factor * (double)power.Watts) : null;
}

/// <summary>The voltages at which a device works.</summary>
/// <param name="Minimum">Below it the device stops.</param>
/// <param name="Maximum">Above it the device may be destroyed.</param>
public sealed record VoltageWindow(ElectricPotential? Minimum = null, ElectricPotential? Maximum = null);

/// <summary>A battery plate.</summary>
/// <param name="OwnDraw">What it draws itself.</param>
/// <param name="SwitchOffVoltage">Below it the plate switches everything off.</param>
/// <param name="MaximumCurrent">The greatest current through it.</param>
public sealed record PlateData(Power? OwnDraw = null, ElectricPotential? SwitchOffVoltage = null,
    ElectricCurrent? MaximumCurrent = null)
{
    /// <summary>Resistance of the contacts between battery and plate, there and back; null for none.</summary>
    public ElectricResistance? ContactResistance { get; init; }

    /// <summary>The plate's main fuse; null if it has none, or nobody knows.</summary>
    public FuseData? Fuse { get; init; }

    /// <summary>Its outlets.</summary>
    public OrderedMap<OutletData> Outlets { get; init; } = OrderedMap<OutletData>.Empty;
}

/// <summary>A regulator: takes a range of voltages and gives one.</summary>
public sealed record RegulatorData
{
    /// <summary>Below it the regulator stops.</summary>
    public ElectricPotential InputMinimum { get; init; }

    /// <summary>Above it the regulator may be destroyed.</summary>
    public ElectricPotential InputMaximum { get; init; }

    /// <summary>What it gives.</summary>
    public ElectricPotential OutputVoltage { get; init; }

    /// <summary>Power out over power in, without its own draw and the losses below; up to 100 %. 0 means that only the losses
    /// below are given, and it is taken as 100 %.</summary>
    public Ratio Efficiency { get; init; }

    /// <summary>What it draws itself, also with nothing behind it: its quiescent draw.</summary>
    public Power? OwnDraw { get; init; }

    /// <summary>Loss that goes with its output current, W/A = V; null for none.</summary>
    public ElectricPotential? LossPerAmpere { get; init; }

    /// <summary>Loss that goes with the square of its output current, W/A² = Ω; null for none.</summary>
    public ElectricResistance? LossPerAmpereSquared { get; init; }

    /// <summary>The greatest current that it gives.</summary>
    public ElectricCurrent? MaximumCurrent { get; init; }
}

/// <summary>A charger.</summary>
/// <param name="Bays">How many batteries it charges.</param>
/// <param name="Current">Charging current of each bay.</param>
public sealed record ChargerData(int Bays = 1, ElectricCurrent? Current = null);
