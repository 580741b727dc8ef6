using System.Globalization;
using RigScenarios.Answers.Years;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>The years ahead for programs (docs/json.md).</summary>
internal static class AgingJson
{
    /// <summary>The document.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="result">The years.</param>
    public static string Text(Scenario scenario, YearsResult result) =>
        JsonText.Answers(scenario, [JsonText.Entry(result.Now, null, "aging", new
        {
            from = Date(result.From),
            words = (string[])[.. YearsSentences.Told(result).Select(battery => YearsSentences.Replace(result, battery)),
                YearsSentences.Lasting(result), YearsSentences.Keeping(result)],
            lasts_when_new = result.LastsWhenNew, days_last_until = Band(result.LastDay), as_new = Of(result.New),
            batteries = result.Batteries.Select(battery => new
            {
                battery = battery.Name, title = battery.Title, set = battery.Known.Set.Name,
                use = YearsSentences.Use(battery), replace = Band(battery.Replace.Date),
                cause = battery.Replace.Cause?.ToString().ToLowerInvariant(), eighty_percent = Band(battery.Eighty),
                price = battery.Cost.Price?.ToString(), shooting_days = JsonText.Round(battery.Cost.ShootingDays),
                delivered_kWh = JsonText.Round(battery.Cost.Delivered?.KilowattHours),
                per_shooting_day = battery.Cost.PerShootingDay?.ToString(), per_kWh = battery.Cost.PerKilowattHour?.ToString(),
                warnings = battery.Warnings.Select(warning => warning.Name()),
                ages = battery.Ages.Select(age => new
                {
                    date = Date(age.Date), years = JsonText.Round(age.Years), middle = Of(age.Age), least = Of(age.Least),
                    greatest = Of(age.Greatest),
                }),
            }),
            years = result.Days.Select(row => new
            {
                date = Date(row.Date), years = JsonText.Round(row.Years), middle = Of(row.Days), least = Of(row.Least),
                greatest = Of(row.Greatest), cold_C = row.Cold is null ? null
                    : JsonText.Round(result.Question.Cold.DegreesCelsius),
                cold = Of(row.Cold), cold_least = Of(row.ColdLeast), cold_greatest = Of(row.ColdGreatest),
            }),
            storage = result.Storage.Select(way => new
            {
                words = YearsSentences.Of(result, way), place_C = JsonText.Round(way.Place.Temperature.DegreesCelsius),
                as_now = way.IsAsNow, eighty_percent = Date(way.Eighty), days_last_until = Date(way.LastDay),
                after = way.After.Select(year => new { years = year.Years, age = Of(year.Age), days = Of(year.Days) }),
            }),
            rests_on = YearsSentences.RestsOn(result),
            cautions = YearsSentences.Cautions(result),
        })]);

    private static object Of(Age age) => new
    {
        capacity_left_percent = JsonText.Round(age.CapacityLeft.Percent),
        resistance_factor = JsonText.Round(age.ResistanceFactor),
    };

    private static object? Of(DayFigures? days) => days is null ? null : new
    {
        lasts = days.Completes, runtime_h = JsonText.Round(days.Runtime.Hours), reserve_h = JsonText.Round(days.Reserve.Hours),
        is_lower_bound = days.IsLowerBound,
    };

    private static object Band(DateBand band) => new
    {
        middle = Date(band.Middle), earliest = Date(band.Earliest), latest = Date(band.Latest),
    };

    private static string? Date(DateOnly? date) => date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
