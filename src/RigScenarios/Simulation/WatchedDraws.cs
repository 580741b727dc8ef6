using System.Runtime.Intrinsics;
using RigScenarios.Batteries;

namespace RigScenarios.Simulation;

/// <summary>A draw whose terminals are watched as well as what it watches itself.</summary>
internal sealed class WarnedDraw(SolvedDraw inner, double warningVolts) : SolvedDraw
{
    /// <inheritdoc/>
    public override bool Watches => true;

    /// <inheritdoc/>
    public override void Solve(Vector512<double> source, Vector512<double> resistance, Vector512<double> air,
        ref CircuitLanes point)
    {
        inner.Solve(source, resistance, air, ref point);
        var warning = point.Voltage - Vector512.Create(warningVolts);
        point.Watched = inner.Watches ? Vector512.Min(point.Watched, warning) : warning;
    }
}

/// <summary>A draw behind a diode: a voltage that is lost, and a resistance.</summary>
internal sealed class DiodeDraw(SolvedDraw inner, double dropVolts, double ohms) : SolvedDraw
{
    /// <inheritdoc/>
    public override bool Watches => inner.Watches;

    /// <inheritdoc/>
    public override void Solve(Vector512<double> source, Vector512<double> resistance, Vector512<double> air,
        ref CircuitLanes point)
    {
        inner.Solve(source - Vector512.Create(dropVolts), resistance + Vector512.Create(ohms), air, ref point);
        point.Voltage += (point.Current * ohms) + Vector512.Create(dropVolts);
    }
}
