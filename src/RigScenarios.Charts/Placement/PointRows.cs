using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Placement;

/// <summary>The numbers of a chart in rows of their own, for a file of all points.</summary>
internal static class PointRows
{
    /// <summary>The rows below their titles.</summary>
    public static ChartPoints Of(IReadOnlyList<string> titles, IEnumerable<IReadOnlyList<object?>> rows) =>
        new("", [], []) { Rows = [titles, .. rows] };

    /// <summary>A number as it goes into a row: rounded, and null where it is none.</summary>
    public static object? Number(double value) => double.IsFinite(value) ? Rounding.ForChart(value) : null;
}
