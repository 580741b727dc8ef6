using RigScenarios.Balance;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>The build sheet as a table: a row for each part, with its place and with what feeds it.</summary>
internal static class BuildTable
{
    private static readonly SheetColumn[] Columns =
    [
        new("step"), new("part"), new("what it is"), new("count"), new("mass", "kg"), new("on"), new("forward", "mm"),
        new("left", "mm"), new("up", "mm"), new("turned left", "°"), new("nose down", "°"), new("left side up", "°"),
        new("slides from", "mm"), new("slides to", "mm"), new("from the front end of the rods", "mm"),
        new("from the rear end of the rods", "mm"), new("place is usual"), new("fed by"), new("outlet"), new("cable"),
        new("cable length", "m"),
    ];

    public static SheetTable Of(RigAnswer answer)
    {
        var rods = (answer.Balance is { } balance ? RodPosition.Of(balance.Rig) : [])
            .ToDictionary(position => position.Part, StringComparer.Ordinal);
        var fed = PlaceSections.Fed(answer.Powered).ToDictionary(item => item.Name, item => item.From, StringComparer.Ordinal);
        return new(Columns, [.. AssemblyStep.Of(answer).Select((step, i) => Row(i, step, rods, fed, answer))]);
    }

    private static IReadOnlyList<SheetCell> Row(int number, AssemblyStep step, Dictionary<string, RodPosition> rods,
        Dictionary<string, string> fed, RigAnswer answer)
    {
        var place = step.Place;
        rods.TryGetValue(step.Name, out var onRods);
        answer.Powered.Links.TryGetValue(step.Name, out var link);
        fed.TryGetValue(step.Name, out var from);
        return
        [
            SheetCell.Of(number + 1m), SheetCell.Of(step.Name), SheetCell.Of(step.Part.Name), SheetCell.Of((decimal)step.Count),
            SheetCell.Of(step.Mass?.Kilograms), SheetCell.Of(On(step)), Way(place, place?.Forward), Way(place, place?.Left),
            Way(place, place?.Up), Turn(place, place?.TurnedLeft), Turn(place, place?.NoseDown),
            Turn(place, place?.LeftSideUp), SheetCell.Of(place?.SlidesFrom?.Millimeters),
            SheetCell.Of(place?.SlidesTo?.Millimeters), SheetCell.Of(onRods?.FromFront.Millimeters),
            SheetCell.Of(onRods?.FromRear.Millimeters), SheetCell.Of(place is null ? null : step.IsUsual ? "yes" : "no"),
            SheetCell.Of(from == Build.BatteryFeed ? answer.TheBuild.Battery.Item : from), SheetCell.Of(link?.Outlet),
            SheetCell.Of(link?.CableName), SheetCell.Of(link?.Cable?.Length.Meters),
        ];
    }

    // Names as in the file, so that another program finds the row of what carries it.
    private static string On(AssemblyStep step) => step.Place is { On: { } on } ? on : step.On;

    // Where there is a place, a way that is not given is 0; without a place there is nothing.
    private static SheetCell Way(PlaceInUse? place, Length? way) =>
        SheetCell.Of(place is null ? null : (way ?? Length.Zero).Millimeters);

    private static SheetCell Turn(PlaceInUse? place, Angle? turn) =>
        SheetCell.Of(place is null ? null : (turn ?? Angle.Zero).Degrees);
}
