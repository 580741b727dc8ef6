using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A build with each of its things at a place: those that the build gives, and for the rest the usual ones.</summary>
public sealed record BuildInPlace
{
    /// <summary>How far a given place may be off where nobody said.</summary>
    public static Length PlaceWithin { get; } = Length.FromMillimeters(3);

    /// <summary>How far a usual place may be off.</summary>
    public static Length UsualPlaceWithin { get; } = Length.FromMillimeters(15);

    /// <summary>How far a mass may be off where nobody said.</summary>
    public static Ratio MassWithin { get; } = Ratio.FromPercent(2);

    /// <summary>How far a centre that nobody knows may be from the middle of the box, as a part of the box's edges.</summary>
    public static Ratio CentreWithin { get; } = Ratio.FromPercent(10);

    private BuildInPlace(Build build,
        OrderedMap<Part> things, OrderedMap<PlaceInUse> places, IReadOnlyList<string> usual, IReadOnlyList<string> withoutMass,
        PlacedBuild placed) =>
        (Build, Things, Places, PlacesAssumed, WithoutMass, Placed) = (build, things, places, usual, withoutMass, placed);

    /// <summary>The build.</summary>
    public Build Build { get; }

    /// <summary>What is on the rig, by names in the kit; head, legs, chargers and what lies beside the rig are not.</summary>
    public OrderedMap<Part> Things { get; }

    /// <summary>The place of each thing.</summary>
    public OrderedMap<PlaceInUse> Places { get; }

    /// <summary>The things whose place nobody gave: the usual one was taken.</summary>
    public IReadOnlyList<string> PlacesAssumed { get; }

    /// <summary>The things whose mass nobody gave; they are left out of every figure.</summary>
    public IReadOnlyList<string> WithoutMass { get; }

    /// <summary>The parts as bodies in space.</summary>
    public PlacedBuild Placed { get; }

