using System.Text.Json;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Balance;

/// <summary>Reads files of balance cases (JSON; fields and units in docs/balance.md, "Case files") as ordinary builds, heads and
/// stands.</summary>
internal static class BalanceCaseReader
{
    public static IReadOnlyList<BalanceCase> Read(string path) => CaseFile.Read(path, ReadCase);

    private static BalanceCase? ReadCase(string id, JsonElement element, CaseFields fields, List<string> problems)
    {
        var before = problems.Count;
        var parts = new List<KeyValuePair<string, PlacedPart>>();
        var removable = new List<string>();
        foreach (var part in fields.Objects(element, "parts"))
        {
            var name = fields.Text(part, "id");
            parts.Add(KeyValuePair.Create(name, ReadPart(part, fields)));
            if (CaseFields.Find(part, "removable", out var off) && off.ValueKind == JsonValueKind.True)
                removable.Add(name);
        }

        try
        {
            var one = new BalanceCase(id, new PlacedBuild(new OrderedMap<PlacedPart>(parts)), removable,
                ReadHead(element, fields),
                CaseFields.Find(element, "shoulder", out var shoulder) ? ReadShoulder(shoulder, fields) : null,
                CaseFields.Find(element, "stand", out var stand) ? ReadStand(stand, fields) : null,
                [.. fields.Objects(element, "places", optional: true).Select(place => new PlaceQuestion(
                    fields.Text(place, "part"), Range(fields.Numbers(place, "offsetXRangeM", 2)),
                    Metres(fields.Number(place, "centreXM"))))],
                CaseFields.Find(element, "envelope", out var envelope) ? ReadEnvelope(envelope, fields) : null);
            return problems.Count == before ? one : null;
        }
        catch (Exception error) when (error is ArgumentException or FormatException)
        {
            // What the library refuses; or what follows from a problem that has been reported already.
            if (problems.Count == before)
                fields.Problem("the case", error.Message);
            return null;
        }
    }

    private static PlacedPart ReadPart(JsonElement part, CaseFields fields)
    {
        var size = fields.Numbers(part, "sizeM", 3);
        var centre = Point(fields.Numbers(part, "centreM", 3));
        return new PlacedPart
        {
            Mass = Kilograms(fields.NotNegative(part, "massKg")),
            MassUncertainty = Kilograms(fields.NotNegative(part, "massUncertaintyKg", otherwise: 0)),
            Size = size.Length < 3 ? new BoxSize(default, default, default)
                : new BoxSize(Metres(size[0]), Metres(size[1]), Metres(size[2])),
            BoxMiddle = centre,
            MassCentre = centre,
            CentreUncertainty = CaseFields.Find(part, "centreUncertaintyM", out _)
                ? Point(fields.Numbers(part, "centreUncertaintyM", 3)) : RigPoint.Origin,
            Placement = new Placement
            {
                Carrier = CaseFields.Find(part, "on", out _) ? fields.Text(part, "on") : null,
                Offset = Point(fields.Numbers(part, "offsetM", 3)),
                Orientation = new Orientation(
                    Radians(fields.Number(part, "yawRad", otherwise: 0)), Radians(fields.Number(part, "pitchRad", otherwise: 0)),
                    Radians(fields.Number(part, "rollRad", otherwise: 0))),
            },
        };
    }

    private static FluidHead ReadHead(JsonElement element, CaseFields fields)
    {
        if (CaseFields.Find(element, "head.stepsNm", out var steps) && steps.ValueKind == JsonValueKind.Array
            && steps.GetArrayLength() == 0)
            fields.Problem("head.stepsNm", "is empty; accepted: one step or more, 0 for a head without counterbalance");
        double[] tilt = [.. fields.Numbers(element, "head.tiltRangeRad", 2), 0, 0];
        return new FluidHead
        {
            CameraPlateTravel = Range(fields.Numbers(element, "head.travelM", 2)),
            AxisDepth = Metres(fields.Number(element, "head.axisDepthM")),
            Counterbalance = CaseFields.Find(element, "head.rangeNm", out _)
                ? ReadRange(fields.Numbers(element, "head.rangeNm", 2))
                : Counterbalance.OfSteps(fields.Numbers(element, "head.stepsNm").DefaultIfEmpty(0).Select(Newtonmetres)),
            Friction = Newtonmetres(fields.NotNegative(element, "head.dragNm")),
            TiltLock = Newtonmetres(fields.NotNegative(element, "head.tiltLockNm")),
            TiltUp = Radians(tilt[0]),
            TiltDown = Radians(tilt[1]),
            RatedLoad = Kilograms(fields.Positive(element, "head.ratedLoadKg")),
        };
    }

