using System.Globalization;
using System.Text;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Sweeps;

/// <summary>The results of a sweep: one row a combination of values, the last axis fastest.</summary>
/// <param name="Axes">The axes, one or two.</param>
/// <param name="Build">The build that was run.</param>
/// <param name="Days">The days that it was run through, one after the other.</param>
/// <param name="Rows">The rows.</param>
public sealed record SweepTable(
    IReadOnlyList<SweepAxis> Axes, string Build, IReadOnlyList<string> Days, IReadOnlyList<SweepRow> Rows)
{
    /// <summary>
    /// What a reader should know of the table: above all an axis along which nothing changes, which mostly means that another
    /// field overrides it.
    /// </summary>
    public IReadOnlyList<string> Notices =>
    [
        .. Axes.Where((axis, index) => axis.Values.Count > 1
                && Rows.GroupBy(row => string.Join('\n', row.Values.Where((_, other) => other != index))).All(AreAlike))
            .Select(axis => $"Nothing changes along {axis.Path}: another field may override it, or this build and its days "
                + "don't use it."),
    ];

    /// <summary>The table as comma-separated values (RFC 4180), with units in the headings; docs/sweeps.md says what the columns
    /// are.</summary>
    public string ToCsv()
    {
        var text = new StringBuilder();
        text.AppendJoin(',', Axes.Select(axis => CsvField.Of(axis.Path)));
        text.Append(
            ",lasts,runtime_h,reserve_h,reserve_is_lower_bound,stopped_by,stopped_in,from_batteries_Wh,energy_left_Wh,"
            + "coldest_battery_C\r\n");
        foreach (var row in Rows)
        {
            text.AppendJoin(',', row.Values.Select(CsvField.Of));
            var figures = row.Figures;
            text.Append(CultureInfo.InvariantCulture,
                $",{YesNo(figures.Lasts)},{figures.Runtime:F4},{figures.Reserve:F4},{YesNo(figures.ReserveIsLowerBound)},");
            text.Append(CultureInfo.InvariantCulture,
                $"{CsvField.Of(figures.StoppedBy ?? "")},{CsvField.Of(figures.StoppedIn ?? "")},");
            text.Append(CultureInfo.InvariantCulture,
                $"{figures.FromBatteries:F2},{figures.EnergyLeft:F2},{figures.Coldest:F2}\r\n");
        }
        return text.ToString();
    }

    private static bool AreAlike(IEnumerable<SweepRow> rows) =>
        rows.Select(row => (row.Result.Runtime.Seconds, row.Result.EnergyLeft.Joules, row.Result.FromPacks.Joules))
            .Distinct().Count() == 1;

    private static string YesNo(bool? value) => value switch { true => "yes", false => "no", _ => "" };
}

/// <summary>One combination of values with its result.</summary>
/// <param name="Values">The value on each axis, as the file would say it.</param>
/// <param name="Result">The result: ends and reserve, without limits and series.</param>
public sealed record SweepRow(IReadOnlyList<string> Values, SimulationResult Result)
{
    /// <summary>From the first block to the end of the last one.</summary>
    public Duration Planned => Result.Days[^1].End - Result.Days[0].Start;

    /// <summary>The first stop of an essential device that nobody planned; null if the days are lasted.</summary>
    public DeviceStop? FirstStop => SweptDays.FirstStop(Result);

    /// <summary>Why the runtime ends, within the days or in the reserve after them; null where the run was given up.</summary>
    public StopReason? Ends => SweptDays.Ends(Result);

    /// <summary>Whether no battery gets to the days: they are then not lasted, whatever the result of a run with all of them
    /// says.</summary>
    public bool NothingArrives { get; init; }

    /// <summary>What the table tells of it.</summary>
    internal DayFigures Figures => NothingArrives ? DayFigures.NothingArrives : DayFigures.Of(Result);
}
