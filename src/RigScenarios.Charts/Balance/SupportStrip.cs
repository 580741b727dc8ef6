using RigScenarios.Balance;
using RigScenarios.Charts.Placement;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>What carries the rig, in strips below the side view and in line with it: the plate's travel, pad and hands.</summary>
internal static class SupportStrip
{
    private const double Row = 16;

    /// <summary>Draws the plate's travel.</summary>
    /// <returns>y below it.</returns>
    public static double Plate(SvgSheet sheet, HeadBalance head, Length centre, Func<Length, double> x, double y,
        double width, bool isMoving)
    {
        sheet.Open("g", "class=\"rs-plate\"").Text("camera plate", 12, y + 12);
        var bar = y + 26;
        var (rear, front) = (x(head.Head.CameraPlateTravel.Least), x(head.Head.CameraPlateTravel.Greatest));
        sheet.Rectangle("rs-line", rear, bar, front - rear, 8);
        sheet.Rectangle("rs-rest-fill", x(head.CameraPlate) - 3.5, bar - 4, 7, 16);
        Pointer(sheet, x(centre), bar - 2);
        var bottom = Names(sheet, bar + 14, width,
        [
            ($"rear end {RigWords.Signed(head.Head.CameraPlateTravel.Least)}", rear),
            ($"head at {RigWords.Signed(head.CameraPlate)}", x(head.CameraPlate)),
            ($"front end {RigWords.Signed(head.Head.CameraPlateTravel.Greatest)}", front),
        ], isMoving);
        sheet.Close("g");
        return bottom;
    }

    /// <summary>Draws pad and hands.</summary>
    /// <returns>y below them.</returns>
    public static double Shoulder(SvgSheet sheet, ShoulderBalance shoulder, Length centre, Func<Length, double> x, double y,
        double width, bool isMoving)
    {
        sheet.Open("g", "class=\"rs-shoulder\"").Text("on the shoulder", 12, y + 12);
        var bar = y + 28;
        var (pad, hands) = (x(shoulder.Support.Pad), x(shoulder.Support.Hands));
        sheet.Line("rs-line", (pad, bar), (hands, bar));
        Pointer(sheet, x(centre), bar - 2);
        foreach (var (at, load) in new[] { (pad, shoulder.PadLoad), (hands, shoulder.HandLoad) })
        {
            // Points the way the body pushes: up where it carries, down where it must hold down.
            var (tip, foot) = load.Newtons < 0 ? (bar + 13, bar) : (bar, bar + 13);
            sheet.Polygon("rs-rest-fill", [(at, tip), (at - 6, foot), (at + 6, foot)]);
        }
        var bottom = Names(sheet, bar + 17, width,
            [(RigWords.Pad(shoulder.PadLoad), pad), (RigWords.Hands(shoulder.HandLoad), hands)], isMoving);
        sheet.Close("g");
        return bottom;
    }

    // Where the centre of gravity stands over the strip.
    private static void Pointer(SvgSheet sheet, double x, double y) =>
        sheet.Polygon("rs-mark-fill", [(x, y), (x - 5, y - 9), (x + 5, y - 9)]);

    private static double Names(SvgSheet sheet, double top, double width,
        IReadOnlyList<(string Name, double Middle)> names, bool isMoving)
    {
        const double side = 12;
        var sorted = names.OrderBy(name => name.Middle).ToList();
        var places = NameRows.Place([.. sorted.Select(name => (name.Name, name.Middle - side))], width - (2 * side));
        foreach (var (i, place) in places.Index())
            sheet.Text(sorted[i].Name, side + place.Left, top + (place.Row * Row) + 12);
        // While parts are moved names come closer and part again: the view below must not go up and down with them.
        return top + ((isMoving ? names.Count : places.Max(place => place.Row) + 1) * Row) + 4;
    }
}
