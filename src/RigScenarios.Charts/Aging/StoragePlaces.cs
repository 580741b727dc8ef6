using RigScenarios.Charts.Bars;

namespace RigScenarios.Charts.Aging;

/// <summary>A way to keep a battery, and what it leaves.</summary>
/// <param name="Name">The way in plain words ("in the fridge, half full").</param>
/// <param name="Left">Capacity left by the fit that speaks for the battery, %.</param>
/// <param name="Least">The least that a published fit says, %.</param>
/// <param name="Greatest">The most that a published fit says, %.</param>
public sealed record WayToKeep(string Name, double Left, double Least, double Greatest)
{
    /// <summary>Whether it is the reader's own way.</summary>
    public bool IsOwn { get; init; }
}

/// <summary>Ways to keep a battery side by side: a bar from the least to the most that published fits say is left.</summary>
public static class StoragePlaces
{
    /// <summary>The figure.</summary>
    /// <param name="ways">At least one, each with a name of its own.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="InvalidOperationException">There is no way, or two have the same name.</exception>
    public static Figure Of(IReadOnlyList<WayToKeep> ways, string title, string caption, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(ways);
        return new BarChart
        {
            Slug = "storage-places",
            Title = title,
            Caption = $"Each bar goes from the least to the most that published fits say; beside it what the fit says that speaks "
                + $"for this battery. {caption}".TrimEnd(),
            Cautions = cautions ?? [],
            Value = new ChartAxis("capacity left", "%"),
            Bars = [.. ways.Select(Bar)],
            Limits = [new BarLimit("replaced by convention: 80 %", 80)],
        }.ToFigure();
    }

    private static ChartBar Bar(WayToKeep way) => new(way.Name, way.Greatest, way.Least)
    {
        Note = $"{Rounding.Text(way.Left, 3)} % ({Rounding.Text(way.Least, 3)} to {Rounding.Text(way.Greatest, 3)})",
        IsEmphasised = way.IsOwn,
    };
}
