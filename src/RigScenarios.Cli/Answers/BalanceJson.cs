using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Loads;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>How builds balance, for programs, beside the answer that all commands share. The shape is documented in docs/json.md
/// and held by a test; fields are added, never changed.</summary>
internal static class BalanceJson
{
    public static string Text(Scenario scenario, IReadOnlyList<RigAnswer> answers) => JsonText.Answers(
        scenario,
        [.. answers.Select(answer => JsonText.Entry(answer, null, "balance",
        answer.Balance is { } balance ? One(balance) : new { }))],
        KeyValuePair.Create<string, object>("changes",
            StanceSteps.All([.. answers.Select(answer => answer.Balance).OfType<BuildBalance>()]).Select(Steps).ToList()));

    private static object One(BuildBalance balance) => new
    {
        stance = balance.Rig.Build.Stance.ToString().ToLowerInvariant(),
        words = BalanceWords.Answer(balance),
        lock_before_swap = balance.LocksBeforeSwap,
        setting = BalanceWords.Setting(balance),
        mass_kg = JsonText.Round(balance.Mass.Mass.Kilograms),
        mass_within_kg = JsonText.Round(balance.Mass.MassUncertainty.Kilograms),
        centre_mm = Millimetres(balance.Mass.Centre),
        centre_within_mm = Millimetres(balance.Mass.CentreUncertainty),
        inertia_kg_m2 = new
        {
            xx = balance.Mass.Inertia.XX.KilogramSquareMeters, yy = balance.Mass.Inertia.YY.KilogramSquareMeters,
            zz = balance.Mass.Inertia.ZZ.KilogramSquareMeters,
            xy = balance.Mass.Inertia.XY.KilogramSquareMeters, xz = balance.Mass.Inertia.XZ.KilogramSquareMeters,
            yz = balance.Mass.Inertia.YZ.KilogramSquareMeters,
        },
        head = balance.Best is { } best ? Head(best) : null,
        head_as_set = balance.AsSet is { } set ? Head(set) : null,
        cases = balance.Cases.Select(Case),
        shoulder = balance.Shoulder is { } shoulder ? new
        {
            pad_mm = JsonText.Round(shoulder.Support.Pad.Millimeters),
            hands_mm = JsonText.Round(shoulder.Support.Hands.Millimeters),
            hand_load_N = JsonText.Round(shoulder.HandLoad.Newtons), pad_load_N = JsonText.Round(shoulder.PadLoad.Newtons),
            roll_Nm = JsonText.Round(shoulder.RollMoment.NewtonMeters),
        } : null,
        hands = balance.Hands is { } hands ? new
        {
            wrist_Nm = JsonText.Round(hands.WristMoment(balance.Mass).NewtonMeters),
            shoulder_Nm = JsonText.Round(hands.ShoulderMoment(balance.Mass).NewtonMeters),
            effort_percent = JsonText.Round(balance.Holding?.Part.Percent),
            holding_time_s = JsonText.Round(balance.Holding?.Time.Typical.Seconds),
        } : null,
        stand = balance.Stand is { } stand ? Stand(balance, stand) : null,
        lifting = new
        {
            lifted_kg = JsonText.Round(balance.Lift.Lifted.Kilograms), with = balance.Lift.What,
            recommended_limit_kg = JsonText.Round(balance.Lift.RecommendedLimit.Kilograms),
            at_origin_kg = JsonText.Round(balance.Lift.Origin.RecommendedLimit.Kilograms),
            at_destination_kg = JsonText.Round(balance.Lift.Destination.RecommendedLimit.Kilograms),
            index = JsonText.Round(balance.Lift.Index),
        },
        joints = balance.Joints.Select(Joint),
        what_to_move = BalanceHelp.Find(balance)
            .Select(help => new { part = help.Part, from_mm = JsonText.Round(help.From.Millimeters),
            to_mm = JsonText.Round(help.Answer.OffsetX.Millimeters), reaches = help.Answer.Solved, words = help.Words }),
        parts = balance.Mass.Parts.Select(part => new
        {
            part = part.Key, mass_g = JsonText.Round(part.Value.Mass.Grams), on = balance.Rig.Places[part.Key].On,
            centre_mm = Millimetres(part.Value.Centre),
            place_assumed = balance.Rig.PlacesAssumed.Contains(part.Key),
            moment_share_Nm = JsonText.Round(balance.Mass.ForeAftShare(part.Key,
                balance.Present?.CameraPlate ?? balance.Supports.Shoulder?.Pad ?? balance.Mass.Centre.X).NewtonMeters),
        }),
        overlaps = balance.Check.Overlaps.Select(overlap => new { one = overlap.One, other = overlap.Other,
            depth_mm = JsonText.Round(overlap.Depth.Millimeters) }),
        outside_range = balance.Check.OutsideRange,
        assumed = balance.Assumed.Select(JsonText.Assumed),
        cautions = BalanceWords.Cautions(balance),
    };

