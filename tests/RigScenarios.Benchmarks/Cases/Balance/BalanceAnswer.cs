using System.Text.Json.Nodes;
using RigScenarios.Balance;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Benchmarks.Cases.Balance;

/// <summary>Asks the library all that a balance case asks and puts the answers into the fields of a result file.</summary>
internal static class BalanceAnswer
{
    public static JsonObject Of(BalanceCase one)
    {
        var rig = one.Build.MassProperties;
        var head = HeadBalance.Of(one.Head, rig);
        var answer = new JsonObject { ["id"] = one.Id };
        AddMassProperties(answer, rig);
        answer["parts"] = new JsonArray([.. rig.Parts.Select(part => new JsonObject
        {
            ["id"] = part.Key,
            ["centreM"] = Point(part.Value.Centre),
            ["foreAftShareNm"] = rig.ForeAftShare(part.Key, head.CameraPlate).NewtonMeters,
        })]);
        answer["head"] = Head(head);
        answer["partsOff"] = new JsonArray([.. one.Removable.Select(part => Off(PartOff.Of(one.Build, head, part)))]);
        if (one.Shoulder is { } shoulder)
            answer["shoulder"] = Shoulder(ShoulderBalance.Of(shoulder.Support, rig), shoulder.CounterweightAt);
        if (one.Stand is { } stand)
            answer["stand"] = StandAnswer(StandStability.Of(stand.Stand, rig, head.CameraPlate), stand);
        answer["places"] =
            new JsonArray([.. one.Places.Select(place =>
            Place(place.Part, PlaceSearch.OffsetFor(one.Build, place.Part, place.Range, place.CentreX)))]);
        if (one.Envelope is { } envelope)
            answer["envelope"] = Envelope(BalanceEnvelope.Of(one.Build, one.Head, envelope.First, envelope.Second), envelope);
        return answer;
    }

    private static void AddMassProperties(JsonObject answer, MassProperties rig)
    {
        answer["massKg"] = rig.Mass.Kilograms;
        answer["centreM"] = Point(rig.Centre);
        answer["inertiaKgM2"] = new JsonObject
        {
            ["xx"] = rig.Inertia.XX.KilogramSquareMeters,
            ["yy"] = rig.Inertia.YY.KilogramSquareMeters,
            ["zz"] = rig.Inertia.ZZ.KilogramSquareMeters,
            ["xy"] = rig.Inertia.XY.KilogramSquareMeters,
            ["xz"] = rig.Inertia.XZ.KilogramSquareMeters,
            ["yz"] = rig.Inertia.YZ.KilogramSquareMeters,
        };
        answer["massUncertaintyKg"] = rig.MassUncertainty.Kilograms;
        answer["centreUncertaintyM"] = Point(rig.CentreUncertainty);
    }

    private static JsonObject Head(HeadBalance head) => new()
    {
        ["plateXM"] = head.CameraPlate.Meters,
        ["travelFrontMarginM"] = head.TravelFrontMargin.Meters,
        ["travelRearMarginM"] = head.TravelRearMargin.Meters,
        ["travelMarginM"] = head.TravelMargin.Meters,
        ["heightOverAxisM"] = head.HeightOverAxis.Meters,
        ["counterbalanceNm"] = head.Counterbalance.NewtonMeters,
        ["stepIndex"] = head.StepIndex,
        ["momentAtZeroNm"] = head.MomentAtZero.NewtonMeters,
        ["worstResidualNm"] = head.WorstResidual.NewtonMeters,
        ["tiltMarginNm"] = head.TiltMargin.NewtonMeters,
        ["loadMarginKg"] = head.LoadMargin?.Kilograms,
    };

    private static JsonObject Off(PartOff off)
    {
        var answer = new JsonObject { ["id"] = off.Part,
            ["off"] = new JsonArray([.. off.Off.Select(part => JsonValue.Create(part))]) };
        AddMassProperties(answer, off.Left.MassProperties);
        answer["momentAtZeroNm"] = off.AsItWas.MomentAtZero.NewtonMeters;
        answer["worstResidualNm"] = off.AsItWas.WorstResidual.NewtonMeters;
        answer["dragMarginNm"] = off.FrictionMargin.NewtonMeters;
        answer["dragMarginAtZeroNm"] = off.FrictionMarginAtZero.NewtonMeters;
        answer["lockMarginNm"] = off.LockMargin?.NewtonMeters;
        answer["lockMarginAtZeroNm"] = off.LockMarginAtZero?.NewtonMeters;
        answer["rebalanced"] = Head(off.Rebalanced);
        return answer;
    }

