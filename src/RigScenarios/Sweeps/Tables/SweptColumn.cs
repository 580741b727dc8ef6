using System.Globalization;
using System.Text.RegularExpressions;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Tables;

/// <summary>The columns that say which scenario a row is: its number, and the value of each field that the sweep moves. Where all
/// values of a field are numbers in one unit, the column holds the numbers, and the unit stands in its name.</summary>
public static partial class SweptColumn
{
    /// <summary>The column of the scenario's number in the plan, from 0.</summary>
    public static SweepColumn Number { get; } = new("number", "", ColumnKind.Number,
        "Number of the scenario in the sweep, from 0: the last of the fields that are moved changes fastest.");

    /// <summary>The columns of all fields that a plan moves, in the order of its paths.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<SweepColumn> Of(SweepPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. plan.Axes.Select(axis => Of(axis.Path, axis.Values)),
            .. plan.Uncertain.Select(field => Of(field.Path,
                new[] { 0, 0.25, 0.5, 0.75, 1 }.Select(share => field.Spread.TextAt(share)))),
        ];
    }

    /// <summary>The column of a field.</summary>
    /// <param name="path">Its path in the scenario file.</param>
    /// <param name="values">The values that it takes, or as many of them as show their kind.</param>
    public static SweepColumn Of(string path, IEnumerable<string> values)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(values);
        var units = values.Select(value => Split(value)?.Unit).Distinct(StringComparer.Ordinal).Take(2).ToList();
        return units is [{ } unit] ? new(unit.Length > 0 ? $"{path} ({unit})" : path, unit, ColumnKind.Number, Meaning(path))
            : new(path, "", ColumnKind.Text, Meaning(path));
    }

    /// <summary>A value as the cell of its column.</summary>
    /// <param name="column">The column.</param>
    /// <param name="value">The value, as a scenario file would say it.</param>
    /// <exception cref="ArgumentException">It has another unit than the column.</exception>
    public static SweepCell Cell(SweepColumn column, string value)
    {
        ArgumentNullException.ThrowIfNull(column);
        if (column.Kind != ColumnKind.Number)
            return SweepCell.Of(value);
        // A million rows have no time for more than the digits.
        if (value.EndsWith(column.Unit, StringComparison.Ordinal) && double.TryParse(value.AsSpan(0, value.Length
            - column.Unit.Length), NumberStyles.Float, CultureInfo.InvariantCulture, out var number))
            return SweepCell.Of(number);
        throw new ArgumentException($"\"{value}\" is no number in {column.Unit}, as the other values of {column.Name} are.",
                nameof(value));
    }

    private static string Meaning(string path) => $"Value of the field {path} of the scenario.";

    private static (double Number, string Unit)? Split(string value)
    {
        var match = NumberAndUnit().Match(value);
        return match.Success
            ? (double.Parse(match.Groups["number"].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture),
                match.Groups["unit"].Value)
            : null;
    }

    // "15mm-rods", "06:30" and "2026-11-30" begin with digits and are no quantities.
    [GeneratedRegex(@"^\s*(?<number>[+-]?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?)\s*(?<unit>[^\s0-9:.,;\-][^\s0-9:.,;\-]*)?\s*\z",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex NumberAndUnit();
}
