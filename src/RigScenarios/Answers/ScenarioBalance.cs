using RigScenarios.Balance;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Loads;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Balances a build of a scenario.</summary>
public static class ScenarioBalance
{
    /// <summary>Drag coefficient of a rig, a heap of boxes: 1.2 (a square plate has 1.17, <i>Aeronautical Engineer's Data
    /// Book</i>, p. 95).</summary>
    public const double DragCoefficient = 1.2;

    /// <summary>From the hands back to the shoulder joint, upper arm at the side and forearm held forward (from memory, of body
    /// measures).</summary>
    private static readonly Length ShoulderBehind = Length.FromMillimeters(340);

    /// <summary>An arm: 5 % of a body of 75 kg (common practice, no source).</summary>
    private static readonly Mass ArmMass = Mass.FromKilograms(3.75);

    /// <summary>Where nobody gives a temperature of the air: 15 °C.</summary>
    private static readonly Temperature StandardAir = Temperature.FromDegreesCelsius(15);

    /// <summary>Hands of somebody who picks a rig up from the ground.</summary>
    private static readonly Length LiftedFrom = Length.FromMillimeters(300);

    /// <summary>From the ankles forward to the hands.</summary>
    private static readonly Length HandsAhead = Length.FromMillimeters(350);

    private static readonly AssumedValue AssumedLift = new("lifting", "how it is lifted",
        $"by one person, both hands {HandsAhead.Millimeters:0} mm ahead of the ankles, from {LiftedFrom.Millimeters:0} mm "
            + "above the ground to where it is used, a fair hold, no twist, now and then, 19 to 26 °C",
        "nobody asked for it; the equation holds for these temperatures",
        Citation.CommonPractice("a rig picked up from the ground"));

