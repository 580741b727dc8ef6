using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Balance;

/// <summary>The signs of a rig's drawing, each explained in its legend.</summary>
internal static class RigSigns
{
    public const double CentreRadius = 9;

    /// <summary>The centre of gravity: a ring with a plumb bob in it.</summary>
    public static void Centre(SvgSheet sheet, (double X, double Y) at)
    {
        sheet.Circle("rs-mark-ring", at, CentreRadius);
        sheet.Polygon("rs-mark-fill", [(at.X - 3.6, at.Y - 3.6), (at.X + 3.6, at.Y - 3.6), (at.X, at.Y + 6)]);
    }

    /// <summary>The tilt axis: a ring with an upright line through it.</summary>
    public static void Axis(SvgSheet sheet, (double X, double Y) at)
    {
        sheet.Circle("rs-rest-line", at, 5);
        sheet.Line("rs-rest-line", (at.X, at.Y - 9), (at.X, at.Y + 9));
    }

    /// <summary>"Can be moved this way": a line with a head at both ends.</summary>
    public static void Move(SvgSheet sheet, (double X, double Y) middle, (double X, double Y) along)
    {
        var size = Math.Sqrt((along.X * along.X) + (along.Y * along.Y));
        var (dx, dy) = (along.X / size, along.Y / size);
        string Point(double forward, double aside) =>
            $"{SvgSheet.Number(middle.X + (dx * forward) - (dy * aside))} "
                + $"{SvgSheet.Number(middle.Y + (dy * forward) + (dx * aside))}";
        var path =
            $"M{Point(-8, 0)}L{Point(8, 0)}M{Point(-4, -4)}L{Point(-8, 0)}L{Point(-4, 4)}"
            + $"M{Point(4, -4)}L{Point(8, 0)}L{Point(4, 4)}";
        sheet.Path("rs-halo rs-sign", path);
        sheet.Path("rs-sign", path);
    }

    /// <summary>The room that a round sign takes.</summary>
    public static Box Around((double X, double Y) at, double radius) =>
        new(at.X - radius, at.Y - radius, at.X + radius, at.Y + radius);
}
