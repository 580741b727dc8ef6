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

    /// <summary>
    /// How far the near well lags behind the state of charge, w: the terminals see the state of charge less this. 0 after a long
    /// rest, above 0 after a load, below 0 after a charge; -1…1. A pack with one well has none: it is not looked at there.
    /// </summary>
    public Ratio SurfaceLag
    {
        get;
        init
        {
            Require.Within(value.DecimalFractions, -1, 1, "");
            field = value;
        }
    } = Ratio.Zero;

    /// <summary>State of charge that the terminals see: that of the near well.</summary>
    public Ratio NearCharge => Ratio.FromDecimalFractions(
        Math.Clamp(StateOfCharge.DecimalFractions - SurfaceLag.DecimalFractions, 0, 1));

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

    /// <summary>A state in plain numbers as a start.</summary>
    internal static DischargeStart Of(in PackState state) => new()
    {
        StateOfCharge = Ratio.FromDecimalFractions(Math.Clamp(state.Charge, 0, 1)),
        Temperature = UnitsNet.Temperature.FromKelvins(state.Kelvin),
        Voltage1 = ElectricPotential.FromVolts(state.Voltage1),
        Voltage2 = ElectricPotential.FromVolts(state.Voltage2),
        SurfaceLag = Ratio.FromDecimalFractions(Math.Clamp(state.Lag, -1, 1)),
    };

    /// <summary>The state in plain numbers.</summary>
    /// <param name="kelvin">The temperature of the air, K, where that of the pack is not given.</param>
    internal PackState State(double kelvin) => new(
        StateOfCharge.DecimalFractions, Voltage1.Volts, Voltage2.Volts, Temperature?.Kelvins ?? kelvin,
        SurfaceLag.DecimalFractions);

    /// <summary>Refuses a lag with which one of the wells would hold less than nothing or more than all.</summary>
    internal void RequireWells(double nearShare)
    {
        if (nearShare == 1)
            return;
        var (charge, lag) = (StateOfCharge.DecimalFractions, SurfaceLag.DecimalFractions);
        var (low, high) = (charge - lag, charge + (lag * nearShare / (1 - nearShare)));
        const double rounding = 1e-9;
        if (Math.Min(low, high) >= -rounding && Math.Max(low, high) <= 1 + rounding)
            return;
        throw new ArgumentOutOfRangeException(nameof(nearShare),
            $"SurfaceLag is {lag:G9} at a state of charge of {charge:G9}: the near well would hold {low:G6}, the far one "
                + $"{high:G6}; accepted: both from 0 to 1.");
    }
}
