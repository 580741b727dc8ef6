using System.Globalization;
using System.Text.Json;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Aging;

/// <summary>Reads files of aging cases (JSON; fields and units in docs/aging.md, "Case files").</summary>
internal static class AgingCaseReader
{
    private const string Unknown = "unknown";

    private const double DegreesOfIce = -273.15;

    public static IReadOnlyList<AgingCase> Read(string path) => CaseFile.Read(path, ReadCase);

    private static AgingCase? ReadCase(string id, JsonElement element, CaseFields fields, List<string> problems)
    {
        var before = problems.Count;
        try
        {
            var inWords = CaseFields.Find(element, "words", out var words);
            var (set, assumed) = inWords
                ? AgingSets.For(Chemistry(fields.Text(words, "chemistry")))
                : SetOf(fields.Text(element, "model"), fields);
            var phases = inWords
                ? ReadWords(words, fields)
                : [.. fields.Objects(element, "phases").Select(phase => ReadPhase(phase, fields))];
            var one = new AgingCase(id, set, assumed, phases, inWords, IsTrue(element, "daysTo80"), IsTrue(element, "band"));
            return problems.Count == before ? one : null;
        }
        catch (ArgumentException error)
        {
            // What the library refuses; or what follows from a problem that has been reported already.
            if (problems.Count == before)
                fields.Problem("the case", error.Message);
            return null;
        }
    }

    private static string? Chemistry(string text) => text == Unknown ? null : text;

    private static (AgingSet Set, bool Assumed) SetOf(string name, CaseFields fields)
    {
        if (name == Unknown)
            return AgingSets.For(null);
        if (AgingSets.Find(name) is { } set)
            return (set, false);
        fields.Problem("model",
            $"found '{name}'; accepted: {Unknown}, {string.Join(", ", AgingSets.All.Select(one => one.Name))}");
        return AgingSets.For(null);
    }

    private static LifePhase ReadPhase(JsonElement phase, CaseFields fields) => fields.Text(phase, "kind") switch
    {
        "storage" => new Storage(Days(phase, fields), Celsius(phase, "temperatureC", fields), Share(phase, "soc", fields)),
        "cycling" => ReadCycling(phase, fields),
        "shooting" => ReadShooting(phase, fields),
        "measured" => new Measured(
            Ratio.FromDecimalFractions(fields.Number(
                phase, "capacityFraction", value => value is > 0 and <= 1.5, "above 0, up to 1.5")),
            Has(phase, "resistanceFactor") ? fields.Positive(phase, "resistanceFactor") : null,
            !Has(phase, "historyKnown") || IsTrue(phase, "historyKnown")),
        var kind => Unreadable(kind, fields),
    };

    private static Storage Unreadable(string kind, CaseFields fields)
    {
        fields.Problem("kind", $"found '{kind}'; accepted: storage, cycling, shooting, measured");
        return new Storage(Duration.Zero, Temperature.FromDegreesCelsius(20), Ratio.Zero);
    }

    private static Cycling ReadCycling(JsonElement phase, CaseFields fields)
    {
        var (days, temperature) = (Days(phase, fields), Celsius(phase, "temperatureC", fields));
        var (cycles, rate) = (fields.NotNegative(phase, "fullCycles"), fields.NotNegative(phase, "cRate"));
        var depth = Share(phase, "depth", fields);
        var cycling = Has(phase, "meanVoltageV")
            ? Cycling.AboutVoltage(days, temperature, cycles, depth, rate,
                ElectricPotential.FromVolts(fields.Positive(phase, "meanVoltageV")))
            : new Cycling(days, temperature, cycles, depth, rate, Share(phase, "meanSoc", fields));
        return Has(phase, "soc") ? cycling with { StandsAt = Share(phase, "soc", fields) } : cycling;
    }

    private static Shooting ReadShooting(JsonElement phase, CaseFields fields)
    {
        var (length, shelf) = (Days(phase, fields), Celsius(phase, "temperatureC", fields));
        var (charge, days) = (Share(phase, "soc", fields), fields.NotNegative(phase, "shootingDays"));
        if (Has(phase, "course"))
        {
            var course = fields.Objects(phase, "course").Select(one => new CourseStretch(
                Duration.FromHours(fields.NotNegative(one, "hours")), Share(one, "fromSoc", fields), Share(one, "toSoc", fields),
                Celsius(one, "temperatureC", fields)));
            return new Shooting(length, shelf, charge, days, [.. course]);
        }

        return new Shooting(length, shelf, charge, days, Share(phase, "depth", fields),
            Has(phase, "hours") ? Duration.FromHours(fields.Positive(phase, "hours")) : null,
            Has(phase, "shootTemperatureC") ? Celsius(phase, "shootTemperatureC", fields) : null,
            Has(phase, "cRate") ? fields.NotNegative(phase, "cRate") : null);
    }

    private static IReadOnlyList<LifePhase> ReadWords(JsonElement words, CaseFields fields)
    {
        var said = new LifeInWords
        {
            Bought = Known(MonthOrDay.TryParse(fields.Text(words, "bought"), out var bought) ? bought : null, "bought",
                "2023-03 or 2023-03-17", fields),
            Until = Known(DateOnly.TryParseExact(fields.Text(words, "today"), "yyyy-MM-dd", CultureInfo.InvariantCulture,
                DateTimeStyles.None, out var today) ? today : (DateOnly?)null, "today", "a day such as 2026-11-30", fields),
            Kept = Known(Kept.Find(fields.Text(words, "stored")), "stored", Words(Kept.All.Select(one => one.Word)), fields),
            Place = Known(StoragePlace.Find(fields.Text(words, "place")), "place",
                Words(StoragePlace.All.Select(one => one.Word)), fields),
            ShootsPerMonth = fields.NotNegative(words, "shootsPerMonth"),
            Emptied = Known(Emptied.Find(fields.Text(words, "emptied")), "emptied",
                Words(Emptied.All.Select(one => one.Word)), fields),
            SecondHand = IsTrue(words, "secondHand"),
            MeasuredCapacity = Has(words, "measuredPercent")
                ? Ratio.FromDecimalFractions(fields.Positive(words, "measuredPercent") / 100) : null,
        };
        return Has(words, "monthsAhead")
            ? [.. said.Phases(), said.Use(Duration.FromDays(fields.Positive(words, "monthsAhead") * LifeInWords.DaysOfMonth))]
            : said.Phases();
    }

    private static T Known<T>(T found, string field, string accepted, CaseFields fields)
    {
        if (found is null)
            fields.Problem(field, $"not known; accepted: {accepted}");
        return found;
    }

    private static string Words(IEnumerable<string?> words) => string.Join(", ", words);

    private static Duration Days(JsonElement phase, CaseFields fields) =>
        Duration.FromDays(fields.NotNegative(phase, "days"));

    private static Temperature Celsius(JsonElement parent, string field, CaseFields fields) =>
        Temperature.FromDegreesCelsius(fields.Number(parent, field, value => value > DegreesOfIce, "above -273.15"));

    private static Ratio Share(JsonElement parent, string field, CaseFields fields) =>
        Ratio.FromDecimalFractions(fields.Number(parent, field, value => value is >= 0 and <= 1, "from 0 to 1"));

    private static bool Has(JsonElement parent, string field) => CaseFields.Find(parent, field, out _);

    private static bool IsTrue(JsonElement parent, string field) =>
        CaseFields.Find(parent, field, out var value) && value.ValueKind == JsonValueKind.True;
}