    private static object Head(HeadBalance head) => new
    {
        plate_mm = JsonText.Round(head.CameraPlate.Millimeters),
        counterbalance_Nm = JsonText.Round(head.Counterbalance.NewtonMeters),
        setting = head.StepIndex + head.Head.Counterbalance.FirstSetting,
        settings_from = head.StepIndex is null ? null : (int?)head.Head.Counterbalance.FirstSetting,
        settings_to = head.StepIndex is null ? null
            : (int?)(head.Head.Counterbalance.FirstSetting + head.Head.Counterbalance.Steps.Count - 1),
        counterbalance_wanted_Nm = JsonText.Round(head.CounterbalanceWanted.NewtonMeters),
        worst_Nm = JsonText.Round(head.WorstResidual.NewtonMeters),
        worst_tilt_deg = JsonText.Round(head.WorstTilt.Degrees),
        friction_Nm = JsonText.Round(head.Head.Friction.NewtonMeters),
        drag_Nm = JsonText.Round(head.Head.Drag?.NewtonMeters),
        let_go = head.WhenLetGo.ToString().ToLowerInvariant(),
        creep_deg_per_s = JsonText.Round(head.CreepSpeed?.DegreesPerSecond),
        tilt_margin_Nm = JsonText.Round(head.TiltMargin.NewtonMeters),
        creep_margin_Nm = JsonText.Round(head.CreepMargin.NewtonMeters),
        travel_margin_mm = JsonText.Round(head.TravelMargin.Millimeters),
        load_margin_kg = JsonText.Round(head.LoadMargin?.Kilograms),
        exceeded = head.Exceeded.Select(limit => limit.InWords()),
    };

    private static object Case(HeadCase happening) => new
    {
        part = happening.Part,
        what = happening.Title,
        level_Nm = JsonText.Round(happening.Level.NewtonMeters),
        let_go = happening.WhenLetGo.ToString().ToLowerInvariant(),
        friction_margin_Nm = JsonText.Round(happening.Margin.NewtonMeters),
        roll_Nm = JsonText.Round(happening.Roll.NewtonMeters),
        words = HeadCaseWords.Of(happening),
        caution = HeadCaseWords.Caution(happening),
    };

    private static object Stand(BuildBalance balance, StandStability stand) => new
    {
        tilt_deg = JsonText.Round(stand.Tilt.Degrees),
        tip_angle_deg = JsonText.Round(stand.TipAngle.Degrees),
        tip_angle_level_deg = JsonText.Round(balance.Level!.TipAngle.Degrees),
        edge_mm = JsonText.Round(stand.EdgeDistance.Millimeters),
        centre_height_mm = JsonText.Round(stand.CentreHeight.Millimeters),
        slope_deg = JsonText.Round(balance.Slope.Degrees),
        push_at_camera_plate_N = JsonText.Round(stand.TippingForce(balance.Supports.Stand!.CameraPlateHeight,
            balance.Slope)?.Newtons),
        tipping_gust_mps = JsonText.Round(balance.TippingGust?.MetersPerSecond),
        air_kg_m3 = JsonText.Round(balance.Wind?.AirDensity.KilogramsPerCubicMeter),
        expected = balance.ExpectedWind is { } wind
            ? new { mean_mps = JsonText.Round(wind.Mean.MetersPerSecond), mean_for_m = JsonText.Round(wind.Height?.Meters),
            mean_at_rig_mps = JsonText.Round(wind.MeanAtRig.MetersPerSecond), gust_factor = JsonText.Round(wind.Factor),
            gust_mps = JsonText.Round(wind.Gust.MetersPerSecond) } : null,
        ballast = StandBallast.Of(balance) is { } ballast
            ? new { wanted_lean_deg = JsonText.Round(ballast.Wanted.Degrees), need = ballast.Ballast.InWords,
            mass_kg = JsonText.Round(ballast.Ballast.Mass?.Kilograms), at_mm = JsonText.Round(ballast.Height.Millimeters),
            for_gust = ballast.ForGust?.InWords, for_gust_kg = JsonText.Round(ballast.ForGust?.Mass?.Kilograms) } : null,
    };

    private static object Joint(JointFinding joint) => new
    {
        part = joint.Load.Part,
        on = joint.On,
        held_by = joint.Fixing.ToString(),
        handling_factor = joint.Load.HandlingFactor,
        force_N = JsonText.Round(joint.Load.Force.Newtons),
        moment_Nm = JsonText.Round(joint.Load.Moment.NewtonMeters),
        rated_force_N = JsonText.Round(joint.Rating.Force?.Newtons),
        rated_moment_Nm = JsonText.Round(joint.Rating.Moment?.NewtonMeters),
        margin_percent = JsonText.Round(joint.MarginShare?.Percent),
    };

    private static object Steps(StanceSteps steps) => new
    {
        from = steps.From.Name,
        to = steps.To.Name,
        comes_off = steps.Change.Off,
        goes_on = steps.Change.On,
        moves = steps.Change.Moved.Select(moved => new { part = moved.Key, by_mm = Millimetres(moved.Value) }),
        steps = steps.Change.Steps,
        minutes = JsonText.Round(steps.Time.Minutes),
        plate_shift_mm = JsonText.Round(steps.CameraPlateShift?.Millimeters),
    };

    private static object Millimetres(RigPoint position) =>
        new { x = JsonText.Round(position.X.Millimeters), y = JsonText.Round(position.Y.Millimeters),
        z = JsonText.Round(position.Z.Millimeters) };
}
