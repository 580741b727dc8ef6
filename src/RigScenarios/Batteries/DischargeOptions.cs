using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>How a discharge is run: when to stop, how exactly, and how much of it to keep.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record DischargeOptions
{
    /// <summary>A run without a time limit of its own ends here, with <see cref="EndCause.TimeLimit"/>: a rest would never
    /// end.</summary>
    public static readonly Duration LongestRun = Duration.FromDays(30);

    /// <summary>No time limit of its own, the default tolerance, nothing watched, the default number of points.</summary>
    public static DischargeOptions Default { get; } = new();

    /// <summary>Time from the start at which the run ends; <see cref="LongestRun"/> if null. Above 0.</summary>
    public Duration? TimeLimit
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Seconds, "s");
            field = value;
        }
    }

    /// <summary>
    /// Error of the current within a step, relative to the current, that a step may have; 1e-10 to 1e-2. The default, 1e-6,
    /// gives end times within some 1e-8 of the exact ones where the end is well conditioned (docs/discharge.md).
    /// </summary>
    public double RelativeTolerance
    {
        get;
        init
        {
            Require.Within(value, 1e-10, 1e-2, "");
            field = value;
        }
    } = 1e-6;

    /// <summary>The run stops with <see cref="EndCause.WatchedVoltage"/> when the terminal voltage falls to this. Nothing is
    /// watched if null.</summary>
    public ElectricPotential? WatchedVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>The run stops with <see cref="EndCause.WatchedCharge"/> when the state of charge that the terminals
    /// see, that of the near well, falls to this, 0…1. Nothing is watched if null.</summary>
    public Ratio? WatchedCharge
    {
        get;
        init
        {
            if (value is { } given)
                Require.Within(given.DecimalFractions, 0, 1, "");
            field = value;
        }
    }

    /// <summary>Largest number of points of the time series, 0…100 000; 0 keeps none, which is for sweeps. 1500 if not
    /// given.</summary>
    public int SeriesPoints
    {
        get;
        init
        {
            Require.Within(value, 0, 100_000, "");
            field = value;
        }
    } = 1500;
}
