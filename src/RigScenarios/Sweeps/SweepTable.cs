using System.Globalization;
using System.Text;
using RigScenarios.Answers;

namespace RigScenarios.Sweeps;

/// <summary>The results of a sweep: one row a combination of values, the last axis fastest.</summary>
/// <param name="Axes">The axes, one or two.</param>
/// <param name="Build">The build that was run.</param>
/// <param name="Day">The day that it was run through.</param>
/// <param name="Rows">The rows.</param>
public sealed record SweepTable(IReadOnlyList<SweepAxis> Axes, string Build, string Day, IReadOnlyList<SweepRow> Rows)
{
    /// <summary>
    /// What a reader should know of the table: above all an axis along which nothing changes, which mostly means that another
    /// field overrides it.
    /// </summary>
    public IReadOnlyList<string> Notices =>
    [
        .. Axes.Where((axis, index) => axis.Values.Count > 1 && Rows.GroupBy(row => string.Join('\n', row.Values.Where((_, other) => other != index)))
                .All(group => group.Select(row => (row.Result.Runtime.Seconds, row.Result.ChargeLeft.DecimalFractions, row.Result.Delivered.Joules)).Distinct().Count() == 1))
            .Select(axis => $"Nothing changes along {axis.Path}: another field may override it, or this build and day don't use it."),
    ];

    /// <summary>The table as comma-separated values (RFC 4180), with units in the headings.</summary>
    public string ToCsv()
    {
        var text = new StringBuilder();
        text.AppendJoin(',', Axes.Select(axis => Quote(axis.Path)));
        text.Append(",runtime_h,planned_h,margin_h,reaches_end,end_cause,end_block,charge_left_percent,delivered_Wh,coldest_battery_C\r\n");
        foreach (var row in Rows)
        {
            text.AppendJoin(',', row.Values.Select(Quote));
            var result = row.Result;
            text.Append(CultureInfo.InvariantCulture,
                $",{result.Runtime.Hours:F4},{result.Planned.Hours:F4},{result.Margin.Hours:F4},{(result.ReachesEnd ? "yes" : "no")},{Quote(result.EndCause)},{Quote(result.EndBlock)},{result.ChargeLeft.Percent:F2},{result.Delivered.WattHours:F2},{result.ColdestBattery.DegreesCelsius:F2}\r\n");
        }
        return text.ToString();
    }

    private static string Quote(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}

/// <summary>One combination of values with its result.</summary>
/// <param name="Values">The value on each axis, as the file would say it.</param>
/// <param name="Result">The result, without its series.</param>
public sealed record SweepRow(IReadOnlyList<string> Values, DayResult Result);
