using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>
/// One discharge of a batch in plain numbers, so that a million of them need no objects: curves and demand are shared. Symbols as
/// in docs/discharge.md. Nothing is checked here; the ranges are those of <see cref="Pack"/> and <see cref="DischargeStart"/>.
/// </summary>
[StructLayout(LayoutKind.Auto)]
internal struct BatchCase
{
    /// <summary>U(z) and kappa(T).</summary>
    public BatchCurves Curves;

    /// <summary>The demand before its scale.</summary>
    public BatchDemand Demand;

    /// <summary>Factor on all three parts of the demand; 0 or more.</summary>
    public double DemandScale;

    /// <summary>Where in the demand it begins, s from the start of its first segment; 0 or more.</summary>
    public double DemandOffset;

    /// <summary>Time after which it ends, s; above 0.</summary>
    public double TimeLimit;

    /// <summary>Tamb, K.</summary>
    public double AmbientKelvin;

    /// <summary>S.</summary>
    public double Groups;

    /// <summary>3600·Q·aQ, A·s.</summary>
    public double ChargePerUnit;

    /// <summary>R0·aR, Ω of one group.</summary>
    public double Resistance0;

    /// <summary>R1·aR, Ω of one group.</summary>
    public double Resistance1;

    /// <summary>R2·aR, Ω of one group.</summary>
    public double Resistance2;

    /// <summary>tau1, s.</summary>
    public double TimeConstant1;

    /// <summary>tau2, s.</summary>
    public double TimeConstant2;

    /// <summary>Rp, Ω of the pack.</summary>
    public double LeadResistance;

    /// <summary>Ea over the gas constant, K.</summary>
    public double ActivationTemperature;

    /// <summary>rhoMin; 0 for none.</summary>
    public double ResistanceFloor;

    /// <summary>Cth, J/K.</summary>
    public double HeatCapacity;

    /// <summary>G, W/K.</summary>
    public double HeatConductance;

    /// <summary>Vcut, V of the pack.</summary>
    public double CutoffVoltage;

    /// <summary>Imax, A.</summary>
    public double MaximumCurrent;

    /// <summary>Tmax, K.</summary>
    public double MaximumKelvin;

    /// <summary>c; 1 for one well.</summary>
    public double NearShare;

    /// <summary>tauX, s; of no effect with one well.</summary>
    public double ExchangeTime;

    /// <summary>EX over the gas constant, K; of no effect with one well.</summary>
    public double ExchangeActivationTemperature;

    /// <summary>z at the start.</summary>
    public double Charge;

    /// <summary>w at the start; of no effect with one well.</summary>
    public double Lag;

    /// <summary>v1 at the start, V of one group.</summary>
    public double Voltage1;

    /// <summary>v2 at the start, V of one group.</summary>
    public double Voltage2;

    /// <summary>T at the start, K.</summary>
    public double Kelvin;

    /// <summary>A pack, the air around it and its state, without curves, demand and time limit, which may be shared.</summary>
    public static BatchCase Of(Pack pack, double ambientKelvin, DischargeStart start)
    {
        var state = start.State(ambientKelvin);
        return new BatchCase
        {
            Curves = null!,
            Demand = null!,
            DemandScale = 1,
            DemandOffset = start.DemandOffset.Seconds,
            TimeLimit = DischargeOptions.LongestRun.Seconds,
            AmbientKelvin = ambientKelvin,
            Groups = pack.SeriesGroups,
            ChargePerUnit = 3600 * pack.Capacity.AmpereHours * pack.Age.CapacityLeft.DecimalFractions,
            Resistance0 = pack.Resistance0.Ohms * pack.Age.ResistanceFactor,
            Resistance1 = pack.Resistance1.Ohms * pack.Age.ResistanceFactor,
            Resistance2 = pack.Resistance2.Ohms * pack.Age.ResistanceFactor,
            TimeConstant1 = pack.TimeConstant1.Seconds,
            TimeConstant2 = pack.TimeConstant2.Seconds,
            LeadResistance = pack.LeadResistance.Ohms,
            ActivationTemperature = pack.ActivationEnergy.JoulesPerMole / PackParameters.GasConstant,
            ResistanceFloor = pack.ResistanceFloor,
            HeatCapacity = pack.HeatCapacity.JoulesPerKelvin,
            HeatConductance = pack.HeatConductance.WattsPerKelvin,
            CutoffVoltage = pack.CutoffVoltage.Volts,
            MaximumCurrent = pack.MaximumCurrent.Amperes,
            MaximumKelvin = pack.MaximumTemperature.Kelvins,
            NearShare = pack.NearShare,
            ExchangeTime = pack.ExchangeTime.Seconds,
            ExchangeActivationTemperature = pack.ExchangeActivationEnergy.JoulesPerMole / PackParameters.GasConstant,
            Charge = state.Charge,
            Lag = pack.NearShare < 1 ? state.Lag : 0,
            Voltage1 = state.Voltage1,
            Voltage2 = state.Voltage2,
            Kelvin = state.Kelvin,
        };
    }
}
