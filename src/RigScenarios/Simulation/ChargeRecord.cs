using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>The charge of a battery over time, a point wherever something happens.</summary>
internal sealed class ChargeRecord
{
    private readonly List<ChargePoint> points = [];

    public IReadOnlyList<ChargePoint> Points => points;

    /// <summary>Adds the charge at a time in s; times don't fall.</summary>
    public void Mark(double time, double charge)
    {
        // While a battery rests its charge hardly changes: only the last of such points is kept.
        if (points.Count > 1 && IsAbout(points[^1], charge) && IsAbout(points[^2], charge))
            points.RemoveAt(points.Count - 1);
        points.Add(new ChargePoint(Duration.FromSeconds(time), Ratio.FromDecimalFractions(Math.Max(0, charge))));
    }

    private static bool IsAbout(ChargePoint point, double charge) => Math.Abs(point.Charge.DecimalFractions - charge) < 1e-4;
}
