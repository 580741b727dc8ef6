using RigScenarios.Charts.Days;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Charts.Sweeps;

/// <summary>What charts of sweeps say alike.</summary>
internal static class SweepCaption
{
    /// <summary>What a runtime longer than the day means, and which runtimes are lower bounds; only what applies.</summary>
    public static string OfRuntime(IReadOnlyList<SweepRow> rows)
    {
        var sentences = new List<string>();
        if (rows.Any(row => row.Result.Completes))
            sentences.Add("A runtime longer than the planned day counts the last day begun again, with the batteries as they "
                + "stand.");
        var bounds = rows.Count(row => row.Result.Reserve.IsLowerBound);
        if (bounds > 0)
            sentences.Add($"{bounds} of {rows.Count} runtimes are lower bounds: those runs were given up with the battery "
                + "still going.");
        return string.Join(' ', sentences);
    }

    /// <summary>The planned length, where it is the same in all rows; null where the sweep changes it.</summary>
    public static Duration? Planned(IReadOnlyList<SweepRow> rows) =>
        rows.Count > 0 && rows.All(row => Math.Abs(row.Planned.Seconds - rows[0].Planned.Seconds) < 1)
            ? rows[0].Planned : null;

    /// <summary>How far off the runtimes may be, how much is assumed, and whose temperatures go first.</summary>
    public static IReadOnlyList<string> Cautions(IReadOnlyList<SweepRow> rows) =>
        DayCautions.Of([.. rows.Select(row => row.Result)]);

    /// <summary>The axis of a sweep with one.</summary>
    /// <exception cref="ArgumentException">The sweep has more.</exception>
    public static SweepAxis OnlyAxis(SweepTable table, string chart) => table.Axes.Count == 1
        ? table.Axes[0]
        : throw new ArgumentException(
            $"{chart} takes a sweep with one axis; this one has {table.Axes.Count}. A map of two axes is drawn by SweepHeatMap.",
            nameof(table));

    /// <summary>The sentences that are not empty, one after the other.</summary>
    public static string Join(params IEnumerable<string> sentences) =>
        string.Join(' ', sentences.Where(sentence => sentence.Length > 0));
}
