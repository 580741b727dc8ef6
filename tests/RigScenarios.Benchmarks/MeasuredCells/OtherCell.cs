using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// A cell of another type, of which discharges are published. It is predicted by the project's NMC defaults as one group in still
/// air; from the publication come mass and size, the voltage at which the discharge ends, and the capacity: such that the
/// slowest discharge is met.
/// </summary>
/// <param name="name">What it is, without a maker's name.</param>
/// <param name="grams">Mass, g.</param>
/// <param name="diameter">Diameter, mm; its box is that square.</param>
/// <param name="length">Length, mm.</param>
/// <param name="slowAmperes">Current of the slowest discharge, A.</param>
/// <param name="slowCelsius">Temperature of the air in it, °C.</param>
/// <param name="slowAmpereHours">Charge that it gave down to 2.5 V, Ah.</param>
internal sealed class OtherCell(
    string name, double grams, double diameter, double length, double slowAmperes, double slowCelsius, double slowAmpereHours)
{
    private readonly double ampereHours = CapacityFor(grams, diameter, length, slowAmperes, slowCelsius, slowAmpereHours);

    /// <summary>What it is, without a maker's name.</summary>
    public string Name { get; } = name;

    /// <summary>Current of the slowest discharge, A.</summary>
    public double SlowAmperes { get; } = slowAmperes;

    /// <summary>The discharge of the new cell at a steady current in air of a temperature.</summary>
    /// <param name="amperes">Current, A.</param>
    /// <param name="celsius">Temperature of the air and of the cell at the start, °C.</param>
    /// <param name="wattsPerKelvin">Heat conductance to the air, W/K; that of the box in still air if null.</param>
    public DischargeResult Run(double amperes, double celsius, double? wattsPerKelvin = null) =>
        Run(Pack(ampereHours, grams, diameter, length, wattsPerKelvin), amperes, celsius);

    // The charge down to 2.5 V is nearly the capacity, so this settles at once.
    private static double CapacityFor(double grams, double diameter, double length, double amperes, double celsius, double given)
    {
        var capacity = given;
        for (var i = 0; i < 5; i++)
        {
            capacity *= given
                / Run(Pack(capacity, grams, diameter, length, null), amperes, celsius).Energies.ChargeDrawn.AmpereHours;
        }

        return capacity;
    }

    private static DischargeResult Run(Pack pack, double amperes, double celsius) => Discharge.Run(
        pack, Temperature.FromDegreesCelsius(celsius), DischargeStart.Full,
        Demand.OfCurrent(ElectricCurrent.FromAmperes(amperes)), new DischargeOptions { SeriesPoints = 0 });

    private static Pack Pack(double capacity, double grams, double diameter, double length, double? wattsPerKelvin) =>
        PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(3.6 * capacity),
            Voltage = ElectricPotential.FromVolts(3.6),
            Chemistry = "nmc",
            LeadResistance = ElectricResistance.Zero,
            CutoffVoltage = ElectricPotential.FromVolts(2.5),
            MaximumCurrent = ElectricCurrent.FromAmperes(20),
            MaximumTemperature = Temperature.FromDegreesCelsius(75),
            HeatConductance = wattsPerKelvin is { } given ? ThermalConductance.FromWattsPerKelvin(given) : null,
        },
        Mass.FromGrams(grams),
        new BoxSize(Length.FromMillimeters(diameter), Length.FromMillimeters(diameter), Length.FromMillimeters(length)),
        Age.New).Pack;
}