    /// <summary>Puts a build together.</summary>
    /// <param name="build">The build.</param>
    /// <param name="partOf">The part behind a name in the kit; null for an unknown name, which is passed over.</param>
    /// <exception cref="ArgumentException">Things carry each other in a ring, something sits on what is not on the rig, or
    /// nothing has a mass.</exception>
    public static BuildInPlace Of(Build build, Func<string, Part?> partOf)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(partOf);
        var things = new OrderedMap<Part>(build.Things.Distinct().Except(build.OffRig)
            .Select(name => (Name: name, Part: partOf(name)))
            .Where(thing => thing.Part is { Kind: not (PartKind.Head or PartKind.Tripod or PartKind.Charger) })
            .Select(thing => KeyValuePair.Create(thing.Name, thing.Part!)));
        var places = UsualPlaces.Fill(things, build.Places);
        var placed =
            new PlacedBuild(new(things.Select(thing => KeyValuePair.Create(thing.Key, Place(thing.Key, build, things, places)))));
        return new(build, things, places,
            [.. things.Keys.Where(name => !build.Places.ContainsKey(name))],
            [.. things.Where(thing => thing.Value.Mass is null).Select(thing => thing.Key)],
            placed);
    }

    /// <summary>
    /// The build with one thing moved along what carries it; every place is then a given one. Those that were only the usual ones
    /// stay as unsure as they were.
    /// </summary>
    /// <param name="name">Its name in the kit.</param>
    /// <param name="forward">Its new distance along the carrier's own forward axis.</param>
    /// <exception cref="ArgumentException">There is no such thing on the rig.</exception>
    public Build Moved(string name, Length forward) => Places.TryGetValue(name, out var place)
        ? Build with { Places = AllGiven().With(name, AsUnsure(name, place with { Forward = forward })) }
        : throw new ArgumentException($"There is no \"{name}\" on the rig; accepted: {string.Join(", ", Places.Keys)}.",
            nameof(name));

    // What stands in a file keeps its order, and so does what is off this build; the usual places come after it.
    private OrderedMap<PlaceInUse> AllGiven() => new(
        [.. Build.Places, .. Places.Where(thing => !Build.Places.ContainsKey(thing.Key))
            .Select(thing => KeyValuePair.Create(thing.Key, AsUnsure(thing.Key, thing.Value)))]);

    private PlaceInUse AsUnsure(string name, PlaceInUse place) =>
        Build.Places.ContainsKey(name) ? place : place with { Within = place.Within ?? UsualPlaceWithin };

    /// <summary>The things that their mounts let slide, with the stretch that each has.</summary>
    public IEnumerable<KeyValuePair<string, LengthRange>> Moveable =>
        from thing in Placed.Parts
        where thing.Value.Placement.OffsetXRange is not null
        select KeyValuePair.Create(thing.Key, thing.Value.Placement.OffsetXRange!);

    /// <summary>The parts in space with one thing exchanged for another part at the same place: another lens, another
    /// battery.</summary>
    /// <param name="name">Its name in the kit.</param>
    /// <param name="part">What takes its place; it needs a mass.</param>
    /// <exception cref="ArgumentException">There is no such thing on the rig, or the part has no mass.</exception>
    public PlacedBuild Exchanged(string name, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (!Things.ContainsKey(name))
            throw new ArgumentException($"There is no \"{name}\" on the rig; accepted: {string.Join(", ", Things.Keys)}.",
                nameof(name));
        if (part.Mass is null)
            throw new ArgumentException($"\"{part.Name}\" has no mass; accepted: a part with one, for instance 450 g.",
                nameof(part));
        return Placed.With(name, Place(name, Build, Things.With(name, part), Places));
    }

    /// <summary>What would be slid to move a thing: the thing itself, or the nearest of those that carry it that slides; null if
    /// none does.</summary>
    /// <param name="name">Its name in the kit.</param>
    public string? SlideOf(string name)
    {
        for (string? next = name; next is not null && Placed.Parts.TryGetValue(next, out var part); next = part.Placement.Carrier)
        {
            if (part.Placement.OffsetXRange is not null)
                return next;
        }
        return null;
    }

    /// <summary>What was taken because nobody gave it, for the answer.</summary>
    public IEnumerable<AssumedValue> Assumed
    {
        get
        {
            if (PlacesAssumed.Count > 0)
                yield return new("places", "where things sit", $"the usual places, within {UsualPlaceWithin.Millimeters:G3} mm",
                    PlacesAssumed.Count == Things.Count ? "no place given for anything" : "not given for "
                    + string.Join(", ", PlacesAssumed), Citation.CommonPractice("usual places (docs/balance.md)"));
            var unsure = Things.Values.Count(part => part is { Mass: not null, MassWithin: null });
            if (unsure > 0)
                yield return new("mass-within", "how sure the masses are", $"within {MassWithin.Percent:G3} %",
                    $"not given for {unsure} of {Things.Count} parts", Citation.CommonPractice("kitchen scales and data sheets"));
            var centres = Things.Values.Count(part => part is { Centre: null, Size: not null });
            if (centres > 0)
                yield return new("centre", "centres of gravity of single parts",
                    $"the middle of the box, within {CentreWithin.Percent:G3} % of its edges",
                    $"not given for {centres} of {Things.Count} parts", Citation.CommonPractice("parts of even density"));
        }
    }

    private static PlacedPart Place(string name, Build build, OrderedMap<Part> things, OrderedMap<PlaceInUse> places)
    {
        Part part = things[name];
        PlaceInUse place = places[name];
        var count = build.Devices.TryGetValue(name, out var device) ? device.Count : 1;
        var mass = (part.Mass ?? Mass.Zero) * count;
        // A cable lies about; its length is not that of a box.
        var size = part.Kind == PartKind.Cable ? null : part.Size;
        var box = size ?? new(Length.Zero, Length.Zero, Length.Zero);
        var middle = Middle(part.HeldAt ?? part.Kind.Usual(), box);
        var within = (place.Within ?? (build.Places.ContainsKey(name) ? PlaceWithin : UsualPlaceWithin)).Meters;
        var loose = part.Centre is null ? CentreWithin.DecimalFractions : 0;
        double Unsure(Length edge) => Math.Sqrt((within * within) + Math.Pow(loose * edge.Meters, 2));
        var end = place.AtEnd && place.On is { } arm && things.TryGetValue(arm, out var armPart)
            ? armPart.Size?.Length ?? Length.Zero : Length.Zero;
        var zero = Length.Zero;
        return new()
        {
            Mass = mass,
            MassUncertainty = part.MassWithin is { } known ? known * count : mass * MassWithin.DecimalFractions,
            Size = box,
            BoxMiddle = middle,
            MassCentre = part.Centre is { } own ? new(middle.X + own.Forward, middle.Y + own.Left, middle.Z + own.Up) : null,
            CentreUncertainty = RigPoint.FromMetres(Unsure(box.Length), Unsure(box.Width), Unsure(box.Height)),
            IsHollow = part.Kind is PartKind.Cage or PartKind.Rods or PartKind.Arm or PartKind.Support or PartKind.Handle,
            Placement = new()
            {
                Carrier = place.On,
                Offset = new((place.Forward ?? zero) + end, place.Left ?? zero, place.Up ?? zero),
                Orientation = new(place.TurnedLeft ?? Angle.Zero, place.NoseDown ?? Angle.Zero, place.LeftSideUp ?? Angle.Zero),
                OffsetXRange = place is { SlidesFrom: { } from, SlidesTo: { } to } ? new(from + end, to + end) : null,
            },
        };
    }

    /// <summary>From the mounting point to the middle of the box.</summary>
    private static RigPoint Middle(MountingFace face, BoxSize box)
    {
        Length length = box.Length / 2, width = box.Width / 2, height = box.Height / 2, zero = Length.Zero;
        return face switch
        {
            MountingFace.Underside => new(zero, zero, height),
            MountingFace.Top => new(zero, zero, -height),
            MountingFace.Rear => new(length, zero, zero),
            MountingFace.Front => new(-length, zero, zero),
            MountingFace.LeftSide => new(zero, -width, zero),
            MountingFace.RightSide => new(zero, width, zero),
            _ => RigPoint.Origin,
        };
    }
}
