using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How places and stances stand in a scenario file.</summary>
internal static class PlaceFormat
{
    private static readonly QuantityFormat<Angle> Turns = new(Angle.FromDegrees(-180), Angle.FromDegrees(180), "-60 °");

    private static readonly QuantityFormat<Length> Within = new(Length.FromMillimeters(0), Length.FromMillimeters(500), "3 mm");

    public static readonly Format<PlaceInUse> Place = new RecordFormat<PlaceInUse>(
        () => new PlaceInUse(),
        "Where a thing sits. Distances run from the mounting point of what carries it to its own; below zero: backward, "
            + "right, down.",
        Fields<PlaceInUse>.OptionalGroup("on", ScenarioFormat.KitName, place => place.On,
            (place, value) => place with { On = value },
            "What carries it, by its name in the kit; left out for the middle of the body's tripod socket."),
        Fields<PlaceInUse>.WithDefault("at-end", new YesNoFormat(), false, place => place.AtEnd,
            (place, value) => place with { AtEnd = value }, "Whether it sits at the far end of the arm that carries it."),
        Fields<PlaceInUse>.Optional("forward", SupportFormat.Distances, place => place.Forward,
            (place, value) => place with { Forward = value }, "Forward along the lens; below zero: backward."),
        Fields<PlaceInUse>.Optional("left", SupportFormat.Distances, place => place.Left,
            (place, value) => place with { Left = value }, "To the camera's left; below zero: to the right."),
        Fields<PlaceInUse>.Optional("up", SupportFormat.Distances, place => place.Up, (place, value) => place with { Up = value },
            "Upward; below zero: downward."),
        Fields<PlaceInUse>.Optional("turned-left", Turns, place => place.TurnedLeft,
            (place, value) => place with { TurnedLeft = value }, "Turned to the left about the upright axis."),
        Fields<PlaceInUse>.Optional("nose-down", Turns, place => place.NoseDown,
            (place, value) => place with { NoseDown = value }, "Then tipped nose down; below zero: nose up."),
        Fields<PlaceInUse>.Optional("left-side-up", Turns, place => place.LeftSideUp,
            (place, value) => place with { LeftSideUp = value }, "Then rolled, left side up."),
        Fields<PlaceInUse>.Optional("slides-from", SupportFormat.Distances, place => place.SlidesFrom,
            (place, value) => place with { SlidesFrom = value }, "The rearmost \"forward\" that its mount allows."),
        Fields<PlaceInUse>.Optional("slides-to", SupportFormat.Distances, place => place.SlidesTo,
            (place, value) => place with { SlidesTo = value }, "The foremost \"forward\" that its mount allows."),
        Fields<PlaceInUse>.Optional("within", Within, place => place.Within, (place, value) => place with { Within = value },
            "How far the true place may be from this one, either way."),
        Fields<PlaceInUse>.Optional("held-by", new ChoiceFormat<Fixing>(), place => place.HeldBy,
            (place, value) => place with { HeldBy = value }, "What holds it there."));

    public static readonly Format<HeadInUse> OnHead = new RecordFormat<HeadInUse>(
        () => new HeadInUse(), "How the build sits on its head.",
        Fields<HeadInUse>.Optional("slide-middle", SupportFormat.Distances, head => head.SlideMiddle,
            (head, value) => head with { SlideMiddle = value },
            "How far ahead of the body's tripod socket the head's centre is, with the camera plate in the middle of its "
                + "slide; 0 if left out."),
        Fields<HeadInUse>.Optional("base-depth", SupportFormat.Depths, head => head.BaseDepth,
            (head, value) => head with { BaseDepth = value }, "From the body's base plane down to the top of the camera plate."),
        Fields<HeadInUse>.Optional("plate-at", SupportFormat.Distances, head => head.PlateAt,
            (head, value) => head with { PlateAt = value },
            "What stands over the head's centre now, ahead of the tripod socket; left out to be told where to set it."),
        Fields<HeadInUse>.Optional("counterbalance-at", SupportFormat.Moments, head => head.CounterbalanceAt,
            (head, value) => head with { CounterbalanceAt = value }, "The counterbalance that is set now; left out to be told."),
        Fields<HeadInUse>.Optional("focus-hand", new QuantityFormat<Force>(Force.FromNewtons(0), Force.FromNewtons(200), "5 N"),
            head => head.FocusHand, (head, value) => head with { FocusHand = value },
            "How heavily a hand that turns the focus rests on the lens drive; 5 N if left out."));

