using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>One limit of a build at rest: what there is, what is allowed, what is left.</summary>
/// <param name="Limit">The limit in words.</param>
/// <param name="Worst">What there is.</param>
/// <param name="Allowed">What is allowed; "not known" where no rating is known.</param>
/// <param name="Left">What is left, with its unit; empty where nothing is known.</param>
/// <param name="Share">What is left as a part of what is allowed; null where nothing is known.</param>
/// <param name="Source">What it rests on.</param>
public sealed record BalanceMargin(string Limit, string Worst, string Allowed, string Left, Ratio? Share, string Source)
{
    /// <summary>All limits of a build, those with the least left first, those without a rating at the end.</summary>
    public static IReadOnlyList<BalanceMargin> All(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        IEnumerable<BalanceMargin> all = [.. OnHead(balance), .. OnStand(balance), .. balance.Carriers.Select(Of), .. balance.Joints.Where(joint => joint.MarginShare is not null).Select(Of), .. balance.Joints.Where(joint => joint.Screw is not null).Select(OfScrew), .. balance.Rods.Select(Of), .. balance.LensMounts.Select(Of), .. balance.Joints.Where(joint => joint is { MarginShare: null, Screw: null, Fixing: not Builds.Fixing.LensMount } && joint.Load.Force.Newtons > 0).Select(Unrated)];
        return [.. all.OrderBy(margin => margin.Share?.DecimalFractions ?? double.PositiveInfinity)];
    }

    private static IEnumerable<BalanceMargin> OnHead(BuildBalance balance)
    {
        if (balance.Present is not { } head)
            yield break;
        var half = (head.Head.PlateTravel.Greatest - head.Head.PlateTravel.Least) / 2;
        yield return new("Reach of the plate", $"centre {Millimetres(balance.Mass.Centre.X)} ahead of the tripod socket", $"{Millimetres(head.Head.PlateTravel.Least)} to {Millimetres(head.Head.PlateTravel.Greatest)}",
            Millimetres(head.TravelMargin), half.Meters > 0 ? Ratio.FromDecimalFractions(head.TravelMargin / half) : null, "the head's slide");
        yield return new("Tilt drag", $"{Moment(head.WorstResidual)} at {head.WorstTilt.Degrees:0}° tilt", Moment(head.Head.Drag), Moment(head.TiltMargin),
            head.Head.Drag.NewtonMeters > 0 ? Ratio.FromDecimalFractions(head.TiltMargin / head.Head.Drag) : null, "the head's drag and counterbalance");
        yield return head is { LoadMargin: { } load, Head.RatedLoad: { } rated }
            ? new("Rated load of the head", Kilograms(balance.Mass.Mass), Kilograms(rated), Kilograms(load), Ratio.FromDecimalFractions(load / rated), "its maker's rating")
            : Unrated("Rated load of the head", Kilograms(balance.Mass.Mass));
    }

    private static IEnumerable<BalanceMargin> OnStand(BuildBalance balance)
    {
        if ((balance.WorstTilt ?? balance.Level) is not { } stand)
            yield break;
        var yardstick = StandBallast.Yardstick.Tilt.Degrees;
        yield return new("Tipping over", $"tips at {stand.TipAngle.Degrees:0.0}° lean, head tilted {stand.Tilt.Degrees:0}°", $"no rule for camera stands; {yardstick:0}° for {StandBallast.Yardstick.What}",
            $"{stand.TipAngle.Degrees - yardstick:0.0}°", Ratio.FromDecimalFractions((stand.TipAngle.Degrees - yardstick) / yardstick), $"{StandBallast.Yardstick.Source.Authors} {StandBallast.Yardstick.Source.Title}, a yardstick and no rule");
        if (balance.Rig.Build.OnLegs?.Slope is { } slope)
        {
            var left = stand.OnSlope(slope).TipAngleLeft;
            yield return new("Slope of the ground", $"{slope.Degrees:0.0}°", $"{stand.TipAngle.Degrees:0.0}° to tip over", $"{left.Degrees:0.0}°", stand.TipAngle.Degrees > 0 ? Ratio.FromDecimalFractions(left / stand.TipAngle) : null, "legs not re-levelled, worst side");
        }
        if (balance.Rig.Build.OnLegs?.Wind is { } wind && balance.Wind is { } area && stand.TippingWind(area) is { } tips)
            yield return new("Wind", $"{wind.MetersPerSecond:0.0} m/s mean", $"{tips.MetersPerSecond:0.0} m/s tips it", $"{(tips - wind).MetersPerSecond:0.0} m/s", Ratio.FromDecimalFractions((tips - wind) / tips), "boxes of the parts; gusts run above the mean");
    }

