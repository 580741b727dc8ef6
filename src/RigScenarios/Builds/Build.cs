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

    /// <summary>Devices, by their names in the kit.</summary>
    public OrderedMap<DeviceInUse> Devices { get; init; } = OrderedMap<DeviceInUse>.Empty;

    /// <summary>Everything else on the rig, by names in the kit.</summary>
    public IReadOnlyList<string> Carries { get; init; } = [];

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

    /// <summary>The name under which the battery's own terminals feed something.</summary>
    public const string BatteryFeed = "battery";

    /// <summary>Everything that the build has, by names in the kit: devices, what else is carried, regulators, plate, battery.</summary>
    public IEnumerable<string> Things => [.. Devices.Keys, .. Carries, .. Regulators.Keys, .. Plate is null ? Array.Empty<string>() : [Plate], Battery.Item];

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

    /// <summary>How many times the resistance of a new battery it has; null if not known.</summary>
    public double? ResistanceGrowth { get; init; }

    /// <summary>Its own temperature at the start; null means that of the air.</summary>
    public Temperature? StartTemperature { get; init; }
}

/// <summary>A regulator of a build.</summary>
/// <param name="FedBy">What feeds it: <c>battery</c>, the plate or another regulator; null for the build's standard feed.</param>
public sealed record RegulatorInUse(string? FedBy = null);

/// <summary>A device of a build.</summary>
public sealed record DeviceInUse
{
    /// <summary>What feeds it: <c>battery</c>, the plate or a regulator; null for the build's standard feed.</summary>
    public string? FedBy { get; init; }

    /// <summary>Whether the build is of no use without it.</summary>
    public bool Essential { get; init; }

    /// <summary>How many of them there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>What it draws in this build, where that differs from the part's own values.</summary>
    public PowerDraw? Power { get; init; }
}
