using RigScenarios.Cells.Aging;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Builds;

/// <summary>How the rig is carried.</summary>
public enum Stance
{
    /// <summary>On a tripod.</summary>
    Tripod,

    /// <summary>On the shoulder.</summary>
    Shoulder,

    /// <summary>In the hand.</summary>
    Hand,
}

/// <summary>A state of a device.</summary>
public enum PowerState
{
    /// <summary>Switched off.</summary>
    Off,

    /// <summary>Switched on, not recording.</summary>
    Standby,

    /// <summary>Recording, or doing its work.</summary>
    Record,
}

/// <summary>One way to put the kit together: which battery, which devices, what feeds each, what else is carried.</summary>
public sealed record Build
{
    /// <summary>Its name for people; null to use the short name.</summary>
    public string? Title { get; init; }

    /// <summary>How it is carried.</summary>
    public Stance Stance { get; init; }

    /// <summary>The battery that powers it.</summary>
    public BatteryInUse Battery { get; init; } = new();

    /// <summary>The plate between battery and outlets, by its name in the kit; null if there is none.</summary>
    public string? Plate { get; init; }

    /// <summary>Regulators, by their names in the kit.</summary>
    public OrderedMap<RegulatorInUse> Regulators { get; init; } = OrderedMap<RegulatorInUse>.Empty;

    /// <summary>Splitters, by their names in the kit.</summary>
    public OrderedMap<SplitterInUse> Splitters { get; init; } = OrderedMap<SplitterInUse>.Empty;

    /// <summary>Devices, by their names in the kit.</summary>
    public OrderedMap<DeviceInUse> Devices { get; init; } = OrderedMap<DeviceInUse>.Empty;

    /// <summary>Everything else on the rig, by names in the kit.</summary>
    public IReadOnlyList<string> Carries { get; init; } = [];

    /// <summary>Those of its things that are not on the rig and weigh nothing on it: a battery on the deck of a dolly or in a
    /// bag, by names in the kit.</summary>
    public IReadOnlyList<string> Beside { get; init; } = [];

    /// <summary>Where its things sit, by their names in the kit; what isn't named gets the usual place of its kind.</summary>
    public OrderedMap<PlaceInUse> Places { get; init; } = OrderedMap<PlaceInUse>.Empty;

    /// <summary>How it sits on its head; null to take what is usual.</summary>
    public HeadInUse? OnHead { get; init; }

    /// <summary>How its legs stand; null to take the part's own figures.</summary>
    public LegsInUse? OnLegs { get; init; }

    /// <summary>How it rests on the shoulder; null to take the places of pad and handles.</summary>
    public ShoulderInUse? OnShoulder { get; init; }

    /// <summary>How it is held in the hands; null to take what is usual.</summary>
    public HandsInUse? InHands { get; init; }

    /// <summary>
    /// What of it nobody said and was proposed or assumed: paths inside the build such as <c>devices.camera.fed-by</c> or
    /// <c>regulators.dummy-12v</c> (all of it), or of the scenario around it, such as <c>kit.dummy-12v</c> or
    /// <c>chargers.charger.ambient</c>; <c>batteries</c> where the batteries of its kind begin in the state of its own.
    /// </summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>The name under which the battery's own terminals feed something.</summary>
    public const string BatteryFeed = "battery";

    /// <summary>Everything that the build has, by names in the kit: devices, what else is carried, regulators, splitters, power
    /// cables, plate, battery.</summary>
    public IEnumerable<string> Things => [.. Devices.Keys, .. Carries, .. Regulators.Keys, .. Splitters.Keys,
        .. Cables.Except(Carries), .. Plate is null ? Array.Empty<string>() : [Plate], Battery.Item];

    /// <summary>The power cables in use, by their names in the kit, each once.</summary>
    public IEnumerable<string> Cables => Regulators.Values.Select(item => item.Cable)
        .Concat(Splitters.Values.Select(item => item.Cable)).Concat(Devices.Values.Select(item => item.Cable))
        .Where(name => name is not null).Select(name => name!).Distinct();

