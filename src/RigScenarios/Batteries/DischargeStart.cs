using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// The state from which a discharge begins. A result carries the state at its end in this form, so that a run can go on from
/// there,
/// with the same demand or another one.
/// </summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record DischargeStart
{
    /// <summary>A full pack at the temperature of the air, at rest.</summary>
    public static DischargeStart Full { get; } = new();

    /// <summary>State of charge, 0…1; full if not given.</summary>
    public Ratio StateOfCharge
    {
        get;
        init
        {
            Require.Within(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(1);

    /// <summary>Temperature of the pack; that of the air if null.</summary>
    public Temperature? Temperature
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>Voltage over the first resistor-capacitor pair of one group; 0 after a long rest.</summary>
    public ElectricPotential Voltage1
    {
        get;
        init
        {
            Require.Within(value.Volts, -1e3, 1e3, "V");
            field = value;
        }
    } = ElectricPotential.Zero;

    /// <summary>Voltage over the second resistor-capacitor pair of one group; 0 after a long rest.</summary>
    public ElectricPotential Voltage2
    {
        get;
        init
        {
            Require.Within(value.Volts, -1e3, 1e3, "V");
            field = value;
        }
    } = ElectricPotential.Zero;

    /// <summary>Where in the demand the run begins, from the start of its first segment; 0 or more. Beyond the period it wraps
    /// round.</summary>
    public Duration DemandOffset
    {
        get;
        init
        {
            Require.NotNegative(value.Seconds, "s");
            field = value;
        }
    } = Duration.Zero;
}
