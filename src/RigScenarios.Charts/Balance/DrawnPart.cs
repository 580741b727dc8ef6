using System.Globalization;
using RigScenarios.Balance;
using RigScenarios.Charts.Pages;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>A part in a view as SVG, with what a page needs to let a reader move it.</summary>
internal static class DrawnPart
{
    // A finger needs about 9 mm (common practice, no source): 34 units on a phone.
    private const double Reach = 34;

    /// <param name="sheet">Where it is written.</param>
    /// <param name="build">The build.</param>
    /// <param name="options">Which parts can be moved, and their names.</param>
    /// <param name="part">The part as it is seen.</param>
    /// <param name="outline">Its outline in SVG units.</param>
    /// <param name="direction">SVG units a metre of offset.</param>
    public static void Write(SvgSheet sheet, PlacedBuild build, RigDrawingOptions options, SeenPart part,
        IReadOnlyList<(double X, double Y)> outline, (double X, double Y) direction)
    {
        var placement = build.Parts[part.Name].Placement;
        var name = $"data-part=\"{HtmlText.Escape(part.Name)}\""
            + (placement.Carrier is { } carrier ? $" data-on=\"{HtmlText.Escape(carrier)}\"" : "");
        var moves = options.Moveable.TryGetValue(part.Name, out var range);
        sheet.Open("g", moves ? $"class=\"rs-part rs-move\" {name} "
            + $"{Slider(options.NameOf(part.Name), placement.Offset.X, range!, direction)}" : $"class=\"rs-part\" {name}");
        if (outline.Count > 2)
            sheet.Polygon("rs-box", outline);
        else
            sheet.Circle("rs-box", outline[0], 3);
        if (!moves)
        {
            sheet.Close("g");
            return;
        }
        var (x, y) = ((outline.Min(p => p.X) + outline.Max(p => p.X)) / 2, (outline.Min(p => p.Y) + outline.Max(p => p.Y)) / 2);
        var (width, height) = (Math.Max(Reach, outline.Max(p => p.X) - outline.Min(p => p.X)),
            Math.Max(Reach, outline.Max(p => p.Y) - outline.Min(p => p.Y)));
        sheet.Rectangle("rs-reach", x - (width / 2), y - (height / 2), width, height);
        sheet.Close("g");
        // After the part and not in it: the rail stays where it is while the part moves along it.
        if (RigSheet.IsSeen(direction))
            Rail(sheet, part.Name, (x, y), direction, (range!.Least - placement.Offset.X).Meters,
                (range.Greatest - placement.Offset.X).Meters);
    }

    // Only what it is: a page that can move it says that to a keyboard and a screen reader, one that can't promises nothing.
    private static string Slider(string words, Length at, LengthRange range, (double X, double Y) direction) =>
        string.Create(CultureInfo.InvariantCulture,
            $"data-move=\"{SvgSheet.Number(direction.X)},{SvgSheet.Number(direction.Y)}\" data-at=\"{at.Meters:0.######}\" ")
        + string.Create(CultureInfo.InvariantCulture,
            $"data-least=\"{range.Least.Meters:0.######}\" data-greatest=\"{range.Greatest.Meters:0.######}\" "
                + $"data-words=\"{HtmlText.Escape(words)}\"");

    private static void Rail(SvgSheet sheet, string name, (double X, double Y) middle, (double X, double Y) direction,
        double least, double greatest)
    {
        (double X, double Y) At(double metres, double aside)
        {
            var size = Math.Sqrt((direction.X * direction.X) + (direction.Y * direction.Y));
            return (middle.X + (direction.X * metres) - (direction.Y / size * aside),
                middle.Y + (direction.Y * metres) + (direction.X / size * aside));
        }
        sheet.Open("g", $"class=\"rs-rail\" data-rail=\"{HtmlText.Escape(name)}\" visibility=\"hidden\"");
        sheet.Line("rs-rest-line", At(least, 0), At(greatest, 0));
        sheet.Line("rs-rest-line", At(least, -7), At(least, 7));
        sheet.Line("rs-rest-line", At(greatest, -7), At(greatest, 7));
        sheet.Close("g");
    }
}
