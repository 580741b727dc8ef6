using System.Globalization;
using System.Text;
using RigScenarios.Files;

namespace RigScenarios.Answers.Years;

/// <summary>A table of the years ahead, in full resolution.</summary>
/// <param name="Name">Its name, which becomes that of a file.</param>
/// <param name="Columns">Headings with units.</param>
/// <param name="Rows">The rows.</param>
public sealed record YearsTable(string Name, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>The table as comma-separated values (RFC 4180).</summary>
    public string ToCsv()
    {
        var text = new StringBuilder();
        foreach (var row in Rows.Prepend(Columns))
            text.AppendJoin(',', row.Select(CsvField.Of)).Append("\r\n");
        return text.ToString();
    }
}

/// <summary>All tables of the years ahead.</summary>
public static class YearsTables
{
    /// <summary>The names of the tables.</summary>
    public static IReadOnlyList<string> Names { get; } = ["days", "ages", "batteries", "storage"];

    /// <summary>The tables: the days over the years, each battery month by month, when to replace it, the ways to keep
    /// it.</summary>
    /// <param name="result">The years.</param>
    public static IReadOnlyList<YearsTable> Of(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [Days(result), Ages(result), Replacements(result), Storage(result)];
    }

    private static YearsTable Days(YearsResult result) => new("days",
        [
            "date", "years", .. Heads(""), .. Heads("least_"), .. Heads("greatest_"), .. Heads("cold_"), .. Heads("cold_least_"),
            .. Heads("cold_greatest_"),
        ],
        [.. result.Days.Select(row => (IReadOnlyList<string>)
        [
            Date(row.Date), Number(row.Years, 4), .. Figures(row.Days), .. Figures(row.Least), .. Figures(row.Greatest),
            .. Figures(row.Cold), .. Figures(row.ColdLeast), .. Figures(row.ColdGreatest),
        ])]);

    private static YearsTable Ages(YearsResult result) => new("ages",
        [
            "battery", "date", "years", "capacity_left_percent", "resistance_factor", "capacity_left_least_percent",
            "resistance_factor_at_least", "capacity_left_greatest_percent", "resistance_factor_at_greatest",
        ],
        [.. result.Batteries.SelectMany(battery => battery.Ages.Select(row => (IReadOnlyList<string>)
        [
            battery.Name, Date(row.Date), Number(row.Years, 4), .. Age(row.Age), .. Age(row.Least), .. Age(row.Greatest),
        ]))]);

    private static YearsTable Replacements(YearsResult result) => new("batteries",
        [
            "battery", "title", "set", "replace", "replace_earliest", "replace_latest", "cause", "eighty_percent",
            "eighty_percent_earliest", "eighty_percent_latest", "price", "shooting_days", "delivered_kWh", "per_shooting_day",
            "per_kWh",
        ],
        [.. result.Batteries.Select(battery => (IReadOnlyList<string>)
        [
            battery.Name, battery.Title, battery.Known.Set.Name, .. Dates(battery.Replace.Date), Cause(battery.Replace.Cause),
            .. Dates(battery.Eighty), battery.Cost.Price?.ToString() ?? "", Number(battery.Cost.ShootingDays, 2),
            Number(battery.Cost.Delivered?.KilowattHours, 4), battery.Cost.PerShootingDay?.ToString() ?? "",
            battery.Cost.PerKilowattHour?.ToString() ?? "",
        ])]);

    private static YearsTable Storage(YearsResult result) => new("storage",
        [
            "kept", "place", "place_C", "as_now", "years", "capacity_left_percent", "resistance_factor", .. Heads(""),
            "eighty_percent", "days_last_until",
        ],
        [.. result.Storage.SelectMany(way => way.After.Select(year => (IReadOnlyList<string>)
        [
            way.Kept.Word ?? AgingSentences.KeptAs(way.Kept), way.Place.Word ?? AgingSentences.In(way.Place),
            Number(way.Place.Temperature.DegreesCelsius, 1), YesNo(way.IsAsNow), Number(year.Years, 0), .. Age(year.Age),
            .. Figures(year.Days), Date(way.Eighty), Date(way.LastDay),
        ]))]);

    /// <summary>Why it is replaced, as one word.</summary>
    internal static string Cause(ReplaceCause? cause) => cause switch
    {
        ReplaceCause.Capacity => "capacity",
        ReplaceCause.Days => "days",
        _ => "",
    };

    private static IEnumerable<string> Heads(string before) =>
        [$"{before}lasts", $"{before}runtime_h", $"{before}reserve_h", $"{before}is_lower_bound"];

    private static IEnumerable<string> Figures(DayFigures? days) => days is null ? ["", "", "", ""]
        : [YesNo(days.Completes), Number(days.Runtime.Hours, 4), Number(days.Reserve.Hours, 4), YesNo(days.IsLowerBound)];

    private static IEnumerable<string> Age(Cells.Age age) =>
        [Number(age.CapacityLeft.Percent, 4), Number(age.ResistanceFactor, 5)];

    private static IEnumerable<string> Dates(DateBand band) => [Date(band.Middle), Date(band.Earliest), Date(band.Latest)];

    private static string Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "";

    private static string Number(double? value, int digits) =>
        value is { } number ? number.ToString($"F{digits}", CultureInfo.InvariantCulture) : "";

    private static string YesNo(bool value) => value ? "yes" : "no";
}
