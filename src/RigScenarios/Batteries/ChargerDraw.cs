using System.Runtime.Intrinsics;

namespace RigScenarios.Batteries;

/// <summary>The phases of a charge, in their order.</summary>
internal enum ChargePhase
{
    /// <summary>The charger's current, until the voltage or the power reaches its limit.</summary>
    Current,

    /// <summary>All of the power that the bay has, until the voltage reaches its limit.</summary>
    Power,

    /// <summary>The voltage held, until the current has fallen to the termination.</summary>
    Voltage,
}

/// <summary>Within what a pack is charged.</summary>
/// <param name="LowestKelvin">K.</param>
/// <param name="HighestKelvin">K.</param>
/// <param name="UpTo">The state of charge at which the charge ends, if nothing ends it before; a full near well does.</param>
internal sealed record ChargeWindow(double LowestKelvin, double HighestKelvin, double UpTo = 1)
{
    /// <summary>Stands for a rest, which nothing ends.</summary>
    public static ChargeWindow Rest { get; } = new(0, double.PositiveInfinity, double.PositiveInfinity);
}

/// <summary>What a charger does in plain numbers.</summary>
/// <param name="Amperes">Charging current, A.</param>
/// <param name="FullVolts">Voltage that is not passed, V.</param>
/// <param name="TerminationAmperes">Current at which the charge is over, A.</param>
/// <param name="Watts">Largest power into the pack, W; infinite for none.</param>
/// <param name="ChargeFactor">Part of the current that becomes charge.</param>
internal sealed record ChargerLimits(double Amperes, double FullVolts, double TerminationAmperes, double Watts,
    double ChargeFactor);

/// <summary>A charger on the terminals: the same circuit with a current below zero.</summary>
internal sealed class ChargerDraw(ChargerLimits limits, ChargePhase phase) : SolvedDraw
{
    // A source without any resistance could not be held at a voltage.
    private static readonly Vector512<double> LeastOhms = Vector512.Create(1e-6);

    /// <inheritdoc/>
    public override bool Watches => true;

    /// <inheritdoc/>
    public override double ChargeFactor => limits.ChargeFactor;

    /// <inheritdoc/>
    public override void Solve(Vector512<double> source, Vector512<double> resistance, Vector512<double> air,
        ref CircuitLanes point)
    {
        var full = Vector512.Create(limits.FullVolts);
        point.PowerMargin = Vector512.Create(double.PositiveInfinity);
        switch (phase)
        {
            case ChargePhase.Current:
                point.Current = Vector512.Create(-limits.Amperes);
                point.Voltage = source + (resistance * limits.Amperes);
                point.Watched = Vector512.Min(full, Vector512.Create(limits.Watts / limits.Amperes)) - point.Voltage;
                break;
            case ChargePhase.Power:
                point.Voltage =
                    (source + Vector512.Sqrt((source * source) + (resistance * (4 * limits.Watts)))) / Vector512.Create(2.0);
                point.Current = Vector512.Create(-limits.Watts) / point.Voltage;
                point.Watched = full - point.Voltage;
                break;
            default:
                point.Voltage = full;
                point.Current = Vector512.Min((source - full) / Vector512.Max(resistance, LeastOhms), Vector512<double>.Zero);
                point.Watched = -point.Current - Vector512.Create(limits.TerminationAmperes);
                break;
        }
    }
}
