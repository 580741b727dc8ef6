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
        try
        {
            var axis = SweepChartAxis.Of(new SweepAxis(path, [texts[0]]));
            // Nearly always all values are in the unit of the first, which is that of the axis: then only numbers are read.
            var unit = Number(texts[0]) == axis.Values[0] ? UnitOf(texts[0]) : "";
            return new(axis.Axis, [.. texts.Select(text => UnitOf(text) == unit && Number(text) is { } number ? number
                : axis.Read(text))], null);
        }
        catch (ArgumentException)
        {
            var names = texts.Distinct().ToList();
            var numbers = names.Index().ToDictionary(name => name.Item, name => (double)name.Index);
            return new(new ChartAxis(SweepChartAxis.TitleOf(path)), [.. texts.Select(text => numbers[text])], names);
        }
    }

    private static string UnitOf(string text) =>
        text.LastIndexOf(' ') is var space and >= 0 ? text[space..] : "";

    private static double? Number(string text) => double.TryParse(
        text.LastIndexOf(' ') is var space and >= 0 ? text.AsSpan(0, space) : text, NumberStyles.Float,
        CultureInfo.InvariantCulture, out var number) ? number : null;
}
