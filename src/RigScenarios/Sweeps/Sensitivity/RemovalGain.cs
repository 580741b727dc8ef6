
namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What it would bring to know what one act of measuring tells: how much of the spread would go, and how often one
/// would still be wrong. It is what exact knowledge would bring; a measurement with an error of its own brings less.</summary>
/// <param name="Act">What one would do: "time one full discharge of the brick".</param>
/// <param name="Names">What is known then, in words.</param>
/// <param name="Paths">The fields, by their paths in the file.</param>
/// <param name="VarianceGone">The share of the figure's variance that goes on average: the first-order index of these fields
/// together.</param>
/// <param name="SpreadLeft">The standard deviation of the figure that is left, in its unit: the root of the mean variance that
/// is left.</param>
/// <param name="Lasts">How often one would be wrong about whether the days last; null where the figure does not tell.</param>
public sealed record RemovalGain(string Act, IReadOnlyList<string> Names, IReadOnlyList<string> Paths, IndexEstimate VarianceGone,
    double SpreadLeft, GuessGain? Lasts)
{
    /// <summary>What is known then, on one line.</summary>
    public string Name => string.Join(", ", Names);
}

/// <summary>What one act of measuring would tell of the whole answer.</summary>
/// <param name="Act">What one would do: "weigh the long lens".</param>
/// <param name="Names">What is known then, in words.</param>
/// <param name="Paths">The fields, by their paths in the file.</param>
/// <param name="Guess">How often one would be wrong about whether nothing fails.</param>
public sealed record WholeGain(string Act, IReadOnlyList<string> Names, IReadOnlyList<string> Paths, GuessGain Guess);
