using RigScenarios.Batteries;
using RigScenarios.Days;

namespace RigScenarios.Simulation;

/// <summary>What a charger does with a battery.</summary>
/// <param name="Limits">The limits in plain numbers.</param>
/// <param name="Window">The temperatures in which it is charged.</param>
/// <param name="Air">Temperature of the air there.</param>
/// <param name="WallEfficiency">Power into the battery over power from the wall.</param>
/// <param name="Until">When the power goes, s.</param>
/// <param name="UpTo">The state of charge at which somebody wants to know.</param>
internal sealed record ChargeOrder(ChargerLimits Limits, ChargeWindow Window, AirTemperature Air, double WallEfficiency,
    double Until, double UpTo);

/// <summary>The account of one battery: A·s and J; self-discharge as part of the capacity.</summary>
internal sealed class BatteryLedger
{
    public double ChargeOut { get; private set; }

    public double ChargeIn { get; private set; }

    public double EnergyOut { get; private set; }

    public double EnergyIn { get; private set; }

    public double FromWall { get; private set; }

    public double Heat { get; private set; }

    /// <summary>Change of the energy stored in the cells by charge and discharge, at their open-circuit voltage.</summary>
    public double Stored { get; private set; }

    public double SelfDischarge { get; set; }

    public void AddDischarge(EnergyAccount account)
    {
        ChargeOut += account.ChargeDrawn.Coulombs;
        EnergyOut += account.Delivered.Joules;
        Heat += account.Heat.Joules;
        Stored -= account.Chemical.Joules;
    }

    public void AddCharge(ChargeResult run, double wallEfficiency)
    {
        ChargeIn += run.ChargeIn.Coulombs;
        EnergyIn += run.EnergyIn.Joules;
        FromWall += run.EnergyIn.Joules / wallEfficiency;
        Heat += run.Heat.Joules;
        Stored += run.Stored.Joules;
    }
}
