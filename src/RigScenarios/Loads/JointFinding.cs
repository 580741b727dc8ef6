using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>One joint of a build: what holds a part, what it carries, and against which rating.</summary>
public sealed record JointFinding
{
    /// <summary>From a screw to the edge of the plate that it holds: half of a base of 40 mm (common practice, no
    /// source).</summary>
    public static Length PlateEdge { get; } = Length.FromMillimeters(20);

    /// <summary>A screw tightened by hand with a coin or a key (common practice, no source).</summary>
    public static Torque HandTightened { get; } = Torque.FromNewtonMeters(2);

    /// <summary>How far the clamping force of a screw that is tightened by feel may be off, either way: 35 % (Machinery's
    /// Handbook, accuracy of bolt preload application methods; second-hand, docsbay.net). With a torque that is known the
    /// friction of a dry thread alone leaves the same (NASA, read in D. P. Hess, J. Fail. Anal. Prev. 2019).</summary>
    public static Ratio ByFeel { get; } = Ratio.FromPercent(35);

    private JointFinding(JointLoad load, string? on, Fixing fixing, JointRating rating, string? ratedBy, ScrewLoad? screw) =>
        (Load, On, Fixing, Rating, RatedBy, Screw, Margins) = (load, on, fixing, rating, ratedBy, screw, load.Against(rating));

    /// <summary>The load, with the handling factor in it.</summary>
    public JointLoad Load { get; }

    /// <summary>What carries the part; null for the camera plate, which carries the rig.</summary>
    public string? On { get; }

    /// <summary>What holds it there.</summary>
    public Fixing Fixing { get; }

    /// <summary>What the joint is rated for.</summary>
    public JointRating Rating { get; }

    /// <summary>Whose rating it is: the name of an arm; null where no rating is known and there is no verdict.</summary>
    public string? RatedBy { get; }

    /// <summary>Rating less load.</summary>
    public JointMargins Margins { get; }

    /// <summary>For a screw: what the moment's couple does to it, with <see cref="PlateEdge"/> and <see cref="HandTightened"/>;
    /// else null.</summary>
    public ScrewLoad? Screw { get; }

    /// <summary>The smaller of the margins as a part of its rating; null where no rating is known, or one is 0, of which there is
    /// no part: <see cref="Margins"/> tells it then.</summary>
    public Ratio? MarginShare => LeastShare is { } share && double.IsFinite(share) ? Ratio.FromDecimalFractions(share) : null;

    private double? LeastShare
    {
        get
        {
            var shares = new List<double>();
            if (Margins.Force is { } force && Rating.Force is { } rated)
                shares.Add(Share(force.Newtons, rated.Newtons));
            if (Margins.Moment is { } moment && Rating.Moment is { } held)
                shares.Add(Share(moment.NewtonMeters, held.NewtonMeters));
            return shares.Count == 0 ? null : shares.Min();
        }
    }

    /// <summary>Whatever is beyond a rating of 0 is so without bound.</summary>
    private static double Share(double margin, double rated) => rated > 0 ? margin / rated
        : margin < 0 ? double.NegativeInfinity : 0;

    /// <summary>All joints of a build, those with the least margin first, then those without a rating by their moment.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is below 1.</exception>
    public static IReadOnlyList<JointFinding> All(BuildInPlace rig, double handlingFactor = JointLoad.SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return
        [
            .. rig.Things.Keys.Where(name => rig.Places[name].On is not null
                || (rig.Build.Stance == Stance.Tripod && rig.Things[name].Mass is not null))
                .Select(name => Of(rig, name, handlingFactor))
                .OrderBy(joint => joint.LeastShare ?? double.PositiveInfinity)
                    .ThenByDescending(joint => joint.Load.Moment.NewtonMeters),
        ];
    }

    private static JointFinding Of(BuildInPlace rig, string name, double factor)
    {
        var place = rig.Places[name];
        var load = JointLoad.Of(rig.Placed, name, factor);
        var fixing = place.HeldBy ?? Usual(rig, name);
        // An arm's weakest lock holds what is at its end, and the arm's own foot holds the arm too.
        var arm = rig.Things[name].Kind == PartKind.Arm
            ? name : place.On is { } carrier && rig.Things[carrier].Kind == PartKind.Arm ? carrier : null;
        var data = arm is null ? null : rig.Things[arm];
        var rating = new JointRating(arm == name || data?.RatedLoad is null ? null : StandardGravity.Weight(data.RatedLoad.Value),
            data?.Arm?.LockTorque);
        var screw = fixing switch
        {
            Fixing.QuarterInchScrew => ScrewThread.Quarter20,
            Fixing.ThreeEighthsScrew => ScrewThread.ThreeEighths16,
            _ => null,
        };
        return new(load, place.On, fixing, rating, rating is { Force: null, Moment: null } ? null : arm,
            screw?.Under(load.Moment, PlateEdge, screw.ClampingForce(HandTightened)));
    }

    private static Fixing Usual(BuildInPlace rig, string name)
    {
        if (rig.Places[name].On is not { } on)
            return Fixing.ThreeEighthsScrew;
        PartKind kind = rig.Things[name].Kind, carrier = rig.Things[on].Kind;
        return (kind, carrier) switch
        {
            (_, PartKind.Arm) => Fixing.ArmEnd,
            (_, PartKind.Rods) => Fixing.RodClamp,
            (PartKind.Lens or PartKind.LensAdapter, PartKind.Body or PartKind.LensAdapter) => Fixing.LensMount,
            (PartKind.Battery, PartKind.Plate) => Fixing.BatteryPlate,
            (PartKind.Body or PartKind.Cage or PartKind.Arm or PartKind.Handle or PartKind.Transmitter
                or PartKind.MotorController, _) => Fixing.QuarterInchScrew,
            _ => Fixing.Other,
        };
    }
}