    public static readonly Format<LegsInUse> OnLegs = new RecordFormat<LegsInUse>(
        () => new LegsInUse(), "How the legs stand, where that differs from the part, and what may push them over.",
        Fields<LegsInUse>.Optional("height", SupportFormat.Heights, legs => legs.Height,
            (legs, value) => legs with { Height = value }, "From the ground to where the head sits."),
        Fields<LegsInUse>.Optional("foot-radius", SupportFormat.FootRadii, legs => legs.FootRadius,
            (legs, value) => legs with { FootRadius = value }, "From the middle between the feet to a foot."),
        Fields<LegsInUse>.Optional("centre-height", SupportFormat.Heights, legs => legs.CentreHeight,
            (legs, value) => legs with { CentreHeight = value }, "Height of the legs' own centre of gravity."),
        Fields<LegsInUse>.Optional("slope", new QuantityFormat<Angle>(Angle.FromDegrees(0), Angle.FromDegrees(60), "4 °"),
            legs => legs.Slope, (legs, value) => legs with { Slope = value }, "How the ground slopes; level if left out."),
        Fields<LegsInUse>.Optional("wind", new QuantityFormat<Speed>(Speed.FromMetersPerSecond(0), Speed.FromMetersPerSecond(80),
            "9 m/s"), legs => legs.Wind, (legs, value) => legs with { Wind = value },
            "The mean wind over ten minutes. Gusts run above it; what is held against the tripod is a gust."),
        Fields<LegsInUse>.Optional("wind-height",
            new QuantityFormat<Length>(Length.FromMeters(0.1), Length.FromMeters(200), "10 m"), legs =>
            legs.WindHeight, (legs, value) => legs with { WindHeight = value },
            "The height over the ground that the wind is for: 10 m for a forecast; at the rig if left out."),
        Fields<LegsInUse>.Optional("surroundings", new ChoiceFormat<Surroundings>(), legs => legs.Surroundings,
            (legs, value) => legs with { Surroundings = value },
            "What lies around, for the gusts: inland if left out, where they run highest above the mean."),
        Fields<LegsInUse>.Optional("wanted-lean",
            new QuantityFormat<Angle>(Angle.FromDegrees(0.1), Angle.FromDegrees(45), "10 °"), legs =>
            legs.WantedLean, (legs, value) => legs with { WantedLean = value },
            "The lean that it is to stand before it tips, for the ballast."),
        Fields<LegsInUse>.Optional("ballast", new QuantityFormat<Mass>(Mass.FromKilograms(0), Mass.FromKilograms(100), "8 kg"),
            legs => legs.Ballast, (legs, value) => legs with { Ballast = value },
            "Ballast that hangs in the middle between the feet; none if left out."),
        Fields<LegsInUse>.Optional("ballast-height", SupportFormat.Depths, legs => legs.BallastHeight,
            (legs, value) => legs with { BallastHeight = value },
            "Height of the hook that a bag hangs from; of the bag's middle if it is tied."));

    public static readonly Format<ShoulderInUse> OnShoulder = new RecordFormat<ShoulderInUse>(
        () => new ShoulderInUse(), "Where the rig rests on the shoulder.",
        Fields<ShoulderInUse>.Optional("pad", SupportFormat.Distances, shoulder => shoulder.Pad,
            (shoulder, value) => shoulder with { Pad = value }, "How far ahead of the body's tripod socket the shoulder is."),
        Fields<ShoulderInUse>.Optional("hands", SupportFormat.Distances, shoulder => shoulder.Hands,
            (shoulder, value) => shoulder with { Hands = value }, "How far ahead of the body's tripod socket the hands are."));

    public static readonly Format<HandsInUse> InHands = new RecordFormat<HandsInUse>(
        () => new HandsInUse(), "How the rig is held in the hands.",
        Fields<HandsInUse>.Optional("hands", SupportFormat.Distances, hands => hands.Hands,
            (hands, value) => hands with { Hands = value }, "How far ahead of the body's tripod socket the hands are."),
        Fields<HandsInUse>.Optional("shoulder-behind", SupportFormat.Depths, hands => hands.ShoulderBehind,
            (hands, value) => hands with { ShoulderBehind = value }, "How far the shoulder joint is behind the hands."),
        Fields<HandsInUse>.Optional("share", PartFormat.Shares, hands => hands.Share,
            (hands, value) => hands with { Share = value }, "The part of the weight that this arm carries; half if left out."),
        Fields<HandsInUse>.Optional("greatest-effort", SupportFormat.Moments, hands => hands.GreatestEffort,
            (hands, value) => hands with { GreatestEffort = value },
            "The greatest moment that this operator's shoulder gives, measured."));
}
