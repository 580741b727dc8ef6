using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries.Batch;

/// <summary>One discharge of a batch: what <see cref="Discharge.Run"/> would be asked, to be answered by its end alone.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record BatchScenario
{
    /// <summary>The pack, with its age.</summary>
    public required Pack Pack
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>Temperature of the air around it, the same all the time; above 0 K.</summary>
    public required Temperature Ambient
    {
        get;
        init
        {
            Require.Positive(value.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>The demand at its terminals, repeated back to back.</summary>
    public required Demand Demand
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>The state at the start; full, at rest and as warm as the air if not given.</summary>
    public DischargeStart Start
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    } = DischargeStart.Full;

    /// <summary>Time from the start at which it ends; <see cref="DischargeOptions.LongestRun"/> if null. Above 0.</summary>
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
}
