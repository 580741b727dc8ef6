using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>
/// The charge against a measured one of one cell: P. Kollmeyer, C. Vidal, M. Naguib, M. Skells (2020), doi:10.17632/cp3473x7xv.3,
/// CC BY
/// 4.0: 3.0 A to 4.2 V, ended at 50 mA, 23.8 °C, after a discharge at 1C. Its figures: voltage held from 43 to 44 min on, 87.6
/// min in all; 50 % after
/// 27.0 min, 70 % after 38.0, 90 % after 52.0, 95 % after 58.0; 2.732 Ah and 10.65 Wh in, 2.726 Ah out.
/// </summary>
public class MeasuredChargeChecks
{
    private static readonly Pack Cell = PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(10),
            Voltage = ElectricPotential.FromVolts(3.6),
            SeriesGroups = 1,
            Capacity = ElectricCharge.FromAmpereHours(2.781),
            LeadResistance = ElectricResistance.Zero,
            HeatCapacity = Entropy.FromJoulesPerKelvin(47),
            HeatConductance = ThermalConductance.FromWattsPerKelvin(0.37),
        },
        null, null, null).Pack;

    // A discharge at 1C ends at 2.8 V with some charge left in the cell.
    private static readonly ChargeResult Charge = ChargeRun.Run(
        Cell,
        Temperature.FromDegreesCelsius(23.8),
        new DischargeStart { StateOfCharge = Ratio.FromDecimalFractions(1 - (2.726 / 2.781)) },
        new ChargeSetting(ElectricCurrent.FromAmperes(3.0)) { Termination = ElectricCurrent.FromMilliamperes(50) });

    [Theory]
    [InlineData(0.50, 27.0, 0.02)]
    [InlineData(0.70, 38.0, 0.02)]
    [InlineData(0.90, 52.0, 0.05)]
    [InlineData(0.95, 58.0, 0.08)]
    public void The_charge_goes_in_as_measured(double part, double minutes, double tolerance) =>
        Assert.InRange(MinutesTo(part) / minutes, 1 - tolerance, 1 + tolerance);

    [Fact]
    public void The_voltage_is_held_from_then_on_and_the_last_few_percent_take_less_time_than_measured()
    {
        Assert.Equal(ChargeEnd.Full, Charge.End);
        Assert.InRange(Charge.VoltageHeldFrom.Minutes, 43, 46);

        // The circuit has no slow diffusion beyond its second pair: the current falls faster in the end, and the charge is over
        // 11 % early.
        Assert.InRange(Charge.EndTime.Minutes / 87.6, 0.88, 1.0);
    }

    [Fact]
    public void Charge_and_energy_are_those_measured()
    {
        Assert.InRange(Charge.ChargeIn.AmpereHours / 2.732, 0.99, 1.01);
        Assert.InRange(Charge.EnergyIn.WattHours / 10.65, 0.98, 1.02);
    }

    [Fact]
    public void Energy_in_is_energy_stored_and_heat() =>
        Assert.Equal(Charge.EnergyIn.Joules, Charge.Stored.Joules + Charge.Heat.Joules, 1e-3);

    private static double MinutesTo(double part) => Charge.Series.First(point =>
        point.StateOfCharge.DecimalFractions - Charge.Series[0].StateOfCharge.DecimalFractions >= part * (Charge.FinalState.StateOfCharge.DecimalFractions - Charge.Series[0].StateOfCharge.DecimalFractions)).Time.Minutes;
}
