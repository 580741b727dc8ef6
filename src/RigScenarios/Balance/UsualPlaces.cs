using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// The usual place of each thing of a build that has none yet, from its kind and the sizes around it: cage round the body, lens
/// in front, rods 85 mm
/// under the lens's axis, battery behind, monitor on its arm (common practice, no source). A first guess to be corrected, and
/// reported as one.
/// </summary>
internal sealed class UsualPlaces
{
    /// <summary>From the lens's axis down to the middle of 15 mm rods (common practice, no source).</summary>
    private const double RodsBelowAxis = 0.085;

    /// <summary>Height of the lens's axis as a part of the body's height (common practice, no source).</summary>
    private const double AxisInBody = 0.47;

    /// <summary>What a clamp on rods keeps free at their ends, m.</summary>
    private const double RodEnd = 0.012;

    private readonly OrderedMap<Part> parts;
    private readonly Dictionary<string, PlaceInUse> places;
    private readonly string? body, cage, plate, lens, adapter;

    private UsualPlaces(OrderedMap<Part> parts, OrderedMap<PlaceInUse> given)
    {
        this.parts = parts;
        places = given.Where(place => parts.ContainsKey(place.Key)).ToDictionary(StringComparer.Ordinal);
        body = First(PartKind.Body);
        cage = First(PartKind.Cage);
        plate = First(PartKind.Plate);
        lens = First(PartKind.Lens);
        adapter = First(PartKind.LensAdapter);
    }

    /// <summary>The places of all parts, given ones first come first; the others as usual.</summary>
    /// <param name="parts">The things on the rig, by their names in the kit.</param>
    /// <param name="given">The places that somebody gave.</param>
    public static OrderedMap<PlaceInUse> Fill(OrderedMap<Part> parts, OrderedMap<PlaceInUse> given)
    {
        var usual = new UsualPlaces(parts, given);
        // What carries others comes first, so that their places are known when those of the others are worked out.
        foreach (var (name, part) in parts.OrderBy(part => Rank(part.Value.Kind)))
        {
            if (!usual.places.ContainsKey(name))
                usual.places[name] = usual.Of(name, part);
        }
        return new(parts.Keys.Select(name => KeyValuePair.Create(name, usual.places[name])));
    }

    private static int Rank(PartKind kind) => kind switch
    {
        PartKind.Cage => 0,
        PartKind.Body => 1,
        PartKind.LensAdapter => 2,
        PartKind.Lens => 3,
        PartKind.Rods => 4,
        PartKind.Plate => 5,
        PartKind.Arm => 6,
        _ => 7,
    };

    private PlaceInUse Of(string name, Part part) => part.Kind switch
    {
        // What the rig stands on carries the body, so that the joints carry what they carry on a head.
        PartKind.Cage => On(null, 0, 0, BodyHeight / 2),
        PartKind.Body => On(cage, 0, 0, 0),
        PartKind.LensAdapter => On(body, BodyLength / 2, 0, Axis),
        PartKind.Lens when name != lens => On(body, BodyLength / 2, 0, Axis),
        PartKind.Lens => adapter is null ? On(body, BodyLength / 2, 0, Axis)
            : On(adapter, BodyLength / 2 + Length(adapter), 0, Axis),
        PartKind.Rods => OfRods(name, part),
        PartKind.Plate => OfPlate(part),
        PartKind.Battery => plate is null ? On(Frame, FrameRear, 0, BodyHeight / 2)
            : On(plate, Point(plate).X - (Length(plate) / 2), 0, Point(plate).Z + (Height(plate) / 2)),
        PartKind.Arm => OfArm(part),
        PartKind.Monitor => OfMonitor(name, part),
        PartKind.Handle => OfHandle(part),
        PartKind.Transmitter => On(Frame, -BodyLength / 4, -(FrameWidth + Side(part)) / 2, BodyHeight * 0.45),
        PartKind.MotorController => On(Frame, -BodyLength / 6, (FrameWidth + Side(part)) / 2, BodyHeight * 0.45),
        PartKind.Motor => AlongLens(part, 0.5, (LensWidth + Side(part)) / 2 * -1),
        PartKind.FollowFocus => AlongLens(part, 0.4, (LensWidth + Side(part)) / 2),
        PartKind.Support => AlongLens(part, 0.7, 0),
        PartKind.ShoulderPad => OfPad(part),
        PartKind.Regulator => On(body, -BodyLength * 0.2, -BodyWidth * 0.3, BodyHeight * 0.4),
        PartKind.Cable => On(plate ?? body, Point(plate ?? body).X, 0, Point(plate ?? body).Z),
        _ => On(Frame, 0, 0, FrameTop),
    };

