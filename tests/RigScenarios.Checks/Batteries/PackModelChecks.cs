using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>Heat capacity and heat conductance that the project assumes of a battery, against published ones of cells.</summary>
public class PackModelChecks
{
    // J/(kg·K) over the project's one value for all; the published ones differ by more than a third among themselves.
    [Theory]
    [Source(SourceKind.Handbook,
        "batterydesign.net, specific heat capacity of cells: an 18650 of NCA at half charge 835, NMC 1040, LFP "
        + "1130 J/(kg·K); read on the page")]
    [InlineData(835, 19.8)]
    [InlineData(1040, -3.8)]
    [InlineData(1130, -11.5)]
    public void Heat_capacity_is_off_by_what_is_stated(double joulesPerKilogramKelvin, double percent) =>
        StatedError.Holds(Cell().HeatCapacity.JoulesPerKelvin, 0.046 * joulesPerKilogramKelvin, percent, 0.2);

    [Fact]
    [Source(SourceKind.IndependentProgram, "simses, TUM, cell data: 26650 of LFP 1001 J/(kg·K); read in its code")]
    public void Heat_capacity_is_that_of_a_simulated_cell() =>
        StatedError.Holds(Cell().HeatCapacity.JoulesPerKelvin, 0.046 * 1001, -0.1, 0.05);

    // 10 W/(m²·K) on 5.31e-3 m² of a round 21700. The project takes the box around it, which is larger: a battery is a box.
    [Fact]
    [Source(SourceKind.IndependentProgram,
        "PyBaMM, parameter set Chen2020: 21700, cooling surface 5.31e-3 m², 10 W/(m²·K); read in its code")]
    public void Heat_conductance_of_a_round_cell_is_too_much_by_its_box() => StatedError.Holds(
        Cell(21, 70).HeatConductance.WattsPerKelvin, 0.0531, 27.4, 0.5);

    private static Pack Cell(double diameter = 18, double length = 65) => PackModel.From(
        new Battery { Energy = Energy.FromWattHours(10.8), Voltage = ElectricPotential.FromVolts(3.6) },
        Mass.FromGrams(46),
        new BoxSize(Length.FromMillimeters(diameter), Length.FromMillimeters(diameter), Length.FromMillimeters(length)),
        null).Pack;
}
