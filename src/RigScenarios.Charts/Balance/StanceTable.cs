using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>A change from one build to another as a table: what comes off, what goes on, what moves and how far, in how many
/// steps and how long.</summary>
public static class StanceTable
{
    /// <summary>The table.</summary>
    /// <param name="change">The change.</param>
    /// <param name="each">How long a step takes in your hands; null leaves the time out.</param>
    /// <param name="head">The head that both builds are balanced on; null leaves the plate out.</param>
    /// <param name="names">Words for people by the parts' names; null for none.</param>
    public static ChartTable Of(StanceChange change, StepTimes? each = null, FluidHead? head = null,
        OrderedMap<string>? names = null)
    {
        ArgumentNullException.ThrowIfNull(change);
        string Name(string part) => names is not null && names.TryGetValue(part, out var words) ? words : part;
        var rows = new List<object?[]>();
        rows.AddRange(change.Off.Select(part => new object?[] { "comes off", Name(part),
            With(change.Before, part, change.Off, Name) }));
        rows.AddRange(change.On.Select(part => new object?[] { "goes on", Name(part),
            With(change.After, part, change.On, Name) }));
        rows.AddRange(change.Moved.Select(moved => new object?[] { "moves", Name(moved.Key), Way(moved.Value) }));
        if (head is not null)
            rows.Add(["camera plate", "on the head", Shift(change.CameraPlateShift(head))]);
        rows.Add(["in all", $"{change.Steps} step{(change.Steps == 1 ? "" : "s")} by hand",
            each is null ? "" : $"{TradeUnits.Text(change.Time(each))} with your own times for a step"]);
        return ChartTable.Of("what", "part", "how")
            .WithRows(rows) with { Caption = $"From one build to the other. {BalanceCautions.Change}" };
    }

    private static string With(PlacedBuild build, string part, IReadOnlyList<string> together, Func<string, string> name) =>
        build.Parts[part].Placement.Carrier is { } carrier && together.Contains(carrier) ? $"together with {name(carrier)}" : "";

    private static string Way(RigPoint by)
    {
        var ways = new[] { (by.X, "forward", "back"), (by.Y, "to the left", "to the right"), (by.Z, "up", "down") }
            .Where(way => Math.Abs(way.Item1.Millimeters) >= 0.5)
            .Select(way => $"{RigWords.Millimetres(way.Item1)} {(way.Item1.Meters > 0 ? way.Item2 : way.Item3)}").ToList();
        return ways.Count == 0 ? "turns where it is" : string.Join(", ", ways);
    }

    private static string Shift(Length by) => Math.Abs(by.Millimeters) < 0.5
        ? "stays" : $"{RigWords.Millimetres(by)} {(by.Meters > 0 ? "forward" : "back")}: the rig's point over the head";
}
