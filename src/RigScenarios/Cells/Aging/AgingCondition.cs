namespace RigScenarios.Cells.Aging;

/// <summary>What the factor of an aging part depends on, in plain numbers; a part reads of it what it needs.</summary>
/// <param name="Kelvin">Temperature of the cell, K.</param>
/// <param name="Charge">Charge at which it is stored, or mean charge of the cycle, 0…1.</param>
/// <param name="Volts">Voltage of the set's own cell there, V.</param>
/// <param name="Depth">Depth of the cycle, 0…1; 0 in storage.</param>
/// <param name="RatePerHour">Current over the capacity, 1/h; 0 in storage.</param>
internal readonly record struct AgingCondition(
    double Kelvin, double Charge, double Volts, double Depth = 0, double RatePerHour = 0)
{
    /// <summary>The condition at a charge.</summary>
    public static AgingCondition AtCharge(double kelvin, double charge, double depth = 0, double ratePerHour = 0) =>
        new(kelvin, charge, AgingCell.VoltsAt(charge), depth, ratePerHour);

    /// <summary>The condition at a voltage of the set's own cell, which is taken as it is.</summary>
    public static AgingCondition AtVolts(double kelvin, double volts, double depth = 0, double ratePerHour = 0) =>
        new(kelvin, AgingCell.ChargeAt(volts), volts, depth, ratePerHour);
}