    private static JsonObject Shoulder(ShoulderBalance shoulder, Length counterweightAt)
    {
        var counterweight = shoulder.CounterweightAt(counterweightAt);
        return new()
        {
            ["handLoadN"] = shoulder.HandLoad.Newtons,
            ["padLoadN"] = shoulder.PadLoad.Newtons,
            ["rollMomentNm"] = shoulder.RollMoment.NewtonMeters,
            ["counterweight"] = counterweight.InWords,
            ["counterweightKg"] = counterweight.Mass?.Kilograms,
        };
    }

    private static JsonObject StandAnswer(StandStability stand, StandQuestion question)
    {
        var slope = stand.OnSlope(question.Slope);
        var ballast = stand.BallastFor(question.BallastHeight, question.WantedTip);
        return new()
        {
            ["totalMassKg"] = stand.TotalMass.Kilograms,
            ["centreHeightM"] = stand.CentreHeight.Meters,
            ["centreOffsetM"] = stand.CentreOffset.Meters,
            ["edgeDistanceM"] = stand.EdgeDistance.Meters,
            ["tipAngleRad"] = stand.TipAngle.Radians,
            ["pans"] = new JsonArray([.. question.Pans.Select(stand.AtPan).Select(pan => new JsonObject
            {
                ["panRad"] = pan.Pan.Radians,
                ["edgeDistanceM"] = pan.EdgeDistance.Meters,
                ["tipAngleRad"] = pan.TipAngle.Radians,
            })]),
            ["slopeEdgeDistanceM"] = slope.EdgeDistance.Meters,
            ["slopeRestRad"] = slope.TipAngleLeft.Radians,
            ["tipsOnLevel"] = stand.TipsOnLevel,
            ["tipsOnSlope"] = slope.Tips,
            ["tippingForceN"] = stand.TippingForce(question.ForceHeight)?.Newtons,
            ["tippingWindMPerS"] = stand.TippingWind(question.Wind)?.MetersPerSecond,
            ["ballast"] = ballast.InWords,
            ["ballastKg"] = ballast.Mass?.Kilograms,
        };
    }

    private static JsonObject Place(string part, PlaceAnswer place) => new()
    {
        ["part"] = part,
        ["solved"] = place.Solved,
        ["limit"] = place.LimitInWords,
        ["offsetXM"] = place.OffsetX.Meters,
        ["centreXM"] = place.CentreX.Meters,
        ["missingM"] = place.Missing.Meters,
    };

    private static JsonObject Envelope(BalanceEnvelope envelope, EnvelopeQuestion question)
    {
        var margins = question.Points.Select(point => envelope.At(point.First, point.Second)).ToList();
        return new()
        {
            ["edges"] = new JsonArray([.. question.FirstValues.SelectMany(envelope.EdgesAt).Select(edge => new JsonObject
            {
                ["first"] = Plain(edge.First),
                ["margin"] = edge.Limit.InWords(),
                ["second"] = Plain(edge.Second),
                ["limiting"] = edge.Limiting,
            })]),
            ["points"] = new JsonObject
            {
                ["travelFrontMarginM"] = Numbers(margins.Select(one => one.TravelFront.Meters)),
                ["travelRearMarginM"] = Numbers(margins.Select(one => one.TravelRear.Meters)),
                ["tiltMarginNm"] = Numbers(margins.Select(one => one.Tilt.NewtonMeters)),
                ["loadMarginKg"] = Numbers(margins.Select(one => one.Load!.Value.Kilograms)),
                ["inside"] = new JsonArray([.. margins.Select(one => JsonValue.Create(one.Inside))]),
            },
        };
    }

    private static double Plain(IQuantity quantity) => quantity switch
    {
        Length length => length.Meters,
        Mass mass => mass.Kilograms,
        _ => quantity.As(AngleUnit.Radian),
    };

    private static JsonArray Point(RigPoint point) => Numbers([point.X.Meters, point.Y.Meters, point.Z.Meters]);

    private static JsonArray Numbers(IEnumerable<double> numbers) => new([.. numbers.Select(number => JsonValue.Create(number))]);
}
