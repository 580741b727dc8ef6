using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>A drawing of a rig in words and numbers.</summary>
internal static class RigWords
{
    /// <summary>"32 mm ahead of the tripod socket, 5 mm to the left, 61 mm above the base plane".</summary>
    public static string Place(RigPoint centre) =>
        $"{Millimetres(centre.X)} {(centre.X.Meters < 0 ? "behind" : "ahead of")} the tripod socket, {Millimetres(centre.Y)} "
            + $"to the camera's {(centre.Y.Meters < 0 ? "right" : "left")}, "
        + $"{Millimetres(centre.Z)} {(centre.Z.Meters < 0 ? "below" : "above")} the base plane";

    /// <summary>A length without its sign, whole millimetres.</summary>
    public static string Millimetres(Length length) => $"{Math.Round(Math.Abs(length.Millimeters)):0} mm";

    /// <summary>A length with its sign, whole millimetres.</summary>
    public static string Signed(Length length)
    {
        var whole = Math.Round(length.Millimeters);
        return $"{(whole < 0 ? Rounding.Minus : "")}{Math.Abs(whole):0} mm";
    }

    /// <summary>"62 N (6.3 kg)": the load, and the mass that weighs as much.</summary>
    public static string Load(Force load)
    {
        var newtons = Math.Abs(load.Newtons);
        return $"{Rounding.Text(newtons, newtons < 10 ? 2 : 3)} N ({Rounding.Text(newtons / 9.80665, 2)} kg)";
    }

    public static string Pad(Force load) => load.Newtons < 0 ? $"pad lifts off, {Load(load)}" : $"pad carries {Load(load)}";

    public static string Hands(Force load) => load.Newtons < 0 ? $"hands hold down {Load(load)}" : $"hands carry {Load(load)}";

    public static string Alternative(PlacedBuild build, RigDrawingOptions options)
    {
        var rig = build.MassProperties;
        var text = $"Drawing to scale of {build.Parts.Count} parts, from the camera's right and from above; the lens points "
            + "right.";
        if (!options.OnlyParts)
            text += $" The whole weighs {TradeUnits.Text(rig.Mass)}; its centre of gravity lies {Place(rig.Centre)}.";
        if (options.Head is { } head)
            text += $" The camera plate can put x = {Signed(head.Head.CameraPlateTravel.Least)} to "
                + $"{Signed(head.Head.CameraPlateTravel.Greatest)} over the head; it stands at {Signed(head.CameraPlate)}.";
        if (options.Shoulder is { } shoulder)
            text += $" On the shoulder the {Pad(shoulder.PadLoad)} and the {Hands(shoulder.HandLoad)}.";
        if (options.Moveable.Count > 0)
            text += $" Can be moved: {string.Join(", ", options.Moveable.Keys.Select(options.NameOf))}.";
        return text;
    }

    public static string Caption(PlacedBuild build)
    {
        var assumed = build.MassProperties.CentresAssumed.Count;
        return "Each box is a part's outer size. " + (assumed == 0
            ? "The centre of every part was given."
            : $"For {assumed} of {build.Parts.Count} parts nobody gave a centre: the middle of the box was taken.");
    }

    public static IReadOnlyList<string> Cautions(RigDrawingOptions options)
    {
        var cautions = new List<string> { BalanceCautions.Arithmetic };
        if (options.Head is not null)
            cautions.Add(BalanceCautions.TiltLock);
        if (options.Shoulder is not null)
            cautions.Add(BalanceCautions.Lifting);
        return cautions;
    }

    public static ChartTable Table(PlacedBuild build, RigDrawingOptions options)
    {
        var rig = build.MassProperties;
        var rows = build.Parts.Index().Select(entry => Row((entry.Index + 1).ToString(null, null), options.NameOf(entry.Item.Key),
            entry.Item.Value.Mass, rig.Parts[entry.Item.Key].Centre))
            .Concat(options.OnlyParts ? [] : [Row("", "centre of gravity, all parts", rig.Mass, rig.Centre)]);
        return ChartTable.Of("no.", "part", "mass", "centre x, forward (mm)", "y, to the left (mm)", "z, up (mm)").WithRows(rows);
    }

    private static object?[] Row(string number, string name, Mass mass, RigPoint centre) =>
        [number, name, mass, Math.Round(centre.X.Millimeters, 1), Math.Round(centre.Y.Millimeters, 1),
            Math.Round(centre.Z.Millimeters, 1)];
}
