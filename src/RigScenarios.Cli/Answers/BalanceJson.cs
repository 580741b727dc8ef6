using System.Text.Encodings.Web;
using System.Text.Json;
using RigScenarios.Balance;
using RigScenarios.Loads;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>How builds balance, for programs. The shape is documented in docs/json.md and held by a test; fields are added, never changed.</summary>
internal static class BalanceJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Text(Scenario scenario, IReadOnlyList<BuildBalance> builds) => JsonSerializer.Serialize(
        new { format = "rigscenarios balance 1", title = scenario.Title, builds = builds.Select(One), changes = StanceSteps.All(builds).Select(Steps) }, Options);

    private static object One(BuildBalance balance) => new
    {
        build = balance.Name,
        stance = balance.Rig.Build.Stance.ToString().ToLowerInvariant(),
        answer = BalanceWords.Answer(balance),
        setting = BalanceWords.Setting(balance),
        mass_kg = Round(balance.Mass.Mass.Kilograms),
        mass_within_kg = Round(balance.Mass.MassUncertainty.Kilograms),
        centre_mm = Millimetres(balance.Mass.Centre),
        centre_within_mm = Millimetres(balance.Mass.CentreUncertainty),
        inertia_kg_m2 = new
        {
            xx = balance.Mass.Inertia.XX.KilogramSquareMeters, yy = balance.Mass.Inertia.YY.KilogramSquareMeters, zz = balance.Mass.Inertia.ZZ.KilogramSquareMeters,
            xy = balance.Mass.Inertia.XY.KilogramSquareMeters, xz = balance.Mass.Inertia.XZ.KilogramSquareMeters, yz = balance.Mass.Inertia.YZ.KilogramSquareMeters,
        },
        head = balance.Best is { } best ? Head(best) : null,
        head_as_set = balance.AsSet is { } set ? Head(set) : null,
        cases = balance.Cases.Select(Case),
        shoulder = balance.Shoulder is { } shoulder ? new
        {
            pad_mm = Round(shoulder.Support.Pad.Millimeters), hands_mm = Round(shoulder.Support.Hands.Millimeters),
            hand_load_N = Round(shoulder.HandLoad.Newtons), pad_load_N = Round(shoulder.PadLoad.Newtons), roll_Nm = Round(shoulder.RollMoment.NewtonMeters),
        } : null,
        hands = balance.Hands is { } hands ? new
        {
            wrist_Nm = Round(hands.WristMoment(balance.Mass).NewtonMeters), shoulder_Nm = Round(hands.ShoulderMoment(balance.Mass).NewtonMeters),
            effort_percent = Round(balance.Holding?.Part.Percent), holding_time_s = Round(balance.Holding?.Time.Typical.Seconds),
        } : null,
        stand = (balance.WorstTilt ?? balance.Level) is { } stand ? Stand(balance, stand) : null,
        lifting = new { recommended_limit_kg = Round(balance.Lift.RecommendedLimit.Kilograms), index = Round(balance.Lift.Index(balance.Mass.Mass)) },
        limits = BalanceMargin.All(balance).Select(margin => new { limit = margin.Limit, worst = margin.Worst, allowed = margin.Allowed, left = margin.Left, left_percent = Round(margin.Share?.Percent), source = margin.Source }),
        joints = balance.Joints.Select(Joint),
        what_to_move = BalanceHelp.Find(balance).Select(help => new { part = help.Part, from_mm = Round(help.From.Millimeters), to_mm = Round(help.Answer.OffsetX.Millimeters), reaches = help.Answer.Solved, words = help.Words }),
        parts = balance.Mass.Parts.Select(part => new
        {
            part = part.Key, mass_g = Round(part.Value.Mass.Grams), on = balance.Rig.Places[part.Key].On, centre_mm = Millimetres(part.Value.Centre),
            place_assumed = balance.Rig.PlacesAssumed.Contains(part.Key),
            moment_share_Nm = Round(balance.Mass.ForeAftShare(part.Key, balance.Present?.Plate ?? balance.Supports.Shoulder?.Pad ?? balance.Mass.Centre.X).NewtonMeters),
        }),
        overlaps = balance.Check.Overlaps.Select(overlap => new { one = overlap.One, other = overlap.Other, depth_mm = Round(overlap.Depth.Millimeters) }),
        outside_range = balance.Check.OutsideRange,
        missing = balance.Supports.Missing,
        assumed = balance.Assumed.Select(assumed => new { field = assumed.Field, name = assumed.Name, value = assumed.Value, why = assumed.Why, source = assumed.Source.ToString() }),
        cautions = BalanceWords.Cautions(balance),
    };

    private static object Head(HeadBalance head) => new
    {
        plate_mm = Round(head.Plate.Millimeters),
        counterbalance_Nm = Round(head.Counterbalance.NewtonMeters),
        step = head.StepIndex + 1,
        counterbalance_wanted_Nm = Round(head.CounterbalanceWanted.NewtonMeters),
        worst_Nm = Round(head.WorstResidual.NewtonMeters),
        worst_tilt_deg = Round(head.WorstTilt.Degrees),
        drag_Nm = Round(head.Head.Drag.NewtonMeters),
        tilt_margin_Nm = Round(head.TiltMargin.NewtonMeters),
        travel_margin_mm = Round(head.TravelMargin.Millimeters),
        load_margin_kg = Round(head.LoadMargin?.Kilograms),
        exceeded = head.Exceeded.Select(limit => limit.InWords()),
    };

    private static object Case(HeadCase happening) => new
    {
        part = happening.Part,
        what = happening.Title,
        level_Nm = Round(happening.Level.NewtonMeters),
        drag_margin_Nm = Round(happening.DragMargin.NewtonMeters),
        roll_Nm = Round(happening.Roll.NewtonMeters),
        words = BalanceWords.Case(happening),
        caution = happening.Caution,
    };

    private static object Stand(BuildBalance balance, StandStability stand) => new
    {
        tilt_deg = Round(stand.Tilt.Degrees),
        tip_angle_deg = Round(stand.TipAngle.Degrees),
        tip_angle_level_deg = Round(balance.Level!.TipAngle.Degrees),
        edge_mm = Round(stand.EdgeDistance.Millimeters),
        centre_height_mm = Round(stand.CentreHeight.Millimeters),
        push_at_plate_N = Round(stand.TippingForce(balance.Supports.Stand!.PlateHeight)?.Newtons),
        wind_mps = balance.Wind is { } wind ? Round(stand.TippingWind(wind)?.MetersPerSecond) : null,
        ballast = StandBallast.Of(balance) is { } ballast ? new { wanted_lean_deg = Round(ballast.Wanted.Degrees), need = ballast.Ballast.InWords, mass_kg = Round(ballast.Ballast.Mass?.Kilograms), at_mm = Round(ballast.Height.Millimeters) } : null,
    };

    private static object Joint(JointFinding joint) => new
    {
        part = joint.Load.Part,
        on = joint.On,
        held_by = joint.Fixing.ToString(),
        handling_factor = joint.Load.HandlingFactor,
        force_N = Round(joint.Load.Force.Newtons),
        moment_Nm = Round(joint.Load.Moment.NewtonMeters),
        rated_force_N = Round(joint.Rating.Force?.Newtons),
        rated_moment_Nm = Round(joint.Rating.Moment?.NewtonMeters),
        margin_percent = Round(joint.MarginShare?.Percent),
    };

    private static object Steps(StanceSteps steps) => new
    {
        from = steps.From.Name,
        to = steps.To.Name,
        comes_off = steps.Change.Off,
        goes_on = steps.Change.On,
        moves = steps.Change.Moved.Select(moved => new { part = moved.Key, by_mm = Millimetres(moved.Value) }),
        steps = steps.Change.Steps,
        minutes = Round(steps.Time.Minutes),
        plate_shift_mm = Round(steps.PlateShift?.Millimeters),
    };

    private static object Millimetres(Position position) => new { x = Round(position.X.Millimeters), y = Round(position.Y.Millimeters), z = Round(position.Z.Millimeters) };

    private static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;
}
