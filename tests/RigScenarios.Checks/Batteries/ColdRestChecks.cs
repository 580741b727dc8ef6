using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>What the cold holds back and a rest gives: the measured cell at -20 °C with the project's NMC defaults.</summary>
[Source(SourceKind.IndependentProgram,
    "the two wells of docs/discharge.md solved by SciPy's DOP853 at 1e-10 for the same cell; figures in whole percent of its "
    + "capacity, worked outside the project")]
public class ColdRestChecks
{
    [Fact]
    public void A_discharge_at_1C_leaves_two_fifths_behind() => Assert.Equal(60, Drawn(First), 0.5);

    // Minutes of rest, the rate of the discharge after it in 1/h, and what that gives.
    [Theory]
    [InlineData(10, 1, 7)]
    [InlineData(60, 1, 13)]
    [InlineData(10, 0.2, 21)]
    public void Rest_brings_charge_back(double minutes, double rate, double percent)
    {
        var rest = Run(First.FinalState, 0, new() { TimeLimit = Duration.FromMinutes(minutes) });
        Assert.Equal(EndCause.TimeLimit, rest.Cause);

        Assert.Equal(percent, Drawn(Run(rest.FinalState, rate, DischargeOptions.Default)), 0.5);
    }

    private static Pack Cell => MeasuredCell.Model.Cell();

    private static DischargeResult First => Run(
        DischargeStart.Full with { Temperature = Temperature.FromDegreesCelsius(-20) }, 1, DischargeOptions.Default);

    private static DischargeResult Run(DischargeStart start, double rate, DischargeOptions options) => Discharge.Run(
        Cell, Temperature.FromDegreesCelsius(-20), start with { DemandOffset = Duration.Zero },
        Demand.OfCurrent(ElectricCurrent.FromAmperes(rate * Cell.Capacity.AmpereHours)), options,
        TestContext.Current.CancellationToken);

    private static double Drawn(DischargeResult run) => 100 * run.Energies.ChargeDrawn / Cell.Capacity;
}
