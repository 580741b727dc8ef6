using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>An index with its interval.</summary>
/// <param name="Value">The estimate. An index lies between 0 and 1; an estimate of a small one may fall a little below 0, and is
/// not cut off there, for that would hide its error.</param>
/// <param name="Low">The lower end of the bootstrap interval.</param>
/// <param name="High">The upper end.</param>
public readonly record struct IndexEstimate(double Value, double Low, double High);

/// <summary>What one uncertain thing has to do with the spread of a figure: a field, or several that are drawn together or that
/// one act of measuring would tell.</summary>
/// <param name="Name">In words.</param>
/// <param name="Paths">The fields, by their paths in the file.</param>
/// <param name="FirstOrder">The share of the figure's variance that would go, on average, if it alone were known.</param>
/// <param name="Total">The share that would be left, on average, if everything else were known; above the first order by what
/// it does only together with others.</param>
public sealed record SobolIndex(string Name, IReadOnlyList<string> Paths, IndexEstimate FirstOrder, IndexEstimate Total);

/// <summary>
/// Variance-based indices of a figure, first order and total: how the variance of the figure is shared among what is uncertain
/// (I. M. Sobol', "Sensitivity estimates for nonlinear mathematical models", Mathematical Modeling and Computational Experiment
/// 1 (1993), pp. 407-414). Fields that are drawn together are one thing here, for only independent things have a share each.
/// </summary>
public sealed record SobolIndices
{
    /// <summary>What is uncertain, that with the greatest total index first.</summary>
    public required IReadOnlyList<SobolIndex> Things { get; init; }

    /// <summary>Mean of the figure, in its unit.</summary>
    public required double Mean { get; init; }

    /// <summary>Variance of the figure, in the square of its unit. Where it is 0 nothing varies, and all indices are 0.</summary>
    public required double Variance { get; init; }

    /// <summary>The level of the intervals, such as 95 %.</summary>
    public required Ratio Level { get; init; }

    /// <summary>How many rows of the design the estimates rest on: N of them.</summary>
    public required int Rows { get; init; }

    /// <summary>Rows of the design that are left out, because a figure of theirs is not known.</summary>
    public required int RowsUnknown { get; init; }

    /// <summary>How many times the figure was asked for: N·(things + 2).</summary>
    public required long Runs { get; init; }

    /// <summary>What only comes about by several things together: 1 less the sum of the first-order indices.</summary>
    public double Together => Variance > 0 ? 1 - Things.Sum(thing => thing.FirstOrder.Value) : 0;
}