    /// <summary>A pair reaches from before the lens to behind the body; one that is too short for both serves the
    /// front.</summary>
    private PlaceInUse OfRods(string name, Part part)
    {
        var isSecond = Names(PartKind.Rods).First() != name;
        double length = Length(part), front = Names(PartKind.Support).Any() || length >= 0.25
            ? LensFront + 0.015 : (BodyLength / 2) + 0.07;
        var middle = isSecond ? (-BodyLength / 2) + 0.04 - (length / 2) : front - (length / 2);
        return On(cage ?? body, middle, 0, Axis - RodsBelowAxis);
    }

    private PlaceInUse OfPlate(Part part)
    {
        double length = Length(part), height = Height(part);
        // It moves between the rods' rear ends and the body.
        if (RearRods is { } rods && RodsRear(rods) + RodEnd <= FrameRear - length)
        {
            double rear = RodsRear(rods) + RodEnd, front = FrameRear - (length / 2) - 0.004, at = Math.Max(rear, front - 0.03);
            return Sliding(On(rods, at, 0, Point(rods).Z - 0.01), rods, rear, front);
        }
        return On(Frame, FrameRear - (length / 2), 0, (BodyHeight - height) / 2);
    }

    /// <summary>From a front corner of the top, forward and up.</summary>
    private PlaceInUse OfArm(Part part) =>
        On(Frame, FrameLength * 0.3, (FrameWidth / 2) - 0.02 - (0.05 * IndexOf(part)),
            FrameTop) with { NoseDown = Angle.FromDegrees(-60) };

    private PlaceInUse OfMonitor(string name, Part part)
    {
        var arm = Names(PartKind.Arm).ElementAtOrDefault(Names(PartKind.Monitor).ToList().IndexOf(name));
        if (arm is null)
            return On(Frame, 0, (FrameWidth + Side(part)) / 2, BodyHeight * 0.6);
        // The screen is set upright again.
        return new() { On = arm, AtEnd = true, TurnedLeft = null, NoseDown = places[arm].NoseDown is { } down ? -down : null };
    }

    /// <summary>A handle wider than the rig is a pair for the shoulder and sits on the rods in front; others go on top.</summary>
    private PlaceInUse OfHandle(Part part)
    {
        if (Side(part) > 0.2 && FrontRods is { } rods)
        {
            var at = RodsFront(rods) - (Length(part) / 2);
            return Sliding(On(rods, at, 0, Point(rods).Z - Height(part)), rods, RodsRear(rods) + RodEnd,
                RodsFront(rods) - RodEnd);
        }
        return On(Frame, 0, 0, FrameTop);
    }

    private PlaceInUse OfPad(Part part)
    {
        var carrier = RearRods ?? Frame;
        var at = FrameRear - 0.02 - (Length(part) / 2);
        var place = On(carrier, at, 0, Axis - RodsBelowAxis - 0.008);
        return RearRods is { } rods ? Sliding(place, rods, FrameRear - 0.25, FrameRear + 0.02) : place;
    }