    private static BalanceMargin Of(CarrierFinding carrier) => new(
        $"Rated load of {carrier.Part}", $"{Kilograms(carrier.Carried)} hang on it", Kilograms(carrier.Rated), Kilograms(carrier.Margin), Ratio.FromDecimalFractions(carrier.Margin / carrier.Rated), "its maker's rating");

    private static BalanceMargin Of(JointFinding joint) => new(
        $"Lock of {joint.RatedBy}, under {joint.Load.Part}", $"{Moment(joint.Load.Moment)} (weight taken twice)", joint.Rating.Moment is { } moment ? Moment(moment) : $"{joint.Rating.Force!.Value.Newtons:0} N",
        joint.Margins.Moment is { } left ? Moment(left) : $"{joint.Margins.Force!.Value.Newtons:0} N", joint.MarginShare, "its maker's rating");

    private static BalanceMargin OfScrew(JointFinding joint) => new(
        $"Screw of {joint.Load.Part} on {joint.On ?? "the head"}", $"{joint.Screw!.Tension.Newtons:0} N pull (weight taken twice)", $"{(joint.Screw.Tension + joint.Screw.LiftMargin).Newtons:0} N clamping",
        $"{joint.Screw.LiftMargin.Newtons:0} N", Ratio.FromDecimalFractions(joint.Screw.LiftMargin.Newtons / (joint.Screw.Tension + joint.Screw.LiftMargin).Newtons), $"{(joint.Fixing == Builds.Fixing.QuarterInchScrew ? "1/4-20" : "3/8-16")} at {JointFinding.HandTightened.NewtonMeters:0.#} N·m, edge {JointFinding.PlateEdge.Millimeters:0} mm away (common practice, no source)");

    private static BalanceMargin Of(RodFinding rods) => new(
        $"{rods.Rods}, {(rods.InFront ? "front" : "rear")} end", $"{rods.Stress.Megapascals:0.0} MPa; bends {rods.EndDeflection.Millimeters:0.00} mm, {rods.Slope.Degrees:0.00}°",
        rods.Material.YieldStrength is { } yield ? $"{yield.Megapascals:0} MPa" : "not known", rods.StressMargin is { } left ? $"{left.Megapascals:0} MPa" : "",
        rods.StressMargin is { } margin ? Ratio.FromDecimalFractions(margin.Megapascals / rods.Material.YieldStrength!.Value.Megapascals) : null, $"{rods.Material.Name}; the clamp's give not counted");

    private static BalanceMargin Of(LensMountFinding mount) => Unrated(
        $"Mount of {mount.Lens}", mount.SupportForce is { } force
            ? $"{Moment(mount.MomentUnsupported)} if {mount.Support} gives way; {force.Newtons:0} N on it if it is stiff" : $"{Moment(mount.MomentUnsupported)}, nothing under the lens");

    private static BalanceMargin Unrated(JointFinding joint) => Unrated(
        $"{Words(joint.Fixing)} {joint.Load.Part} on {joint.On ?? "the head"}", $"{joint.Load.Force.Newtons:0} N, {Moment(joint.Load.Moment)} (weight taken twice)");

    private static string Words(Builds.Fixing fixing) => fixing switch
    {
        Builds.Fixing.Shoe => "Shoe of",
        Builds.Fixing.RodClamp => "Rod clamp of",
        Builds.Fixing.ArmEnd => "End of the arm under",
        Builds.Fixing.BatteryPlate => "Lock of the battery plate under",
        _ => "Joint of",
    };

    private static BalanceMargin Unrated(string limit, string worst) => new(limit, worst, "not known", "", null, "no rating known: no verdict");

    private static string Millimetres(Length length) => $"{length.Millimeters:0} mm";

    private static string Moment(Torque torque) => $"{torque.NewtonMeters:0.0#} N·m";

    private static string Kilograms(Mass mass) => $"{mass.Kilograms:0.00} kg";
}