    /// <summary>Balances one build.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build, or nothing of it has a mass.</exception>
    public static BuildBalance Of(Scenario scenario, string build)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        return Of(build, InPlace(chosen, build, scenario), scenario);
    }

    internal static BuildInPlace InPlace(Build build, string name, Scenario scenario)
    {
        try
        {
            return BuildInPlace.Of(build, scenario.PartOf);
        }
        catch (ArgumentException problem)
        {
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, $"builds.{name}.places",
                problem.Message.Split(" (Parameter")[0], "parts with masses, each on another one or on none")]);
        }
    }

    private static BuildBalance Of(string name, BuildInPlace rig, Scenario scenario)
    {
        Func<string, Part?> partOf = scenario.PartOf;
        var build = rig.Build;
        var supports = BuildSupports.Of(rig, partOf);
        var mass = rig.Placed.MassProperties;
        var best = supports.Head is { } head ? HeadBalance.Of(head, mass) : null;
        var set = best is not null && build.OnHead is { PlateAt: not null } or { CounterbalanceAt: not null }
            ? HeadBalance.At(best!.Head, mass, build.OnHead!.PlateAt ?? best.CameraPlate,
                build.OnHead.CounterbalanceAt ?? best.Counterbalance) : null;
        var present = set ?? best;
        var sizes = MissingSize.Of(rig, present, scenario);
        var hands = build.Stance == Stance.Hand ? HandsOf(rig) : null;
        return new()
        {
            Name = name,
            Rig = rig,
            Check = PlacementCheck.Of(rig.Placed),
            Supports = supports,
            Best = best,
            AsSet = set,
            Cases = present is null || sizes.Count > 0 ? [] : HeadCase.Of(rig, present),
            Level = supports.Stand is { } stand
                ? StandStability.Of(stand, mass, present?.CameraPlate ?? build.OnHead?.PlateAt ?? mass.Centre.X) : null,
            WorstTilt = supports.Stand is { } tilted && present is not null ? StandStability.WorstTilt(tilted, present) : null,
            Wind = supports.Stand is { } inWind ? WindOn(rig, inWind, partOf(supports.LegsName!)!,
                AirDensity.At(scenario.ColdestAir ?? StandardAir, scenario.Conditions.Altitude)) : null,
            Shoulder = supports.Shoulder is { } shoulder ? ShoulderBalance.Of(shoulder, mass) : null,
            Hands = hands,
            Holding = hands is not null && build.InHands?.GreatestEffort is { NewtonMeters: > 0 } effort
                ? HoldingOf(hands, mass, effort) : null,
            Lift = LiftOf(rig, supports, partOf),
            Joints = JointFinding.All(rig),
            Carriers = CarrierFinding.All(rig),
            Rods = RodFinding.All(rig),
            LensMounts = LensMountFinding.All(rig),
            SizesMissing = sizes,
            Assumed = [.. rig.Assumed, .. MissingSize.Points(rig, present, scenario), .. supports.Assumed,
                .. AssumedWind(build, supports), AssumedLift, .. Unweighed(supports, partOf)],
        };
    }

    /// <summary>By the side, so that the wind meets the longer way: box areas added, none hidden behind another; half of the
    /// legs' triangle of tubes.</summary>
    private static Wind WindOn(BuildInPlace rig, Stand stand, Part legs, Density air)
    {
        double area = 0, moment = 0;
        foreach (var (name, part) in rig.Placed.Parts.Where(part => !part.Value.IsHollow))
        {
            var side = part.Size.Length.Meters * part.Size.Height.Meters;
            area += side;
            moment += side * (stand.CameraPlateHeight.Meters + rig.Placed.MassProperties.Parts[name].BoxMiddle.Z);
        }
        // Three legs as tubes of a quarter of the folded bundle's width.
        var tubes = 3 * stand.CameraPlateHeight.Meters * (legs.Size?.Width.Meters ?? 0.12) / 4;
        area += tubes;
        moment += tubes * stand.CameraPlateHeight.Meters / 2;
        return new(Area.FromSquareMeters(area), Length.FromMeters(moment / area), DragCoefficient, air);
    }

    private static HandHold HandsOf(BuildInPlace rig)
    {
        var use = rig.Build.InHands;
        var handle = rig.Things.FirstOrDefault(thing => thing.Value.Kind == PartKind.Handle).Key;
        var hands = use?.Hands ?? (handle is null ? Length.Zero : rig.Placed.MassProperties.Parts[handle].Centre.X);
        var behind = use?.ShoulderBehind ?? ShoulderBehind;
        return new(hands, hands - behind, use?.Share ?? Ratio.FromPercent(50), ArmMass, hands - (behind / 2));
    }

    private static (Ratio, HoldingTime)? HoldingOf(HandHold hands, MassProperties rig, Torque effort)
    {
        var part = Ratio.FromDecimalFractions(Math.Abs(hands.ShoulderMoment(rig).NewtonMeters) / effort.NewtonMeters);
        return part.Percent is > 0 and <= 100 ? (part, EnduranceFit.Shoulder.At(part)) : null;
    }

    /// <summary>From the ground to where the rig is used; on a tripod with all that the rig stands on.</summary>
    private static WholeLift LiftOf(BuildInPlace rig, BuildSupports supports, Func<string, Part?> partOf)
    {
        var under = rig.Build.Stance == Stance.Tripod
            ? new[] { supports.HeadName, supports.LegsName }.OfType<string>().ToList() : [];
        var lifted = rig.Placed.MassProperties.Mass + Mass.FromKilograms(under.Sum(name => partOf(name)!.Mass?.Kilograms ?? 0));
        var to = rig.Build.Stance switch
        {
            Stance.Tripod => supports.Stand?.CameraPlateHeight ?? Length.FromMillimeters(1400),
            Stance.Shoulder => Length.FromMillimeters(1450),
            _ => Length.FromMillimeters(1200),
        };
        Lifting At(Length hands) => new() { Horizontal = HandsAhead, Vertical = hands,
            Distance = Length.FromMillimeters(Math.Clamp((to - LiftedFrom).Millimeters, 250, 1750)), Grip = LiftingGrip.Fair };
        return new(lifted, under, At(LiftedFrom), At(UnitMath.Min(to, LiftedFrom + Length.FromMillimeters(1750))));
    }

    private static IEnumerable<AssumedValue> Unweighed(BuildSupports supports, Func<string, Part?> partOf) =>
        new[] { supports.HeadName, supports.LegsName }.OfType<string>().Where(name => partOf(name)!.Mass is null)
            .Select(name => new AssumedValue("lifting.mass", $"mass of {name} when the whole is lifted", "none counted",
                "its parts file gives none, so that the lift is heavier than told",
                Citation.CommonPractice("no guess at a mass")));

    private static IEnumerable<AssumedValue> AssumedWind(Build build, BuildSupports supports)
    {
        if (supports.Stand is null || build.OnLegs?.Wind is null)
            yield break;
        if (build.OnLegs.Surroundings is null)
            yield return new("on-legs.surroundings", "what lies around, for the gusts", "inland",
                $"not given; gusts are then {Gusts.Factor(Surroundings.Inland):0.##} times the mean, the most of all",
                Gusts.Source);
        if (build.OnLegs.WindHeight is null)
            yield return new("on-legs.wind-height", "height that the mean wind is for", "that of the rig",
                "not given; a forecast is for 10 m, and there is less wind below",
                Citation.CommonPractice("the careful reading"));
    }
}
