namespace RigScenarios.Cells.Aging;

/// <summary>
/// One part of aging: <c>L = a·u^p</c> over days or full cycles u, where a depends on the conditions and p never does.
/// </summary>
/// <param name="Exponent">p.</param>
/// <param name="Factor">a, 0 or more.</param>
internal sealed record AgingPart(double Exponent, Func<AgingCondition, double> Factor)
{
    // Five-point Gauss-Legendre on 0…1: places and weights. Between two knots of the voltage table every factor is smooth, and
    // what is left of the integral's error is far below the digits of any figure here.
    private static readonly double[] Places =
        [0.0469100770306680, 0.2307653449471585, 0.5, 0.7692346550528415, 0.9530899229693320];

    private static readonly double[] Weights =
        [0.1184634425280945, 0.2393143352496832, 0.2844444444444444, 0.2393143352496832, 0.1184634425280945];

    /// <summary>No aging at all.</summary>
    public static AgingPart None { get; } = new(1, _ => 0);

    /// <summary>How fast x = L^(1/p) grows under the condition, per day or per full cycle.</summary>
    /// <param name="condition">Condition, steady.</param>
    /// <param name="pace">g, the battery's own pace.</param>
    public double Speed(AgingCondition condition, double pace) =>
        Math.Pow(pace * Math.Max(0, Factor(condition)), 1 / Exponent);

    /// <summary>The mean of <see cref="Speed"/> while the charge goes evenly from one value to another.</summary>
    public double MeanSpeed(double kelvin, double from, double to, double pace)
    {
        if (from == to)
            return Speed(AgingCondition.AtCharge(kelvin, from), pace);
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var (sum, start) = (0.0, low);
        while (start < high)
        {
            var knot = (Math.Floor(start * AgingCell.Steps) + 1) / AgingCell.Steps;
            var end = knot > start && knot < high ? knot : high;
            for (var i = 0; i < Places.Length; i++)
            {
                sum += (end - start) * Weights[i]
                    * Speed(AgingCondition.AtCharge(kelvin, start + ((end - start) * Places[i])), pace);
            }

            start = end;
        }

        return sum / (high - low);
    }

    /// <summary>L at a state x.</summary>
    public double At(double x) => Math.Pow(x, Exponent);

    /// <summary>The state x of a loss or growth L, 0 or more.</summary>
    public double StateOf(double value) => Math.Pow(value, 1 / Exponent);
}
