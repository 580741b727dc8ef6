using System.Globalization;
using System.Text.Json.Nodes;
using RigScenarios.Cells.Aging;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How a battery's life stands in a scenario's file: what somebody can say of it without having measured it.</summary>
public static class LifeFormat
{
    /// <summary>Most shoots a month: one on every day.</summary>
    internal const double MostShoots = 30;

    private const int FirstYear = 1991;
    private const int LastYear = 2099;

    /// <summary>A life.</summary>
    internal static readonly RecordFormat<LifeInWords> Whole = new(
        () => new LifeInWords(), "How old the battery is, in words.",
        Fields<LifeInWords>.Optional("bought", new MonthOrDayFormat(), life => life.Bought,
            (life, value) => life with { Bought = value }, "When it was bought new; a month alone means its 15th."),
        Fields<LifeInWords>.Optional("until", new DateFormat(), life => life.Until,
            (life, value) => life with { Until = value },
            "The day for which its age is asked; the day on which it is asked if left out."),
        Fields<LifeInWords>.OptionalGroup("kept", new WordOrQuantityFormat<Kept, Ratio>(Kept.All, kept => kept.Word,
            new QuantityFormat<Ratio>(Ratio.FromPercent(0), Ratio.FromPercent(100), "60 %"), Kept.At,
            kept => kept.ChargeAfter(Emptied.ToTheEnd)), life => life.Kept, (life, value) => life with { Kept = value },
            "At which charge it is kept between shoots; full if left out."),
        Fields<LifeInWords>.OptionalGroup("place", new WordOrQuantityFormat<StoragePlace, Temperature>(StoragePlace.All,
            place => place.Word, new QuantityFormat<Temperature>(Temperature.FromDegreesCelsius(-30),
            Temperature.FromDegreesCelsius(60), "25 °C"), StoragePlace.At, place => place.Temperature),
            life => life.Place, (life, value) => life with { Place = value },
            "Where it is kept: fridge means 8 °C, room 20, warm store 30, hot van 45; room if left out."),
        Fields<LifeInWords>.Optional("shoots-per-month", new NumberFormat(0, MostShoots), life => life.ShootsPerMonth,
            (life, value) => life with { ShootsPerMonth = value }, "Shoots with it in a month; 2 if left out."),
        Fields<LifeInWords>.OptionalGroup("emptied", new WordOrQuantityFormat<Emptied, Ratio>(Emptied.All,
            emptied => emptied.Word, new QuantityFormat<Ratio>(Ratio.FromPercent(1), Ratio.FromPercent(100), "60 %"),
            Emptied.By, emptied => emptied.Depth), life => life.Emptied, (life, value) => life with { Emptied = value },
            "How far a shoot empties it: a little means a fifth, mostly four fifths; half if left out."),
        Fields<LifeInWords>.WithDefault("second-hand", new YesNoFormat(), false, life => life.SecondHand,
            (life, value) => life with { SecondHand = value },
            "Whether somebody else had it before; then only what was measured counts. No if left out."));

    /// <summary>A life in one line, in braces, as a file may have it.</summary>
    /// <param name="life">The life.</param>
    public static string Text(LifeInWords life)
    {
        ArgumentNullException.ThrowIfNull(life);
        var fields = ((MapNode)Whole.Write(life)).Entries.Select(entry => $"{entry.Key}: {((TextNode)entry.Value).Text}");
        return $"{{{string.Join(", ", fields)}}}";
    }

    /// <summary>What no battery can have gone through, and what says less than it seems to.</summary>
    /// <param name="life">The life; null for none.</param>
    /// <param name="measured">Whether the capacity was measured.</param>
    /// <param name="battery">Path of the battery.</param>
    /// <param name="log">Where problems go.</param>
    internal static void Check(LifeInWords? life, bool measured, string battery, ReadLog log)
    {
        if (life is null)
            return;
        var path = $"{battery}.age";
        // The first were sold in that year (from memory).
        if (life.Bought is { } early && early.Date.Year < FirstYear)
            log.Error($"{path}.bought", $"Found \"{early}\": nobody sold lithium-ion batteries before {FirstYear}.",
                "a month or a day, such as \"2023-03\"");
        if (life.Until is { Year: > LastYear or < FirstYear } until)
            log.Error($"{path}.until", $"Found \"{Day(until)}\".", $"a day from {FirstYear}-01-01 to {LastYear}-12-31");
        if (ScenarioAge.Problem(life) is { } problem)
            log.Error($"{path}.bought", problem.Found, problem.Accepted);
        if (measured)
            return;
        if (life.SecondHand)
            log.Warning($"{path}.second-hand", "Nothing is known of a second-hand battery before it is measured: it is taken as "
                + "new. Give \"capacity-left\" beside \"age\".");
        else if (life.Bought is null)
            log.Warning(path, "When it was bought is not given, so that nothing is known of its age: it is taken as new. Give "
                + "\"bought\", or \"capacity-left\" beside \"age\".");
    }

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private sealed class MonthOrDayFormat : PlainFormat<MonthOrDay>
    {
        public override string Accepted => "a month or a day, such as \"2023-03\" or \"2023-03-17\"";

        public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}(-[0-9]{2})?$" };

        protected override bool TryParse(string text, out MonthOrDay value)
        {
            var read = MonthOrDay.TryParse(WrittenDigits.Plain(text), out var date);
            value = date.GetValueOrDefault();
            return read;
        }

        protected override string Text(MonthOrDay value) => value.ToString();
    }
}
