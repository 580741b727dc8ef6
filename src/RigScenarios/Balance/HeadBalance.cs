using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A rig on a fluid head: where the plate goes, which counterbalance, and what is left to each limit. Equations: docs/balance.md.
/// The head holds
/// still at a tilt where the residual moment is not larger than its friction at rest; beyond that its drag only slows it.
/// </summary>
public sealed record HeadBalance
{
    private HeadBalance(FluidHead head, PointMass rig) => (Head, Rig) = (head, rig);

    /// <summary>The head.</summary>
    public FluidHead Head { get; }

    internal PointMass Rig { get; }

    /// <summary>s: the rig's x that stands over the head's centre.</summary>
    public required Length CameraPlate { get; init; }

    /// <summary>k.</summary>
    public required Torque Counterbalance { get; init; }

    /// <summary>Number of the step among the head's, from 0; null with a range or a k of one's own.</summary>
    public required int? StepIndex { get; init; }

    /// <summary>To the front end of the travel, s_max - x; below 0 the rig can't be balanced fore and aft.</summary>
    public required Length TravelFrontMargin { get; init; }

    /// <summary>To the rear end of the travel, x - s_min.</summary>
    public required Length TravelRearMargin { get; init; }

    /// <summary>The smaller of the two.</summary>
    public Length TravelMargin => TravelFrontMargin < TravelRearMargin ? TravelFrontMargin : TravelRearMargin;

    /// <summary>h: the centre's height over the tilt axis; below 0 the rig hangs.</summary>
    public required Length HeightOverAxis { get; init; }

    /// <summary>The counterbalance that would be exact, m g h.</summary>
    public required Torque CounterbalanceWanted { get; init; }

    /// <summary>Nose-down moment at tilt 0, m g (x - s).</summary>
    public required Torque MomentAtZero { get; init; }

    /// <summary>The largest residual over the tilt range, without its sign.</summary>
    public required Torque WorstResidual { get; init; }

    /// <summary>The tilt at which it occurs, nose-down positive.</summary>
    public required Angle WorstTilt { get; init; }

    /// <summary>Friction at rest less the worst residual: below 0 it does not stay at every tilt.</summary>
    public Torque TiltMargin => Head.Friction - WorstResidual;

    /// <summary>What is left until it falls: <see cref="FluidHead.CreepMoment"/> less the worst residual.</summary>
    public Torque CreepMargin => Head.CreepMoment - WorstResidual;

    /// <summary>What it does when it is let go at the worst tilt.</summary>
    public LetGo WhenLetGo => Under(WorstResidual);

    /// <summary>How fast it goes when it is let go at the worst tilt: <c>ω = 10 °/s · (|residual| - f)/c</c>; 0 where it stays,
    /// null where no drag is known, and where there is none, so that nothing slows it.</summary>
    public RotationalSpeed? CreepSpeed => TiltMargin.NewtonMeters >= 0 ? RotationalSpeed.Zero
        : Head.Drag is { } drag && -TiltMargin / drag is var times && double.IsFinite(times) ? FluidHead.DragSpeed * times : null;

    /// <summary>Rated load less the rig's mass; null where no rating is known.</summary>
    public Mass? LoadMargin => Head.RatedLoad is { } rated ? Mass.FromKilograms(rated.Kilograms - Rig.Kilograms) : null;

    /// <summary>The limits that are not kept, in their order; empty if all are.</summary>
    public IReadOnlyList<BalanceEdge> Exceeded
    {
        get
        {
            var margins = new HeadMargins(TravelFrontMargin.Meters, TravelRearMargin.Meters, TiltMargin.NewtonMeters,
                LoadMargin?.Kilograms ?? double.PositiveInfinity);
            return [.. Enum.GetValues<BalanceEdge>().Where(limit => margins.Of(limit) < 0)];
        }
    }

    /// <summary>The rig with the plate and the counterbalance chosen for it.</summary>
    public static HeadBalance Of(FluidHead head, MassProperties rig)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(rig);
        var kernel = new HeadKernel(head);
        var plate = kernel.CameraPlate(rig.Point.Centre.X);
        var best = kernel.Best(HeadKernel.ForeAft(rig.Point, plate), kernel.Upright(rig.Point));
        return Set(head, kernel, rig.Point, plate, best.K, head.Counterbalance.Steps.Count == 0 ? null : best.Index);
    }

    /// <summary>The rig with the plate and the counterbalance as they are set.</summary>
    /// <param name="head">The head.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="plate">s.</param>
    /// <param name="counterbalance">k.</param>
    /// <param name="stepIndex">Its number among the steps, from 0; null if it is none of them.</param>
    public static HeadBalance At(FluidHead head, MassProperties rig, Length plate, Torque counterbalance, int? stepIndex = null)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(rig);
        return Set(head, new HeadKernel(head), rig.Point, plate.Meters, counterbalance.NewtonMeters, stepIndex);
    }

    /// <summary>The nose-down moment that is left at a tilt: <c>m g [ (x - s) cos θ + h sin θ ] - k sin θ</c>.</summary>
    /// <param name="tilt">Nose-down positive.</param>
    public Torque Residual(Angle tilt)
    {
        var (sin, cos) = Math.SinCos(tilt.Radians);
        return Torque.FromNewtonMeters((MomentAtZero.NewtonMeters * cos)
            + ((CounterbalanceWanted - Counterbalance).NewtonMeters * sin));
    }

    /// <summary>What the unlocked head does under a moment.</summary>
    internal LetGo Under(Torque moment) => Math.Abs(moment.NewtonMeters) <= Head.Friction.NewtonMeters ? LetGo.Stays
        : Math.Abs(moment.NewtonMeters) <= Head.CreepMoment.NewtonMeters ? LetGo.Creeps : LetGo.Falls;

    private static HeadBalance Set(FluidHead head, HeadKernel kernel, PointMass rig, double plate, double k, int? step)
    {
        double a = HeadKernel.ForeAft(rig, plate), upright = kernel.Upright(rig);
        return new(head, rig)
        {
            CameraPlate = Length.FromMeters(plate),
            Counterbalance = Torque.FromNewtonMeters(k),
            StepIndex = step,
            TravelFrontMargin = Length.FromMeters(kernel.Front - rig.Centre.X),
            TravelRearMargin = Length.FromMeters(rig.Centre.X - kernel.Rear),
            HeightOverAxis = Length.FromMeters(rig.Centre.Z + kernel.AxisDepth),
            CounterbalanceWanted = Torque.FromNewtonMeters(upright),
            MomentAtZero = Torque.FromNewtonMeters(a),
            WorstResidual = Torque.FromNewtonMeters(kernel.Worst(a, upright - k)),
            WorstTilt = Angle.FromRadians(kernel.WorstTilt(a, upright - k)),
        };
    }
}
