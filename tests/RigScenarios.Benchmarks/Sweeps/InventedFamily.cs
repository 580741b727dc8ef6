using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks.Sweeps;

/// <summary>1,521 discharges of one invented pack under a repeated demand of four blocks: over 13 temperatures of the air, 9
/// capacities left and 13 scales of the load.</summary>
internal static class InventedFamily
{
    /// <summary>The discharges, temperature fastest, then the capacity.</summary>
    public static IReadOnlyList<BatchScenario> Scenarios { get; } = Make();

    private static BatchScenario[] Make()
    {
        var openCircuit = OpenCircuitVoltage.FromTable(
            [0, 0.02, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
            [2.95, 3.18, 3.34, 3.44, 3.53, 3.59, 3.64, 3.69, 3.78, 3.89, 3.99, 4.08, 4.19]);
        return [.. from load in Enumerable.Range(0, 13)
                   let demand = Blocks(0.5 + (0.125 * load))
                   from left in Enumerable.Range(0, 9)
                   let pack = Pack(openCircuit, 0.6 + (0.05 * left))
                   from air in Enumerable.Range(0, 13)
                   select new BatchScenario
                   {
                       Pack = pack, Ambient = Temperature.FromKelvins(253.15 + (5 * air)), Demand = demand,
                       TimeLimit = Duration.FromHours(48),
                   }];
    }

    private static Demand Blocks(double scale) => new(new[] { (600.0, 32.0), (300.0, 18.0), (120.0, 55.0), (180.0, 8.0) }
        .Select(block => new DemandSegment(Duration.FromSeconds(block.Item1), Power.FromWatts(scale * block.Item2),
            ElectricCurrent.Zero, ElectricConductance.Zero)));

    private static Pack Pack(OpenCircuitVoltage openCircuit, double left) => new()
    {
        SeriesGroups = 4,
        Capacity = ElectricCharge.FromAmpereHours(13.2),
        OpenCircuitVoltage = openCircuit,
        Resistance0 = ElectricResistance.FromOhms(0.022),
        Resistance1 = ElectricResistance.FromOhms(0.01),
        TimeConstant1 = Duration.FromSeconds(20),
        Resistance2 = ElectricResistance.FromOhms(0.008),
        TimeConstant2 = Duration.FromSeconds(600),
        LeadResistance = ElectricResistance.FromOhms(0.015),
        ActivationEnergy = MolarEnergy.FromJoulesPerMole(22000),
        HeatCapacity = Entropy.FromJoulesPerKelvin(950),
        HeatConductance = ThermalConductance.FromWattsPerKelvin(0.5),
        CutoffVoltage = ElectricPotential.FromVolts(12),
        MaximumCurrent = ElectricCurrent.FromAmperes(15),
        MaximumTemperature = Temperature.FromKelvins(333.15),
        Age = new Age(Ratio.FromDecimalFractions(left), 1),
    };
}
