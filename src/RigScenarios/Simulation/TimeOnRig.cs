using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>How long a battery fed the rig, and how cold and warm it was: what the doubt in its prediction rests on.</summary>
internal sealed class TimeOnRig
{
    private double seconds;
    private double coldest = double.PositiveInfinity;
    private double warmest = double.NegativeInfinity;

    /// <summary>Adds a stretch of s, with its temperatures at begin and end in K.</summary>
    public void Add(double length, double before, double after)
    {
        seconds += length;
        coldest = Math.Min(coldest, Math.Min(before, after));
        warmest = Math.Max(warmest, Math.Max(before, after));
    }

    /// <summary>The error of the prediction; null if it never fed the rig.</summary>
    /// <param name="share">The part of its capacity that it gave.</param>
    /// <param name="oneWell">Whether its charge lies in one well.</param>
    public ExpectedError? ErrorOf(double share, bool oneWell) => seconds <= 0
        ? null
        : ExpectedError.At(Temperature.FromKelvins(coldest), Temperature.FromKelvins(warmest), 3600 * share / seconds, oneWell);
}
