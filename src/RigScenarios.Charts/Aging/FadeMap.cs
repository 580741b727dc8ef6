using System.Globalization;
using RigScenarios.Cells.Aging;
using RigScenarios.Charts.HeatMaps;
using UnitsNet;

namespace RigScenarios.Charts.Aging;

/// <summary>What is left of a new battery after some years, over how it is kept or over how it is used.</summary>
public static class FadeMap
{
    private static readonly double[] Temperatures = [0, 5, 10, 15, 20, 25, 30, 35, 40, 45];
    private static readonly double[] Shares = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100];
    private static readonly double[] Shoots = [0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20];

    /// <summary>The map over the temperature at which it is kept and its charge there; shoots as in the life told, whose own
    /// place is ringed.</summary>
    /// <param name="life">How it is kept and used; what is left open is taken from <see cref="LifeInWords.Usual"/>.</param>
    /// <param name="chemistry">"nmc", "nca", "lfp"; null: nobody knows.</param>
    /// <param name="after">For how long; above 0.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="ArgumentException">The shoots don't fit into the time.</exception>
    public static Figure OverStorage(LifeInWords life, string? chemistry, Duration after, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(life);
        var told = life.Completed;
        var kept = told.Kept!.ChargeAfter(told.Emptied!).Percent;
        var figure = Map("fade-over-storage", "Where it is kept, and how full: what is left?", chemistry, after, cautions,
            new ChartAxis("temperature where it is kept", "°C"), Temperatures,
            new ChartAxis("charge where it is kept", "%"), Shares,
            $"{Number(told.ShootsPerMonth!.Value)} shoots a month that empty {Number(told.Emptied!.Depth.Percent)} % of it. "
                + $"The ring: as told, {Number(told.Place!.Temperature.DegreesCelsius)} °C and {Number(kept)} %.",
            (celsius, charge) => told with
            {
                Place = StoragePlace.At(Temperature.FromDegreesCelsius(celsius)), Kept = Kept.At(Ratio.FromPercent(charge)),
            });
        return Ringed(figure, told.Place!.Temperature.DegreesCelsius, kept, Temperatures, Shares);
    }

    /// <summary>The map over the shoots of a month and how far each empties it; kept as in the life told, whose own place is
    /// ringed.</summary>
    /// <inheritdoc cref="OverStorage"/>
    public static Figure OverUse(LifeInWords life, string? chemistry, Duration after, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(life);
        var told = life.Completed;
        var (shoots, depth) = (told.ShootsPerMonth!.Value, told.Emptied!.Depth.Percent);
        var kept = told.Kept!.ChargeAfter(told.Emptied!);
        var figure = Map("fade-over-use", "How often it works, and how far it is emptied: what is left?", chemistry, after,
            cautions, new ChartAxis("shoots a month"), Shoots, new ChartAxis("emptied by each", "%"), Shares,
            $"Kept at {Number(told.Place!.Temperature.DegreesCelsius)} °C, {Number(kept.Percent)} % full. The ring: as told, "
                + $"{Number(shoots)} shoots that empty {Number(depth)} %.",
            (count, emptied) => told with
            {
                ShootsPerMonth = count, Emptied = Emptied.By(Ratio.FromPercent(emptied)), Kept = Kept.At(kept),
            });
        return Ringed(figure, shoots, depth, Shoots, Shares);
    }

    private static Figure Map(string slug, string title, string? chemistry, Duration after, IReadOnlyList<string>? cautions,
        ChartAxis x, double[] columns, ChartAxis y, double[] rows, string told, Func<double, double, LifeInWords> life)
    {
        var (set, assumed) = AgingSets.For(chemistry);
        var years = Number(after.Days / DaysOfYear);
        return new HeatMapChart
        {
            Slug = slug,
            Title = title,
            Caption = $"A new battery after {years} {(years == "1" ? "year" : "years")}, by one published fit ({set.Name}). "
                + told,
            Cautions = cautions ?? [],
            X = x,
            Y = y,
            Value = new ChartAxis("capacity left", "%"),
            Columns = columns,
            Rows = rows,
            Cells =
            [
                .. rows.Select(row => columns.Select(column =>
                    BatteryLife.After(set, assumed, [life(column, row).Use(after)]).Age.CapacityLeft.Percent).ToList()),
            ],
            Threshold = new HeatMapThreshold("80 % left: replaced by convention", LifeResult.Replaced.Percent),
        }.ToFigure();
    }

    // Where the battery lies beyond the map there is nothing to ring.
    private static Figure Ringed(Figure figure, double x, double y, double[] columns, double[] rows) =>
        x >= columns[0] && x <= columns[^1] && y >= rows[0] && y <= rows[^1] ? PresentValueMark.On(figure, x, y) : figure;

    private static string Number(double value) =>
        value.ToString("0.#", CultureInfo.InvariantCulture).Replace("-", Rounding.Minus, StringComparison.Ordinal);

    private const double DaysOfYear = 365.25;
}