    private static Counterbalance ReadRange(double[] range) =>
        range.Length < 2 ? Counterbalance.OfRange(default, default)
            : Counterbalance.OfRange(Newtonmetres(range[0]), Newtonmetres(range[1]));

    private static ShoulderQuestion ReadShoulder(JsonElement shoulder, CaseFields fields) => new(
        new ShoulderSupport(Metres(fields.Number(shoulder, "padXM")), Metres(fields.Number(shoulder, "handXM"))),
        Metres(fields.Number(shoulder, "counterweightXM")));

    private static StandQuestion ReadStand(JsonElement stand, CaseFields fields) => new(
        new Stand
        {
            FootRadius = Metres(fields.Positive(stand, "footRadiusM")),
            Mass = Kilograms(fields.NotNegative(stand, "massKg")),
            CentreHeight = Metres(fields.Number(stand, "centreHeightM")),
            CameraPlateHeight = Metres(fields.Number(stand, "plateHeightM")),
        },
        Radians(fields.NotNegative(stand, "slopeRad")),
        [.. fields.Numbers(stand, "pansRad").Select(Radians)],
        Metres(fields.Positive(stand, "forceHeightM")),
        new Wind(Area.FromSquareMeters(Known(fields.Positive(stand, "wind.areaM2"))),
            Metres(fields.Positive(stand, "wind.heightM")),
            fields.Positive(stand, "wind.dragCoefficient"),
            Density.FromKilogramsPerCubicMeter(Known(fields.Positive(stand, "wind.airDensityKgPerM3")))),
        Metres(fields.Number(stand, "ballast.heightM")),
        Radians(fields.NotNegative(stand, "ballast.wantedTipRad")));

    private static EnvelopeQuestion ReadEnvelope(JsonElement envelope, CaseFields fields)
    {
        var first = Variable(envelope, "first", fields);
        var second = Variable(envelope, "second", fields);
        return new EnvelopeQuestion(first.Variable, second.Variable,
            [.. fields.Numbers(envelope, "firstValues").Select(first.Quantity)],
            [.. fields.Pairs(envelope, "points").Select(pair => (first.Quantity(pair[0]), second.Quantity(pair[1])))]);
    }

    private static (RigVariable Variable, Func<double, IQuantity> Quantity) Variable(JsonElement envelope, string which,
        CaseFields fields)
    {
        var part = fields.Text(envelope, $"{which}.part");
        double least = fields.Number(envelope, $"{which}.min"), greatest = fields.Number(envelope, $"{which}.max");
        var quantity = fields.Text(envelope, $"{which}.quantity");
        return quantity switch
        {
            "offsetXM" or "offsetYM" or "offsetZM" =>
                (RigVariable.Offset(part, Field(quantity), Range([least, greatest])), value => Metres(value)),
            "massKg" => (RigVariable.OfMass(part, Kilograms(least), Kilograms(greatest)), value => Kilograms(value)),
            "yawRad" or "pitchRad" or "rollRad" =>
                (RigVariable.Turn(part, Field(quantity), Radians(least), Radians(greatest)), value => Radians(value)),
            _ => throw new FormatException(
                $"envelope.{which}.quantity is \"{quantity}\"; accepted: offsetXM, offsetYM, offsetZM, massKg, yawRad, "
                    + "pitchRad, rollRad."),
        };
    }

    private static PlacementField Field(string quantity) => quantity switch
    {
        "offsetXM" => PlacementField.OffsetX,
        "offsetYM" => PlacementField.OffsetY,
        "offsetZM" => PlacementField.OffsetZ,
        "yawRad" => PlacementField.Yaw,
        "pitchRad" => PlacementField.Pitch,
        _ => PlacementField.Roll,
    };

    private static RigPoint Point(double[] metres) =>
        metres.Length < 3 ? RigPoint.Origin : RigPoint.FromMetres(metres[0], metres[1], metres[2]);

    private static LengthRange Range(double[] metres) =>
        metres.Length < 2 ? new(default, default) : new(Metres(metres[0]), Metres(metres[1]));

    private static Length Metres(double value) => Length.FromMeters(Known(value));

    private static Mass Kilograms(double value) => Mass.FromKilograms(Known(value));

    private static Angle Radians(double value) => Angle.FromRadians(Known(value));

    private static Torque Newtonmetres(double value) => Torque.FromNewtonMeters(Known(value));

    /// <summary>A number that was refused is reported already; 0 stands for it while the rest is read, so that all problems are
    /// told.</summary>
    private static double Known(double value) => double.IsNaN(value) ? 0 : value;
}
