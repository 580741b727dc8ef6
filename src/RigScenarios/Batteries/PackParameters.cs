using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>A pack in plain SI numbers (capacity in Ah), for the numeric kernels. Symbols as in docs/discharge.md.</summary>
internal sealed class PackParameters
{
    /// <summary>Molar gas constant, J/(mol·K); exact since the SI of 2019.</summary>
    public const double GasConstant = 8.314462618;

    /// <summary>Reference temperature of capacity and resistance, K.</summary>
    public const double ReferenceTemperature = 298.15;

    public PackParameters(Pack pack)
    {
        Groups = pack.SeriesGroups;
        ChargePerUnit = 3600 * pack.Capacity.AmpereHours * pack.Age.CapacityLeft.DecimalFractions;
        Resistance0 = pack.Resistance0.Ohms * pack.Age.ResistanceFactor;
        Resistance1 = pack.Resistance1.Ohms * pack.Age.ResistanceFactor;
        Resistance2 = pack.Resistance2.Ohms * pack.Age.ResistanceFactor;
        TimeConstant1 = pack.TimeConstant1.Seconds;
        TimeConstant2 = pack.TimeConstant2.Seconds;
        LeadResistance = pack.LeadResistance.Ohms;
        ActivationTemperature = pack.ActivationEnergy.JoulesPerMole / GasConstant;
        HeatCapacity = pack.HeatCapacity.JoulesPerKelvin;
        HeatConductance = pack.HeatConductance.WattsPerKelvin;
        CutoffVoltage = pack.CutoffVoltage.Volts;
        MaximumCurrent = pack.MaximumCurrent.Amperes;
        MaximumTemperature = pack.MaximumTemperature.Kelvins;
        OpenCircuit = pack.OpenCircuitVoltage.Curve;
        NearShare = pack.NearShare;
        LagPerCharge = (1 - NearShare) / NearShare;
        FarPerLag = NearShare / (1 - NearShare);
        ExchangeActivationTemperature = pack.ExchangeActivationEnergy.JoulesPerMole / GasConstant;
        ExchangeLogarithm = (ExchangeActivationTemperature / ReferenceTemperature) - Math.Log(pack.ExchangeTime.Seconds);
        Bands = TemperatureBand.Of(pack.UsableCapacity, pack.ResistanceFloor, ActivationTemperature);
    }

    /// <summary>S.</summary>
    public double Groups { get; }

    /// <summary>3600·Q·aQ: charge in A·s for all of the state of charge, at kappa = 1.</summary>
    public double ChargePerUnit { get; }

    /// <summary>R0·aR, Ω of one group.</summary>
    public double Resistance0 { get; }

    /// <summary>R1·aR, Ω of one group.</summary>
    public double Resistance1 { get; }

    /// <summary>R2·aR, Ω of one group.</summary>
    public double Resistance2 { get; }

    /// <summary>tau1, s.</summary>
    public double TimeConstant1 { get; }

    /// <summary>tau2, s.</summary>
    public double TimeConstant2 { get; }

    /// <summary>Rp, Ω of the pack.</summary>
    public double LeadResistance { get; }

    /// <summary>Ea over the gas constant, K.</summary>
    public double ActivationTemperature { get; }

    /// <summary>Cth, J/K.</summary>
    public double HeatCapacity { get; }

    /// <summary>G, W/K.</summary>
    public double HeatConductance { get; private set; }

    /// <summary>Vcut, V of the pack.</summary>
    public double CutoffVoltage { get; }

    /// <summary>Imax, A.</summary>
    public double MaximumCurrent { get; }

    /// <summary>Tmax, K.</summary>
    public double MaximumTemperature { get; }

    /// <summary>U(z), V of one group.</summary>
    public MonotoneCubic OpenCircuit { get; }

    /// <summary>c, share of the charge in the near well.</summary>
    public double NearShare { get; }

    /// <summary>Whether there is a second well.</summary>
    public bool HasFarWell => NearShare < 1;

    /// <summary>(1 - c)/c: how far the near well lags for each part of the charge that is drawn.</summary>
    public double LagPerCharge { get; }

    /// <summary>c/(1 - c): how far the far well is above the mean for each part that the near one lags behind it.</summary>
    public double FarPerLag { get; }

    /// <summary>EX over the gas constant, K.</summary>
    public double ExchangeActivationTemperature { get; }

    /// <summary>The logarithm of 1/tau(T), in 1/s, without its part in 1/T.</summary>
    public double ExchangeLogarithm { get; }

    /// <summary>Temperature ranges in which kappa is one straight line and the resistance factor one formula, from cold to
    /// warm.</summary>
    public TemperatureBand[] Bands { get; }

    /// <summary>The same pack in a place where its heat conductance is another one.</summary>
    /// <param name="factor">How many times that in still air.</param>
    public PackParameters WithConductance(double factor)
    {
        if (factor == 1)
            return this;
        var other = (PackParameters)MemberwiseClone();
        other.HeatConductance = factor * HeatConductance;
        return other;
    }

    /// <summary>1/tau, how fast the two wells even out, 1/s, at a temperature in K.</summary>
    public double ExchangeRateAt(double kelvin) => Math.Exp(ExchangeLogarithm - (ExchangeActivationTemperature / kelvin));

    /// <summary>rho, how many times their resistance at 25 °C the groups have, at a temperature in K.</summary>
    public double ResistanceFactorAt(double kelvin)
    {
        var band = Bands[Math.Max(0, Array.FindLastIndex(Bands, one => kelvin >= one.From))];
        return double.IsNaN(band.Floor) ? Math.Exp(ActivationTemperature * ((1 / kelvin) - (1 / ReferenceTemperature)))
            : band.Floor;
    }
}
