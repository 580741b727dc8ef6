using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What it would bring to know one uncertain thing: how much of the spread would go, and how often one would still be
/// wrong. It is what exact knowledge would bring; a measurement with an error of its own brings less.</summary>
/// <param name="Act">What one would do: "time one discharge of the brick".</param>
/// <param name="Name">What is known then, in words.</param>
/// <param name="Paths">The fields, by their paths in the file.</param>
/// <param name="VarianceGone">The share of the figure's variance that goes on average: the first-order index of these fields
/// together.</param>
/// <param name="SpreadLeft">The standard deviation of the figure that is left on average, in its unit: the root of the mean
/// variance.</param>
/// <param name="WrongNow">How often the better guess of today is wrong about whether the day lasts; null where that is not
/// known.</param>
/// <param name="WrongThen">How often one would be wrong who had measured it and had guessed from that; null likewise.</param>
/// <param name="WrongThenError">The standard error of that; null likewise.</param>
public sealed record RemovalGain(
    string Act, string Name, IReadOnlyList<string> Paths, IndexEstimate VarianceGone, double SpreadLeft, Ratio? WrongNow,
    Ratio? WrongThen, Ratio? WrongThenError);
