using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Batteries.Batch;

/// <summary>Drawn scenarios for batches: batteries by their label of both chemistries, with one well and with two.</summary>
internal static class DrawnScenarios
{
    private static readonly Gen<Battery> Batteries = Gen.Select(
        Gen.Double[20, 300], Gen.OneOf(Gen.Const("nmc"), Gen.Const("lfp")), Gen.Int[1, 8],
        (wattHours, chemistry, groups) => new Battery
        {
            Energy = Energy.FromWattHours(wattHours),
            Voltage = groups * CellChemistries.Find(chemistry).NominalVoltage.Value,
            Chemistry = chemistry,
        });

    /// <summary>One of them.</summary>
    public static Gen<BatchScenario> Any { get; } = Gen.Select(
        Batteries, Gen.Double[0.6, 1], Gen.Bool, Gen.Double[-20, 40], Gen.Double[0.05, 1.5].Array[1, 5], Gen.Double[60, 2000],
        (battery, left, wells, celsius, rates, seconds) =>
        {
            var pack = PackModel.From(battery, null, null, new Age(Ratio.FromDecimalFractions(left), 1.5 - (0.5 * left))).Pack;
            var energy = pack.Capacity.AmpereHours * pack.SeriesGroups * 3.4;
            return new BatchScenario
            {
                Pack = wells ? pack : pack with { NearShare = 1 },
                Ambient = Temperature.FromDegreesCelsius(celsius),
                Demand = new Demand(rates.Select((rate, i) => Packs.Watts(Math.Round(seconds * (1 + (0.3 * i))), rate * energy))),
                TimeLimit = Duration.FromHours(48),
            };
        });

    /// <summary>How the single run ends with resistances and capacity changed by a part.</summary>
    public static DischargeResult Single(this BatchScenario one, double part = 0) => Discharge.Run(
        one.Pack with
        {
            Capacity = one.Pack.Capacity * (1 - part),
            Resistance0 = one.Pack.Resistance0 * (1 + part),
            Resistance1 = one.Pack.Resistance1 * (1 + part),
            Resistance2 = one.Pack.Resistance2 * (1 + part),
            LeadResistance = one.Pack.LeadResistance * (1 + part),
        },
        one.Ambient, one.Start, one.Demand, new DischargeOptions { TimeLimit = one.TimeLimit, SeriesPoints = 0 },
        TestContext.Current.CancellationToken);
}
