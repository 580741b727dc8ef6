using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>
/// A run on the battery, made or planned: in which air, from which charge, with what draw. A <see cref="FieldNote"/> adds how it
/// ended.
/// </summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record BatteryRun
{
    /// <summary>Temperature of the air at the battery, the same all the time; above 0 K.</summary>
    public required Temperature Ambient
    {
        get;
        init
        {
            Require.Positive(value.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>Temperature of the battery at the start; that of the air if null.</summary>
    public Temperature? InitialTemperature
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>State of charge at the start; above 0, up to 1. Full if not given.</summary>
    public Ratio InitialCharge
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(1);

    /// <summary>Voltage of the battery's terminals at which it ended or will end; the battery's own cut-off if null.</summary>
    public ElectricPotential? Cutoff
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>What ran, in order; the last stretch goes on to the end. One or more.</summary>
    public required IReadOnlyList<RunStretch> Stretches { get; init; }

    /// <summary>Whether the load was the same all the time, as on a bench: two such days are alike.</summary>
    public bool Steady { get; init; }

    /// <summary>The wiring between the battery and the devices, by whose names the stretches call them; null where they hang on
    /// its terminals.</summary>
    public WiringNetwork? Wiring { get; init; }

    /// <summary>The device whose minimum voltage ended it or will end it, of those of <see cref="Wiring"/>; null for the battery
    /// itself.</summary>
    public string? EndedBy { get; init; }
}

/// <summary>A part of a run: its length, and the states that took turns in it.</summary>
/// <param name="Length">How long; null for the last one, which goes on to the end.</param>
/// <param name="States">The states with their share of the time; one or more.</param>
public sealed record RunStretch(Duration? Length, IReadOnlyList<RunState> States)
{
    /// <summary>One state all the time, to the end.</summary>
    /// <param name="devices">Mean power of each device that ran.</param>
    public static RunStretch ToTheEnd(OrderedMap<Power> devices) =>
        new(null, [new RunState(Ratio.FromDecimalFractions(1), devices)]);
}

/// <summary>A state of the rig: which devices drew how much.</summary>
/// <param name="Share">Its share of the stretch's time; 0…1.</param>
/// <param name="Devices">Mean power of each device in it, 0 or more.</param>
public sealed record RunState(Ratio Share, OrderedMap<Power> Devices);
