using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// One plate position for several builds: "which battery balances these three lenses without moving the plate". The plate is
/// solved for so that the
/// smallest tilt margin among the builds is as large as can be; the counterbalance may be dialled anew for each.
/// </summary>
public static class CameraPlateSearch
{
    private const int PlaceSteps = 24;

    private const int Samples = 201;

    /// <summary>The best plate position that serves all builds.</summary>
    /// <param name="head">The head.</param>
    /// <param name="builds">The builds, one for each lens for instance; at least one.</param>
    /// <exception cref="ArgumentException">There is no build.</exception>
    public static SharedCameraPlate For(FluidHead head, OrderedMap<PlacedBuild> builds)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(builds);
        if (builds.Count == 0)
            throw new ArgumentException("No build is given; accepted: one or more.", nameof(builds));
        var kernel = new HeadKernel(head);
        PointMass[] rigs = [.. builds.Values.Select(build => build.MassProperties.Point)];
        double Lost(double plate) => rigs.Max(rig => kernel.Best(HeadKernel.ForeAft(rig, plate), kernel.Upright(rig)).Worst);

        var step = (kernel.Front - kernel.Rear) / (Samples - 1);
        var coarse = Enumerable.Range(0, Samples).Select(i => kernel.CameraPlate(kernel.Rear + (i * step))).MinBy(Lost);
        double low = Math.Max(kernel.Rear, coarse - step), high = Math.Min(kernel.Front, coarse + step);
        var fine = RootBracket.Minimum(Lost, low, high, 1e-9);
        var plate = new[] { low, coarse, fine, high }.MinBy(Lost);
        return new(new OrderedMap<HeadBalance>(builds.Select(build =>
        {
            var rig = build.Value.MassProperties;
            var best = kernel.Best(HeadKernel.ForeAft(rig.Point, plate), kernel.Upright(rig.Point));
            return KeyValuePair.Create(build.Key, HeadBalance.At(head, rig, Length.FromMeters(plate),
                Torque.FromNewtonMeters(best.K),
                head.Counterbalance.Steps.Count == 0 ? null : best.Index));
        })));
    }

    /// <summary>
    /// The same with one part free along its mount: the place of it at which the tightest build has the most friction left. Steps
    /// of a counterbalance make
    /// several hills, so that the stretch is searched on a grid first and then on the best hill.
    /// </summary>
    /// <param name="head">The head.</param>
    /// <param name="builds">The builds, one for each lens for instance.</param>
    /// <param name="part">The part that can be moved, with all that hangs on it.</param>
    /// <param name="range">Where it can be moved.</param>
    /// <exception cref="ArgumentException">A build has no such part, or there is no build.</exception>
    public static SharedPlace WithFree(FluidHead head, OrderedMap<PlacedBuild> builds, string part, LengthRange range)
    {
        ArgumentNullException.ThrowIfNull(builds);
        ArgumentNullException.ThrowIfNull(range);
        SharedCameraPlate At(double offset) => For(head, new OrderedMap<PlacedBuild>(builds.Select(build =>
        {
            var placed = build.Value.Named(part);
            var moved = placed.Placement with { Offset = placed.Placement.Offset with { X = Length.FromMeters(offset) } };
            return KeyValuePair.Create(build.Key, build.Value.With(part, placed with { Placement = moved }));
        })));
        double least = range.Least.Meters, step = (range.Greatest.Meters - least) / PlaceSteps;
        var best = Enumerable.Range(0, PlaceSteps + 1).Select(i => least + (i * step))
            .MaxBy(offset => At(offset).TiltMargin.NewtonMeters);
        if (step > 0)
        {
            var hill = RootBracket.Minimum(offset => -At(offset).TiltMargin.NewtonMeters, Math.Max(least, best - step),
                Math.Min(range.Greatest.Meters, best + step), 1e-5);
            best = At(hill).TiltMargin > At(best).TiltMargin ? hill : best;
        }
        return new(Length.FromMeters(best), At(best));
    }

    /// <summary>The same for several choices of one part, such as batteries: the choice with the most left comes first.</summary>
    /// <param name="head">The head.</param>
    /// <param name="builds">The builds, one for each lens for instance.</param>
    /// <param name="part">The part to choose; each choice takes its place.</param>
    /// <param name="choices">What it could be, by name.</param>
    /// <exception cref="ArgumentException">A build has no such part, or there is no build.</exception>
    public static IReadOnlyList<KeyValuePair<string, SharedCameraPlate>> ForChoices(FluidHead head,
        OrderedMap<PlacedBuild> builds, string part, OrderedMap<PlacedPart> choices)
    {
        ArgumentNullException.ThrowIfNull(builds);
        ArgumentNullException.ThrowIfNull(choices);
        foreach (var build in builds.Values)
            build.Named(part);
        return [.. choices.Select(choice => KeyValuePair.Create(choice.Key, For(head, new OrderedMap<PlacedBuild>(
                builds.Select(build => KeyValuePair.Create(build.Key,
                    build.Value.With(part, choice.Value with { Placement = build.Value.Parts[part].Placement })))))))
            .OrderByDescending(choice => choice.Value.Works).ThenByDescending(choice => choice.Value.TiltMargin.NewtonMeters)];
    }
}

/// <summary>The place of a part that serves several builds best with one plate position.</summary>
/// <param name="Offset">The part's offset along its carrier's x axis.</param>
/// <param name="Shared">The builds with the part there.</param>
public sealed record SharedPlace(Length Offset, SharedCameraPlate Shared);

/// <summary>Several builds with one plate position.</summary>
/// <param name="Builds">Each with that plate position and its own counterbalance.</param>
public sealed record SharedCameraPlate(OrderedMap<HeadBalance> Builds)
{
    /// <summary>The plate position.</summary>
    public Length CameraPlate => Builds.Values.First().CameraPlate;

    /// <summary>The smallest tilt margin among the builds.</summary>
    public Torque TiltMargin => Builds.Values.MinBy(build => build.TiltMargin.NewtonMeters)!.TiltMargin;

    /// <summary>The build with the smallest tilt margin: the one that stops it if it is below 0.</summary>
    public string Tightest => Builds.MinBy(build => build.Value.TiltMargin.NewtonMeters).Key;

    /// <summary>Whether friction at rest and rated load hold every build at that place of the camera plate.</summary>
    public bool Works => Builds.Values.All(build => build.TiltMargin.NewtonMeters >= 0 && !(build.LoadMargin?.Kilograms < 0));
}
