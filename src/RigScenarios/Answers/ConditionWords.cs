using System.Globalization;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What an answer was asked with, in a sentence: the air of its days, and how worn its batteries are.</summary>
public static class ConditionWords
{
    /// <summary>The air: "Air −8 °C all day, as the file says.", "Air from −6 to 5 °C in the course of the days, 3 °C colder than
    /// the
    /// file says."</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="warmer">By how much its days are warmer than the file says; below 0 for colder.</param>
    public static string Air(RigAnswer answer, TemperatureDelta warmer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var air = answer.Plan.Days.SelectMany(day => day.AmbientPoints.Count > 0
            ? day.AmbientPoints.Select(point => point.Temperature.DegreesCelsius)
            : [(day.Ambient ?? answer.Plan.Ambient).DegreesCelsius]).ToList();
        var days = answer.Plan.Days.Count > 1 ? "the days" : "the day";
        var all = answer.Plan.Days.Count > 1 ? "on all days" : "all day";
        var figures = Math.Abs(air.Max() - air.Min()) < 0.05 ? $"{Number(air[0])} °C {all}"
            : $"from {Number(air.Min())} to {Number(air.Max())} °C in the course of {days}";
        var against = Math.Abs(warmer.Kelvins) < 0.05 ? "as the file says"
            : $"{Number(Math.Abs(warmer.Kelvins))} °C {(warmer.Kelvins < 0 ? "colder" : "warmer")} than the file says";
        var least = air.Min() <= WarmerAir.Coldest.DegreesCelsius ? "; no colder than that is computed"
            : air.Max() >= WarmerAir.Warmest.DegreesCelsius ? "; no warmer than that is computed" : "";
        return $"Air {figures}, {against}{least}.";
    }

    /// <summary>The wear: "Wear: 82 % of its capacity left, and 1.31 times the resistance of a new one. Both move
    /// together."</summary>
    /// <param name="answer">The answer.</param>
    public static string Wear(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var ages = answer.Plan.Batteries.Select(battery => (Name: LimitSentences.Element(battery.Key),
            battery.Value.MakePack().Pack.Age)).ToList();
        var together = "Resistance grows with the capacity that is lost.";
        return ages.Count == 1
            ? $"Wear: {Left(ages[0].Age)} of the capacity left, {Times(ages[0].Age)} the resistance of a new battery. {together}"
            : "Wear, as capacity left and times the resistance of a new battery: "
                + $"{string.Join("; ", ages.Select(one => $"{one.Name} {Left(one.Age)}, {Times(one.Age)}"))}. {together}";
    }

    private static string Left(Cells.Age age) => string.Create(CultureInfo.InvariantCulture, $"{age.CapacityLeft.Percent:0.#} %");

    private static string Times(Cells.Age age) =>
        string.Create(CultureInfo.InvariantCulture, $"{age.ResistanceFactor:0.##} times");

    private static string Number(double value) =>
        value.ToString("0.#", CultureInfo.InvariantCulture).Replace('-', '−');
}