    /// <summary>What weighs nothing on the rig: <see cref="Beside"/>, and the cables that all begin there, for they lie on the
    /// floor.</summary>
    public IEnumerable<string> OffRig =>
        Beside.Concat(LinkLookup.Fed(this).Where(item => item.Cable is not null).GroupBy(item => item.Cable!)
        .Where(users => users.All(item => Beside.Contains((item.FedBy ?? StandardFeed) is var feed
            && feed == BatteryFeed ? Battery.Item : feed)))
        .Select(users => users.Key)).Distinct();

    /// <summary>What feeds a device or regulator that names no feed: the plate, or the battery itself.</summary>
    public string StandardFeed => Plate ?? BatteryFeed;
}

/// <summary>The battery of a build and the state it is in.</summary>
public sealed record BatteryInUse
{
    /// <summary>Its name in the kit.</summary>
    public string Item { get; init; } = "";

    /// <summary>Charge at the start; null means full.</summary>
    public Ratio? Charge { get; init; }

    /// <summary>Share of the capacity that aging has left; null if not known.</summary>
    public Ratio? CapacityLeft { get; init; }

    /// <summary>How many times the resistance of a new battery it has; null if not known: then it goes with the capacity by the
    /// rule of <see cref="Cells.Wear"/>.</summary>
    public double? ResistanceGrowth { get; init; }

    /// <summary>Its life so far in the words of a person; null if nobody told it. What was measured
    /// (<see cref="CapacityLeft"/>, <see cref="ResistanceGrowth"/>) goes before it.</summary>
    public LifeInWords? Life { get; init; }

    /// <summary>Its own temperature at the start; null means that of the air.</summary>
    public Temperature? StartTemperature { get; init; }

    /// <summary>How many times what its parts say every device of the build draws: what notes and logs of this rig say of all
    /// draws together; null for once.</summary>
    public double? LoadScale { get; init; }

    /// <summary>One standard deviation of the runtime that a fit to this very battery leaves, as a share of it; null where
    /// nothing was fitted.</summary>
    public Ratio? RuntimeKnownTo { get; init; }

    /// <summary>What the fit rests on, for people: "5 notes and 1 log"; null where nothing was fitted or nobody
    /// said.</summary>
    public string? FittedFrom { get; init; }
}

/// <summary>A regulator of a build.</summary>
/// <param name="FedBy">What feeds it: <c>battery</c>, the plate, a splitter or another regulator; null for the build's standard
/// feed.</param>
/// <param name="Outlet">The outlet of that, by its name on the part; null for none in particular.</param>
/// <param name="Cable">The power cable in front of it, by its name in the kit; null for a lead without resistance.</param>
public sealed record RegulatorInUse(string? FedBy = null, string? Outlet = null, string? Cable = null);

/// <summary>A splitter of a build.</summary>
/// <param name="FedBy">What feeds it: <c>battery</c>, the plate, a regulator or another splitter; null for the build's standard
/// feed.</param>
/// <param name="Outlet">The outlet of that, by its name on the part; null for none in particular.</param>
/// <param name="Cable">The power cable in front of it, by its name in the kit; null for a lead without resistance.</param>
public sealed record SplitterInUse(string? FedBy = null, string? Outlet = null, string? Cable = null);

/// <summary>A device of a build.</summary>
public sealed record DeviceInUse
{
    /// <summary>What feeds it: <c>battery</c>, the plate, a splitter or a regulator; null for the build's standard
    /// feed.</summary>
    public string? FedBy { get; init; }

    /// <summary>The outlet of that, by its name on the part; null for none in particular.</summary>
    public string? Outlet { get; init; }

    /// <summary>The power cable in front of it, by its name in the kit; null for a lead without resistance.</summary>
    public string? Cable { get; init; }

    /// <summary>Whether the build is of no use without it.</summary>
    public bool Essential { get; init; }

    /// <summary>How many of them there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>What it draws in this build, where that differs from the part's own values.</summary>
    public PowerDraw? Power { get; init; }
}
