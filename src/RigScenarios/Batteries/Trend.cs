using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>How a driver goes on after a step: its slope and half its curvature in time. A first guess only, no result rests on
/// it.</summary>
/// <param name="Slope">Per second.</param>
/// <param name="Bend">Per second squared.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Trend(double Slope, double Bend)
{
    /// <summary>The change after the times, s.</summary>
    public Vector512<double> After(Vector512<double> seconds) => seconds * ((seconds * Bend) + Vector512.Create(Slope));

    /// <summary>The trend of a polynomial in θ at a place of a step of the length in s.</summary>
    public static Trend Of(ReadOnlySpan<double> coefficients, double theta, double length)
    {
        double slope = 0, bend = 0;
        for (var m = Collocation.Count - 1; m >= 1; m--)
        {
            slope = (slope * theta) + (m * coefficients[m]);
            if (m >= 2)
                bend = (bend * theta) + (m * (m - 1) / 2.0 * coefficients[m]);
        }

        return new Trend(slope / length, bend / (length * length));
    }
}
