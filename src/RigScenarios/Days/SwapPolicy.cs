using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Days;

/// <summary>When somebody may swap the battery.</summary>
public enum SwapMoments
{
    /// <summary>At any time.</summary>
    AnyTime,

    /// <summary>Not while the camera rolls.</summary>
    NotWhileRolling,

    /// <summary>Only between two blocks.</summary>
    BetweenBlocks,
}

/// <summary>Which battery is taken next.</summary>
public enum NextBattery
{
    /// <summary>The fullest that is at rest or charged; of equal ones the first listed.</summary>
    FullestFirst,

    /// <summary>The next one of the list, from the first again after the last.</summary>
    AsListed,
}

/// <summary>When and how batteries are swapped. Without any condition each battery runs until the rig stops.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record SwapPolicy
{
    /// <summary>Swap when the battery's voltage has fallen to this; above 0. Null for no such condition.</summary>
    public ElectricPotential? WarningVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>Swap when the battery's charge has fallen to this, 0…1. Null for no such condition.</summary>
    public Ratio? Reserve
    {
        get;
        init
        {
            if (value is { } given)
                Require.Within(given.DecimalFractions, 0, 1, "");
            field = value;
        }
    }

    /// <summary>Swap at the end of each block, where a battery waits that is fuller by five points or more.</summary>
    public bool AtBlockEnds { get; init; }

    /// <summary>When a swap is allowed.</summary>
    public SwapMoments Allowed { get; init; } = SwapMoments.NotWhileRolling;

    /// <summary>Time without battery; 0 or more. One minute unless given: common practice, no source.</summary>
    public Duration SwapTime
    {
        get;
        init
        {
            Require.NotNegative(value.Seconds, "s");
            field = value;
        }
    } = Duration.FromMinutes(1);

    /// <summary>Time that a device which lost power needs to start again; 0 or more. Half a minute unless given: common practice,
    /// no source.</summary>
    public Duration Restart
    {
        get;
        init
        {
            Require.NotNegative(value.Seconds, "s");
            field = value;
        }
    } = Duration.FromSeconds(30);

    /// <summary>Which battery is taken next.</summary>
    public NextBattery Next { get; init; }

    /// <summary>Least charge with which a battery is put on the rig, 0…1; one that was taken off must also have gained ten
    /// points. 20 % unless given.</summary>
    public Ratio LeastCharge
    {
        get;
        init
        {
            Require.Within(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromPercent(20);

    /// <summary>Whether a battery with enough charge is taken off a charger before it is full, if no other is left.</summary>
    public bool InterruptCharging { get; init; } = true;
}
