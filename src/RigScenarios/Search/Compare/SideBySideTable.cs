using System.Globalization;
using System.Text;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;

namespace RigScenarios.Search.Compare;

/// <summary>A comparison as comma-separated values (RFC 4180): a row for each verdict and figure, a column for each rig and its
/// difference to the base; docs/side-by-side.md says what the columns are.</summary>
public static class SideBySideTable
{
    /// <summary>The table.</summary>
    /// <param name="side">The comparison.</param>
    public static string ToCsv(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        var text = new StringBuilder();
        var others = side.Rigs.Index().Where(rig => rig.Index != side.Base).ToList();
        Line(text, ["row", "unit", .. side.Rigs.Select(rig => rig.Name),
            .. others.SelectMany(rig => new[] { $"{rig.Item.Name}_difference", $"{rig.Item.Name}_within",
                $"{rig.Item.Name}_stands" }),
            "best"]);
        foreach (var row in side.Verdicts)
        {
            Line(text, [row.Kind is { } kind ? $"verdict_{AnswerShape.Word(kind)}" : "verdict", "",
                .. row.Verdicts.Select(verdict => verdict?.InWords() ?? ""), .. Enumerable.Repeat("", 3 * others.Count),
                Best(side, row.Best)]);
        }
        foreach (var row in side.Figures)
        {
            Line(text, [SideBySideShape.Word(row.Kind), SideBySideShape.Unit(row),
                .. row.Values.Select(value => Number(value.Number)),
                .. others.SelectMany(rig => row.Differences[rig.Index]! is var difference ? new[]
                {
                    Number(difference.Amount?.Number), Number(difference.Within?.Number),
                    SideBySideShape.Word(difference.Standing),
                } : []),
                Best(side, row.Best)]);
        }
        return text.ToString();
    }

    private static string Best(SideBySide side, IReadOnlyList<int> best) =>
        string.Join("; ", best.Select(place => side.Rigs[place].Name));

    private static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    private static void Line(StringBuilder text, IEnumerable<string> cells) =>
        text.AppendJoin(',', cells.Select(CsvField.Of)).Append("\r\n");
}