    private PlaceInUse AlongLens(Part part, double share, double left)
    {
        var at = (BodyLength / 2) + (adapter is null ? 0 : Length(adapter)) + (share * (lens is null ? 0 : Length(lens)));
        if (FrontRods is not { } rods)
            return On(lens ?? body, at, left, left == 0 ? Axis - (LensWidth / 2) - Height(part) : Axis - (Height(part) / 2));
        at = Math.Clamp(at, RodsRear(rods) + RodEnd, RodsFront(rods) - RodEnd);
        return Sliding(On(rods, at, left, left == 0 ? Point(rods).Z : Axis - (Height(part) / 2)), rods, BodyLength / 2,
            RodsFront(rods) - RodEnd);
    }

    private PlaceInUse Sliding(PlaceInUse place, string carrier, double from, double to) =>
        from <= to ? place with { SlidesFrom = Millimetres(from - Point(carrier).X),
            SlidesTo = Millimetres(to - Point(carrier).X) } : place;

    /// <summary>A place on a carrier, for a mounting point that is given in the rig's own frame.</summary>
    private PlaceInUse On(string? carrier, double x, double y, double z)
    {
        var from = Point(carrier);
        return new() { On = carrier, Forward = NotZero(x - from.X), Left = NotZero(y - from.Y), Up = NotZero(z - from.Z) };
    }

    private static Length? NotZero(double metres) => Math.Abs(metres) < 0.0005 ? null : Millimetres(metres);

    /// <summary>A guess is good to the millimetre.</summary>
    private static Length Millimetres(double metres) => UnitsNet.Length.FromMillimeters(Math.Round(metres * 1000));

    /// <summary>The mounting point of a part in the rig's frame. Turned carriers are taken as straight: what hangs on them has a
    /// place by then.</summary>
    private Vector Point(string? name)
    {
        var sum = default(Vector);
        for (var steps = 0; name is not null && places.TryGetValue(name, out var place) && steps <= parts.Count; steps++,
            name = place.On)
        {
            sum += new Vector((place.Forward ?? default).Meters, (place.Left ?? default).Meters, (place.Up ?? default).Meters);
            if (place.AtEnd && place.On is { } arm)
                sum += new Vector(Length(arm), 0, 0);
        }
        return sum;
    }

    private string? Frame => cage ?? body;

    private double BodyLength => body is null ? 0 : Length(body);

    private double BodyWidth => body is null ? 0 : Side(parts[body]);

    private double BodyHeight => body is null ? 0 : Height(body);

    private double Axis => AxisInBody * BodyHeight;

    private double FrameLength => Frame is { } frame ? Length(frame) : 0;

    private double FrameWidth => Frame is { } frame ? Side(parts[frame]) : 0;

    private double FrameRear => Math.Min(-BodyLength / 2, cage is null ? 0 : Point(cage).X - (Length(cage) / 2));

    private double FrameTop => Math.Max(BodyHeight, cage is null ? 0 : Point(cage).Z + (Height(cage) / 2));

    private double LensWidth => lens is null ? 0.08 : Side(parts[lens]);

    private double LensFront => (BodyLength / 2) + (adapter is null ? 0 : Length(adapter)) + (lens is null ? 0 : Length(lens));

    private string? FrontRods => Names(PartKind.Rods).MaxBy(RodsFront);

    private string? RearRods => Names(PartKind.Rods).MinBy(RodsRear);

    private double RodsFront(string rods) => Point(rods).X + (Length(rods) / 2);

    private double RodsRear(string rods) => Point(rods).X - (Length(rods) / 2);

    private int IndexOf(Part part) => parts.Values.Where(other => other.Kind == part.Kind).ToList().IndexOf(part);

    private IEnumerable<string> Names(PartKind kind) => parts.Where(part => part.Value.Kind == kind).Select(part => part.Key);

    private string? First(PartKind kind) => Names(kind).FirstOrDefault();

    private double Length(string name) => Length(parts[name]);

    private static double Length(Part part) => part.Size?.Length.Meters ?? 0;

    private static double Side(Part part) => part.Size?.Width.Meters ?? 0;

    private double Height(string name) => Height(parts[name]);

    private static double Height(Part part) => part.Size?.Height.Meters ?? 0;
}
