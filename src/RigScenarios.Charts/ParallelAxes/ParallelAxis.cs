namespace RigScenarios.Charts.ParallelAxes;

/// <summary>One of the axes of a picture of many scenarios, with the value of each scenario on it.</summary>
/// <param name="Axis">What it shows and in which unit.</param>
/// <param name="Values">One value for each scenario, in the order of all axes; not-a-number where it is not known. On an axis of
/// names each is the number of a name, from 0.</param>
public sealed record ParallelAxis(ChartAxis Axis, IReadOnlyList<double> Values)
{
    /// <summary>The names, where the axis stands for things and not for numbers; null otherwise.</summary>
    public IReadOnlyList<string>? Names { get; init; }

    /// <summary>From where to where it goes: over all its values, or over all its names.</summary>
    /// <param name="values">Its values.</param>
    internal (double Low, double High) Range(double[] values)
    {
        if (Names is { } names)
            return (-0.5, names.Count - 0.5);
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values)
        {
            if (double.IsFinite(value))
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
        }

        // Without a value the axis is empty; where all are one value, that stands in its middle.
        return low > high ? (0, 1) : low == high ? (low - 0.5, high + 0.5) : (low, high);
    }
}

/// <summary>Those of the scenarios that are drawn apart from the others.</summary>
/// <param name="Name">What they have in common ("last until 18:00").</param>
/// <param name="Has">Whether a scenario, by its number from 0, is among them.</param>
public sealed record ParallelGroup(string Name, Func<int, bool> Has);
