using System.Globalization;
using RigScenarios.Sweeps;

namespace RigScenarios.Charts.Sweeps;

/// <summary>The values that a sweep gave one field, as numbers of an axis; where they are names, as numbers of these.</summary>
/// <param name="Axis">Title and unit.</param>
/// <param name="Values">A number for each scenario.</param>
/// <param name="Names">The names, where the values are no quantities; null otherwise.</param>
internal sealed record SweptValues(ChartAxis Axis, IReadOnlyList<double> Values, IReadOnlyList<string>? Names)
{
    /// <summary>Reads the values of a field.</summary>
    /// <param name="path">The field, by its path in the file.</param>
    /// <param name="texts">Its value in each scenario, as the file would say it; at least one.</param>
    public static SweptValues Of(string path, IReadOnlyList<string> texts)
    {
        // Nearly always all values are in one unit: then only their numbers are read, and the unit may be any.
        var unit = UnitOf(texts[0]);
        if (TryAll(texts, unit) is { } numbers)
            return new(new ChartAxis(SweepChartAxis.TitleOf(path), SignOf(texts[0], unit)), numbers, null);
        try
        {
            var axis = SweepChartAxis.Of(new SweepAxis(path, [texts[0]]));
            return new(axis.Axis, [.. texts.Select(axis.Read)], null);
        }
        catch (ArgumentException)
        {
            var names = texts.Distinct().ToList();
            var places = names.Index().ToDictionary(name => name.Item, name => (double)name.Index);
            return new(new ChartAxis(SweepChartAxis.TitleOf(path)), [.. texts.Select(text => places[text])], names);
        }
    }

    private static double[]? TryAll(IReadOnlyList<string> texts, string unit)
    {
        var numbers = new double[texts.Count];
        for (var i = 0; i < numbers.Length; i++)
        {
            if (UnitOf(texts[i]) != unit || Number(texts[i]) is not { } number)
                return null;
            numbers[i] = number;
        }

        return numbers;
    }

    // Where the charts know the unit it has their sign.
    private static string SignOf(string text, string unit)
    {
        try
        {
            var axis = SweepChartAxis.Of(new SweepAxis("field", [text]));
            return axis.Values[0] == Number(text) ? axis.Axis.Unit : unit.Trim();
        }
        catch (ArgumentException)
        {
            return unit.Trim();
        }
    }

    private static string UnitOf(string text) =>
        text.LastIndexOf(' ') is var space and >= 0 ? text[space..] : "";

    private static double? Number(string text) => double.TryParse(
        text.LastIndexOf(' ') is var space and >= 0 ? text.AsSpan(0, space) : text, NumberStyles.Float,
        CultureInfo.InvariantCulture, out var number) ? number : null;
}
