namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>What a figure is with one uncertain thing at its low and its high end and everything else in its middle.</summary>
/// <param name="Name">In words.</param>
/// <param name="Path">The field, by its path in the file.</param>
/// <param name="LowText">The low value of the field, as the file would say it.</param>
/// <param name="HighText">The high value of the field.</param>
/// <param name="AtLow">The figure with the low value; not a number where it is not known.</param>
/// <param name="AtHigh">The figure with the high value; not a number where it is not known.</param>
public sealed record TornadoBar(string Name, string Path, string LowText, string HighText, double AtLow, double AtHigh)
{
    /// <summary>How far apart the two are; 0 where one of them is not known.</summary>
    public double Width => double.IsNaN(AtLow) || double.IsNaN(AtHigh) ? 0 : Math.Abs(AtHigh - AtLow);
}

/// <summary>
/// One thing at a time: each uncertain field goes to the ends of a stretch of its spread, with every other in its middle (the
/// median). It shows which way a field moves the figure, but nothing of what two fields do together; the indices do.
/// </summary>
/// <param name="Figure">What the figure is, in words.</param>
/// <param name="Unit">Its unit; empty for a bare number.</param>
/// <param name="Middle">The figure with everything in its middle; not a number where it is not known.</param>
/// <param name="LowShare">Where the low end is: the share of the spread below it, such as 0.1.</param>
/// <param name="HighShare">Where the high end is, such as 0.9.</param>
/// <param name="Bars">The bars, the widest first.</param>
public sealed record Tornado(
    string Figure, string Unit, double Middle, double LowShare, double HighShare, IReadOnlyList<TornadoBar> Bars);
