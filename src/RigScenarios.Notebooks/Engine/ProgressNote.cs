using System.Globalization;

namespace RigScenarios.Notebooks.Engine;

/// <summary>How far a long cell has come.</summary>
/// <param name="Fraction">From 0 to 1.</param>
/// <param name="Text">What is being done.</param>
internal sealed record ProgressNote(double Fraction, string Text)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Fraction * 100:0} % {Text}").TrimEnd();
}
