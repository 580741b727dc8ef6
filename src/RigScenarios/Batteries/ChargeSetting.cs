using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Batteries;

/// <summary>How a pack is charged: constant current, then constant voltage until the current has fallen to the
/// termination.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record ChargeSetting
{
    /// <param name="current">Charging current; above 0.</param>
    public ChargeSetting(ElectricCurrent current) => Current = current;

    /// <summary>Charging current; above 0.</summary>
    public ElectricCurrent Current
    {
        get;
        init
        {
            Require.Positive(value.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Voltage of the pack at which it is held; what its cells are charged to (<see cref="Pack.FullVoltage"/>) if
    /// null. Above 0.</summary>
    public ElectricPotential? FullVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>Current at which the charge is over; a twentieth of the capacity in an hour if null. Above 0.</summary>
    public ElectricCurrent? Termination
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Largest power into the pack; none if null. Above 0.</summary>
    public Power? PowerLimit
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive((double)given.As(PowerUnit.Watt), "W");
            field = value;
        }
    }

    /// <summary>
    /// Part of the charge that the pack keeps; above 0, up to 1. 0.998 unless given: charge out over charge in of one measured
    /// cell (P. Kollmeyer et al.,
    /// 2020, doi:10.17632/cp3473x7xv.3).
    /// </summary>
    public Ratio CoulombicEfficiency
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(0.998);

    /// <summary>Below this temperature of the pack it is not charged. 10 °C unless given (IEC 62133, a laboratory's summary); the
    /// maker's limit goes first.</summary>
    public Temperature Lowest { get; init; } = Temperature.FromDegreesCelsius(10);

    /// <summary>Above this temperature of the pack it is not charged. 45 °C unless given (IEC 62133, a laboratory's summary); the
    /// maker's limit goes first.</summary>
    public Temperature Highest { get; init; } = Temperature.FromDegreesCelsius(45);

    /// <summary>The time after which the run stops; <see cref="DischargeOptions.LongestRun"/> if null.</summary>
    public Duration? TimeLimit { get; init; }

    /// <summary>Largest number of points of the time series in each phase; 0 keeps none.</summary>
    public int SeriesPoints { get; init; } = 500;

    /// <summary>The window of temperature in plain numbers.</summary>
    internal ChargeWindow Window => new(Lowest.Kelvins, Highest.Kelvins);

    /// <summary>The limits for a pack in plain numbers.</summary>
    internal ChargerLimits LimitsFor(Pack pack) => new(
        Current.Amperes,
        FullVoltage?.Volts ?? (pack.SeriesGroups * pack.FullVoltage.Volts),
        Math.Min(Termination?.Amperes ?? (pack.Capacity.AmpereHours / 20), 0.99 * Current.Amperes),
        PowerLimit is { } power ? (double)power.As(PowerUnit.Watt) : double.PositiveInfinity,
        CoulombicEfficiency.DecimalFractions);
}

/// <summary>What ended a charge.</summary>
public enum ChargeEnd
{
    /// <summary>The current fell to the termination, or all of the capacity is filled.</summary>
    Full,

    /// <summary>The pack became colder than it may be charged.</summary>
    TooCold,

    /// <summary>The pack became warmer than it may be charged.</summary>
    TooWarm,

    /// <summary>The run reached its time limit.</summary>
    TimeLimit,
}

/// <summary>How a charge went.</summary>
public sealed record ChargeResult
{
    /// <summary>From the start of the charge to its end.</summary>
    public required Duration EndTime { get; init; }

    /// <summary>What ended it.</summary>
    public required ChargeEnd End { get; init; }

    /// <summary>The time until the voltage was held; the whole time if it was not reached.</summary>
    public required Duration VoltageHeldFrom { get; init; }

    /// <summary>The state at the end, from which another run can go on.</summary>
    public required DischargeStart FinalState { get; init; }

    /// <summary>Charge that went in through the terminals.</summary>
    public required ElectricCharge ChargeIn { get; init; }

    /// <summary>Energy that went in through the terminals.</summary>
    public required Energy EnergyIn { get; init; }

    /// <summary>Energy that the cells stored, at their open-circuit voltage.</summary>
    public required Energy Stored { get; init; }

    /// <summary>Energy that became heat in the pack.</summary>
    public required Energy Heat { get; init; }

    /// <summary>The course; currents into the pack are negative. Empty if none was asked for.</summary>
    public required IReadOnlyList<DischargePoint> Series { get; init; }
}
