namespace RigScenarios.Charts.Rows;

/// <summary>What one uncertain figure alone does to a result, between its low and its high value.</summary>
/// <param name="Name">Which figure, as people read it ("energy of the label, 181 to 199 Wh").</param>
/// <param name="AtLow">The result with the figure at its low value, in the unit of the chart's axis; not-a-number where it is not
/// known.</param>
/// <param name="AtHigh">The result with the figure at its high value.</param>
public sealed record TornadoRow(string Name, double AtLow, double AtHigh)
{
    /// <summary>How far the result moves; zero where one of the two is not known.</summary>
    public double Reach => double.IsFinite(AtHigh - AtLow) ? Math.Abs(AtHigh - AtLow) : 0;
}
