using System.Globalization;
using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>A place as a group in a file.</summary>
internal static class PlaceText
{
    public static string Of(PlaceInUse place) => BatteryChanges.Group(
        ("on", place.On), ("at-end", place.AtEnd ? "yes" : null), ("forward", Way(place.Forward)), ("left", Way(place.Left)),
        ("up", Way(place.Up)),
        ("turned-left", Turn(place.TurnedLeft)), ("nose-down", Turn(place.NoseDown)), ("left-side-up", Turn(place.LeftSideUp)),
        ("slides-from", Way(place.SlidesFrom)), ("slides-to", Way(place.SlidesTo)), ("within", Way(place.Within)),
        ("held-by", place.HeldBy is { } fixing ? ChoiceFormat<Fixing>.Word(fixing) : null));

    /// <summary>A way in millimetres.</summary>
    public static string? Way(Length? way) =>
        way is { } length ? string.Create(CultureInfo.InvariantCulture, $"{length.Millimeters:R} mm") : null;

    private static string? Turn(Angle? turn) =>
        turn is { } angle ? string.Create(CultureInfo.InvariantCulture, $"{angle.Degrees:R} °") : null;
}
