namespace RigScenarios.Cells.Aging;

/// <summary>
/// The form of two fits on recent high-energy cells: storage <c>A·exp(B/T)·exp(C·s/T)</c>, cycles
/// <c>(a + b·rate + c·depth)·(exp(d/T) + exp(-e/T))</c>; capacity only.
/// </summary>
internal static class ExponentialAging
{
    /// <summary>The loss by storage.</summary>
    public static AgingPart Storage(double exponent, double a, double b, double c) =>
        new(exponent, at => a * Math.Exp(b / at.Kelvin) * Math.Exp(c * at.Charge / at.Kelvin));

    /// <summary>The loss by cycles.</summary>
    public static AgingPart Cycles(double exponent, double a, double b, double c, double d, double e) => new(exponent,
        at => (a + (b * at.RatePerHour) + (c * at.Depth)) * (Math.Exp(d / at.Kelvin) + Math.Exp(-e / at.Kelvin)));
}
