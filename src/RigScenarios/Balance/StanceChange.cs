using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// From one build of a kit to another, such as from tripod to shoulder: what comes off, what goes on, what moves. Parts are the
/// same if their names are. What
/// comes off or goes on together with its carrier is one step with it; what only rides along on a part that moves is none.
/// </summary>
public sealed record StanceChange
{
    private StanceChange(PlacedBuild before, PlacedBuild after) => (Before, After) = (before, after);

    /// <summary>The build that is changed.</summary>
    public PlacedBuild Before { get; }

    /// <summary>The build that it becomes.</summary>
    public PlacedBuild After { get; }

    /// <summary>All that comes off.</summary>
    public IReadOnlyList<string> Off => Only(Before, After);

    /// <summary>All that goes on.</summary>
    public IReadOnlyList<string> On => Only(After, Before);

    /// <summary>What is set to another place, with how far its mounting point then lies from where it was in the rig
    /// frame.</summary>
    public IReadOnlyList<KeyValuePair<string, RigPoint>> Moved =>
        [.. After.Parts.Where(part => Before.Parts.TryGetValue(part.Key, out var was)
            && !SamePlace(was.Placement, part.Value.Placement))
            .Select(part => KeyValuePair.Create(part.Key, RigPoint.From(Point(After, part.Key) - Point(Before, part.Key))))];

    /// <summary>How many things are done by hand.</summary>
    public int Steps => OffSteps + OnSteps + Moved.Count;

    private int OffSteps => Off.Count(part => !Rides(Before, part, Off));

    private int OnSteps => On.Count(part => !Rides(After, part, On));

    /// <summary>The change from one build to another.</summary>
    public static StanceChange Between(PlacedBuild before, PlacedBuild after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return new(before, after);
    }

    /// <summary>The time that the steps take, one after the other.</summary>
    /// <param name="each">How long one step of each kind takes in your hands.</param>
    public Duration Time(StepTimes each)
    {
        ArgumentNullException.ThrowIfNull(each);
        return (OffSteps * each.TakeOff) + (OnSteps * each.PutOn) + (Moved.Count * each.Move);
    }

    /// <summary>How far the plate moves on a head if both builds are balanced on it; forward positive.</summary>
    public Length CameraPlateShift(FluidHead head) =>
        HeadBalance.Of(head, After.MassProperties).CameraPlate - HeadBalance.Of(head, Before.MassProperties).CameraPlate;

    private static string[] Only(PlacedBuild here, PlacedBuild there) =>
        [.. here.Parts.Keys.Where(part => !there.Parts.ContainsKey(part))];

    private static bool Rides(PlacedBuild build, string part, IReadOnlyList<string> others) =>
        build.Parts[part].Placement.Carrier is { } carrier && others.Contains(carrier);

    private static Vector Point(PlacedBuild build, string part) => build.MassProperties.Parts[part].MountingPoint.Metres;

    // Places in other units are the same place; a nanometre and a nanoradian are none.
    private static bool SamePlace(Placement one, Placement other)
    {
        const double tolerance = 1e-9;
        bool Same(double a, double b) => Math.Abs(a - b) <= tolerance;
        return one.Carrier == other.Carrier
            && (one.Offset.Metres - other.Offset.Metres).Length <= tolerance
            && Same(one.Orientation.Yaw.Radians, other.Orientation.Yaw.Radians)
            && Same(one.Orientation.Pitch.Radians, other.Orientation.Pitch.Radians)
            && Same(one.Orientation.Roll.Radians, other.Orientation.Roll.Radians);
    }
}

/// <summary>How long one step takes; nobody but you can say.</summary>
/// <param name="TakeOff">To take something off.</param>
/// <param name="PutOn">To put something on.</param>
/// <param name="Move">To move something.</param>
public sealed record StepTimes(Duration TakeOff, Duration PutOn, Duration Move);
