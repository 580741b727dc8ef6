using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// Everything that the discharge model needs of a pack: a number of equal groups in series, each a second-order equivalent
/// circuit, in one lump of heat. Unlike a <see cref="Battery"/>, nothing is left open; <see cref="PackModel"/> makes the one from
/// the other.
/// </summary>
/// <remarks>
/// Equations and symbols: docs/discharge.md; the circuit is that of G. L. Plett, Battery Management Systems, vol. I (2015), ch.
/// 2.
/// Each value is checked when it is set, also by <c>with</c>: a value outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>
/// that names the property, the value and the accepted range.
/// </remarks>
public sealed record Pack
{
    /// <summary>Number of groups in series, S; 1 or more.</summary>
    public required int SeriesGroups
    {
        get;
        init
        {
            Require.AtLeast(value, 1);
            field = value;
        }
    }

    /// <summary>Capacity of one group, and so of the pack, new and at 25 °C, Q; above 0.</summary>
    public required ElectricCharge Capacity
    {
        get;
        init
        {
            Require.Positive(value.AmpereHours, "Ah");
            field = value;
        }
    }

    /// <summary>Open-circuit voltage of one group, U(z).</summary>
    public required OpenCircuitVoltage OpenCircuitVoltage
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    }

    /// <summary>Voltage at which a charger holds one group; that of the full group at rest if null. Above 0.</summary>
    public ElectricPotential? ChargeVoltage
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Volts, "V");
            field = value;
        }
    }

    /// <summary>Voltage of one full group on a charger.</summary>
    public ElectricPotential FullVoltage => ChargeVoltage ?? OpenCircuitVoltage.Points[^1].Voltage;

    /// <summary>Resistance of one group that acts at once, R0, at 25 °C and new; 0 or more.</summary>
    public required ElectricResistance Resistance0
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    }

    /// <summary>Resistance of the first resistor-capacitor pair of one group, R1, at 25 °C and new; 0 or more.</summary>
    public required ElectricResistance Resistance1
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    }

    /// <summary>Resistance of the second resistor-capacitor pair of one group, R2, at 25 °C and new; 0 or more.</summary>
    public required ElectricResistance Resistance2
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    }

    /// <summary>Time constant of the first pair; above 0.</summary>
    public required Duration TimeConstant1
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    }

    /// <summary>Time constant of the second pair; above 0.</summary>
    public required Duration TimeConstant2
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    }

    /// <summary>Resistance of the pack's leads, protection switch and plate contacts, Rp; 0 or more. It neither ages nor changes
    /// with temperature.</summary>
    public required ElectricResistance LeadResistance
    {
        get;
        init
        {
            Require.NotNegative(value.Ohms, "Ω");
            field = value;
        }
    }

    /// <summary>Activation energy of the group's resistances, Ea; 0 or more.</summary>
    public required MolarEnergy ActivationEnergy
    {
        get;
        init
        {
            Require.NotNegative(value.JoulesPerMole, "J/mol");
            field = value;
        }
    }

    /// <summary>Heat capacity of the pack; above 0.</summary>
    public required Entropy HeatCapacity
    {
        get;
        init
        {
            Require.Positive(value.JoulesPerKelvin, "J/K");
            field = value;
        }
    }

    /// <summary>Heat conductance from the pack to the air, G; 0 or more.</summary>
    public required ThermalConductance HeatConductance
    {
        get;
        init
        {
            Require.NotNegative(value.WattsPerKelvin, "W/K");
            field = value;
        }
    }

    /// <summary>Voltage at the pack's terminals at which the discharge ends; above 0.</summary>
    public required ElectricPotential CutoffVoltage
    {
        get;
        init
        {
            Require.Positive(value.Volts, "V");
            field = value;
        }
    }

    /// <summary>Current at which the pack's protection ends the discharge; above 0.</summary>
    public required ElectricCurrent MaximumCurrent
    {
        get;
        init
        {
            Require.Positive(value.Amperes, "A");
            field = value;
        }
    }

    /// <summary>Pack temperature at which the discharge ends; above 0 K.</summary>
    public required Temperature MaximumTemperature
    {
        get;
        init
        {
            Require.Positive(value.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>What is left of the capacity, and growth of the resistance. As new if not given.</summary>
    public Age Age
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    } = Age.New;

    /// <summary>Usable part of the capacity over cell temperature, kappa(T). All of it if not given.</summary>
    public UsableCapacity UsableCapacity
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            field = value;
        }
    } = UsableCapacity.Full;

    /// <summary>Share of the charge in the near well, c: the terminals see this part alone. Above 0, up to 1; 1 (one well) if not
    /// given.</summary>
    public double NearShare
    {
        get;
        init
        {
            Require.AboveUpTo(value, 0, 1, "");
            field = value;
        }
    } = 1;

    /// <summary>Time constant of the exchange between the two wells at 25 °C, tauX; above 0. Of no effect where all of the charge
    /// is near.</summary>
    public Duration ExchangeTime
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    } = Kollmeyer2020.ExchangeTime;

    /// <summary>Activation energy of the exchange, EX; 0 or more. Of no effect where all of the charge is near.</summary>
    public MolarEnergy ExchangeActivationEnergy
    {
        get;
        init
        {
            Require.NotNegative(value.JoulesPerMole, "J/mol");
            field = value;
        }
    } = Kollmeyer2020.ExchangeActivationEnergy;

    /// <summary>Least value of the resistance factor in the warm, rhoMin; 0…1. 0 (no floor) if not given.</summary>
    public double ResistanceFloor
    {
        get;
        init
        {
            Require.Within(value, 0, 1, "");
            field = value;
        }
    }
}
