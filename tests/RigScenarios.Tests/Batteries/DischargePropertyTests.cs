using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>What must hold for any pack and load.</summary>
public class DischargePropertyTests
{
    private const int Runs = 150;

    // Some of the cases are badly conditioned: a flat voltage that only just misses the cut-off for a while.
    private static readonly DischargeOptions Exact = new() { RelativeTolerance = 1e-9 };

    private static readonly Gen<Battery> Batteries = Gen.Select(
        Gen.Double[20, 300], Gen.OneOf(Gen.Const("nmc"), Gen.Const("lfp")), Gen.Int[1, 8],
        (wattHours, chemistry, groups) => new Battery
        {
            Energy = Energy.FromWattHours(wattHours),
            Voltage = groups * CellChemistries.Find(chemistry).NominalVoltage.Value,
            Chemistry = chemistry,
            MaximumCurrent = ElectricCurrent.FromAmperes(1000),
            MaximumTemperature = Temperature.FromDegreesCelsius(150),
        });

    private static readonly Gen<Pack> AnyPack = Gen.Select(
        Batteries, Gen.Double[0.6, 1], Gen.Double[1, 2],
        (battery, left, growth) => PackModel.From(battery, null, null, new Age(Ratio.FromDecimalFractions(left), growth)).Pack);

    // Loads that last from a quarter of an hour to some twenty hours.
    private static readonly Gen<(Pack Pack, double Celsius, double[] Rates)> AnyCase =
        Gen.Select(AnyPack, Gen.Double[-20, 40], Gen.Double[0.05, 2].Array[1, 5]);

    [Fact]
    public void More_capacity_never_shortens_the_run()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var demand = Constant(one.Pack, one.Rates[0]);
                var before = one.Pack.Run(one.Celsius, demand).EndTime.Seconds;
                if (before == 0)
                    return;
                looked.One();
                var larger = one.Pack with { Capacity = 1.07 * one.Pack.Capacity };
                Assert.True(larger.Run(one.Celsius, demand).EndTime.Seconds >= before * (1 - 1e-9));
            },
            cases: Runs, atLeast: 110);
    }

    [Fact]
    public void More_load_never_lengthens_the_run()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var before = one.Pack.Run(one.Celsius, Constant(one.Pack, one.Rates[0])).EndTime;
                Assert.True(one.Pack.Run(one.Celsius, Constant(one.Pack, 1.05 * one.Rates[0])).EndTime <= before);
                if (before.Seconds > 0)
                    looked.One();
            },
            cases: Runs, atLeast: 110);
    }

    // A pack that keeps the temperature of the air: one that warms itself may overtake a warmer one.
    [Fact]
    public void Colder_never_lengthens_the_run_at_constant_power()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var pack = one.Pack with { HeatConductance = ThermalConductance.FromWattsPerKelvin(1e4) };
                var demand = Constant(pack, one.Rates[0]);
                var warm = pack.Run(one.Celsius, demand).EndTime;
                Assert.True(pack.Run(one.Celsius - 5, demand).EndTime <= warm);
                if (warm.Seconds > 0)
                    looked.One();
            },
            cases: Runs, atLeast: 110);
    }

    [Fact]
    public void Run_in_two_parts_ends_as_in_one()
    {
        Gen.Select(AnyCase, Gen.Double[0.01, 0.99]).Holds(
            (one, part, looked) =>
            {
                var demand = Blocks(one.Pack, one.Rates);
                var whole = one.Pack.Run(one.Celsius, demand, options: Exact);
                if (whole.EndTime.Seconds == 0)
                    return;
                looked.One();
                var first = one.Pack.Run(one.Celsius, demand, options: Exact with { TimeLimit = part * whole.EndTime });
                var second = one.Pack.Run(one.Celsius, demand, first.FinalState, Exact);
                Assert.Equal(EndCause.TimeLimit, first.Cause);
                Assert.Equal(whole.Cause, second.Cause);
                Assert.Equal(whole.EndTime.Seconds, (first.EndTime + second.EndTime).Seconds, 1e-6 * whole.EndTime.Seconds);

                // A segment that ends with the time limit counts in neither part.
                Assert.InRange(whole.SegmentsFinished - first.SegmentsFinished - second.SegmentsFinished, 0, 1);
                Assert.Equal(whole.EndTemperature.Kelvins, second.EndTemperature.Kelvins, 1e-4);
            },
            cases: Runs, atLeast: 110);
    }

    [Fact]
    public void Writing_the_demand_out_twice_or_in_halves_changes_nothing()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var demand = Blocks(one.Pack, one.Rates);
                var halves = new Demand(demand.Segments.Concat(demand.Segments).SelectMany(segment =>
                {
                    var half = segment with { Length = segment.Length / 2 };
                    return new[] { half, half };
                }));
                var expected = one.Pack.Run(one.Celsius, demand, options: Exact);
                var result = one.Pack.Run(one.Celsius, halves, options: Exact);
                Assert.Equal(expected.Cause, result.Cause);
                Assert.Equal(expected.EndTime.Seconds, result.EndTime.Seconds, 1e-6 * expected.EndTime.Seconds);
                if (expected.SegmentsFinished > 0)
                    looked.One();
            },
            cases: Runs, atLeast: 105);
    }

    [Fact]
    public void Energy_is_delivered_or_heat()
    {
        AnyCase.Holds(
            (one, looked) =>
            {
                var energies = one.Pack.Run(one.Celsius, Blocks(one.Pack, one.Rates)).Energies;
                Assert.True(Math.Abs(energies.Imbalance.Joules) <= 1e-6 * energies.Chemical.Joules);
                if (energies.Chemical.Joules > 0)
                    looked.One();
            },
            cases: Runs, atLeast: 110);
    }

    // A rate of 1 empties the pack's nominal energy in an hour.
    private static double Watts(Pack pack, double rate) => rate * pack.Capacity.AmpereHours * 3.5 * pack.SeriesGroups;

    private static Demand Constant(Pack pack, double rate) => Demand.OfPower(Power.FromWatts(Watts(pack, rate)));

    private static Demand Blocks(Pack pack, double[] rates) => new(rates.Select((rate, i) => new DemandSegment(
        Duration.FromSeconds(50 + (170 * i)),
        Power.FromWatts(0.8 * Watts(pack, rate)),
        ElectricCurrent.FromAmperes(0.1 * rate * pack.Capacity.AmpereHours),
        ElectricConductance.FromSiemens(0.1 * rate * pack.Capacity.AmpereHours / (3.5 * pack.SeriesGroups)))));
}
