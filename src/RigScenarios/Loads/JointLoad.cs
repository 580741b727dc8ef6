using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// What a joint carries: the weight of a part and of all that hangs on it, times a handling factor, at the part's mounting point,
/// with the rig
/// level. An arm of several pieces is several parts; each lock is the mounting point of the piece beyond it.
/// </summary>
public sealed record JointLoad
{
    /// <summary>
    /// The handling factor that is used if none is given: 2. A weight that comes onto an elastic support all at once, without a
    /// drop, loads it to twice its
    /// weight (W δ = ½ k δ², any textbook on strength of materials; from memory). Knocks and drops go beyond it.
    /// </summary>
    public const double SuddenLoad = 2;

    private JointLoad(string part, IReadOnlyList<string> carried, double handlingFactor, Force force, Torque noseDown,
        Torque leftDown) =>
        (Part, Carried, HandlingFactor, Force, NoseDown, LeftDown) = (part, carried, handlingFactor, force, noseDown, leftDown);

    /// <summary>The part whose mounting point the joint is.</summary>
    public string Part { get; }

    /// <summary>All that the joint carries.</summary>
    public IReadOnlyList<string> Carried { get; }

    /// <summary>The factor on the weight that stands for handling.</summary>
    public double HandlingFactor { get; }

    /// <summary>The downward force, factor included.</summary>
    public Force Force { get; }

    /// <summary>The moment that turns nose down, factor included; below 0 nose up.</summary>
    public Torque NoseDown { get; }

    /// <summary>The moment that turns the left side down, factor included; below 0 the right side.</summary>
    public Torque LeftDown { get; }

    /// <summary>The size of the whole moment: force times the horizontal distance of what it carries.</summary>
    public Torque Moment =>
        Torque.FromNewtonMeters(Math.Sqrt((NoseDown.NewtonMeters * NoseDown.NewtonMeters)
        + (LeftDown.NewtonMeters * LeftDown.NewtonMeters)));

    /// <summary>The load of one joint.</summary>
    /// <param name="build">The build.</param>
    /// <param name="part">The part whose mounting point the joint is.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more, 1 is a rig at rest.</param>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is below 1.</exception>
    public static JointLoad Of(PlacedBuild build, string part, double handlingFactor = SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(build);
        Require.AtLeast(handlingFactor, 1, nameof(handlingFactor));
        var carried = build.WithAllOn(part);
        var parts = build.MassProperties.Parts;
        var joint = parts[part].MountingPoint;
        double newtons = 0, noseDown = 0, leftDown = 0;
        foreach (var one in carried.Select(name => parts[name]))
        {
            var weight = handlingFactor * StandardGravity.Weight(one.Mass).Newtons;
            newtons += weight;
            noseDown += weight * (one.Centre.X - joint.X).Meters;
            leftDown += weight * (one.Centre.Y - joint.Y).Meters;
        }

        return new(part, carried, handlingFactor, Force.FromNewtons(newtons), Torque.FromNewtonMeters(noseDown),
            Torque.FromNewtonMeters(leftDown));
    }

    /// <summary>All joints of a build, the largest moment first.</summary>
    /// <param name="build">The build.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more.</param>
    public static IReadOnlyList<JointLoad> All(PlacedBuild build, double handlingFactor = SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(build);
        return [.. build.Parts.Keys.Select(part => Of(build, part, handlingFactor))
            .OrderByDescending(load => load.Moment.NewtonMeters)];
    }

    /// <summary>The load against a rating.</summary>
    public JointMargins Against(JointRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return new(rating.Force - Force, rating.Moment - Moment);
    }
}

/// <summary>What a joint's maker rates it for; null where nothing is known: then there is no verdict.</summary>
/// <param name="Force">Rated load.</param>
/// <param name="Moment">Rated moment.</param>
public sealed record JointRating(Force? Force = null, Torque? Moment = null);

/// <summary>Rating less load; null where no rating is known.</summary>
/// <param name="Force">Of the force.</param>
/// <param name="Moment">Of the moment.</param>
public sealed record JointMargins(Force? Force, Torque? Moment);
