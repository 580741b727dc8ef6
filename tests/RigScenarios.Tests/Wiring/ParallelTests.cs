using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Tests.Batteries;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Wiring;

/// <summary>Packs in parallel through diodes.</summary>
public sealed class ParallelTests
{
    private static readonly Pack One = Packs.Default;

    // Two equal packs as one: twice the capacity and heat, half of each resistance.
    private static readonly Pack Twice = One with
    {
        Capacity = 2 * One.Capacity, Resistance0 = One.Resistance0 / 2, Resistance1 = One.Resistance1 / 2, Resistance2 = One.Resistance2 / 2,
        LeadResistance = One.LeadResistance / 2, HeatCapacity = 2 * One.HeatCapacity,
        HeatConductance = ThermalConductance.FromWattsPerKelvin(2 * One.HeatConductance.WattsPerKelvin), MaximumCurrent = 2 * One.MaximumCurrent,
    };

    [Theory]
    [InlineData(25, 0.0)]
    [InlineData(-5, 30.0)]
    public void Two_equal_packs_are_one_of_twice_the_size(double celsius, double milliohms)
    {
        var network = Network(minimum: 12, milliohms);
        var ambient = Temperature.FromDegreesCelsius(celsius);
        var pair = ParallelRun.Run(network, On, [new(One, DischargeStart.Full), new(One, DischargeStart.Full)], ambient, Duration.FromHours(20), TestContext.Current.CancellationToken);
        var single = WiringRun.Run(network, Twice, ambient, DischargeStart.Full, [new WiringBlock(Duration.FromHours(20), On)], DischargeOptions.Default, TestContext.Current.CancellationToken);
        Assert.Equal("camera", pair.EndedBy);
        Assert.Equal("camera", single.EndedBy);
        Assert.Equal(single.EndTime.Seconds, pair.EndTime.Seconds, 0.02);
        Assert.All(pair.Sources, source => Assert.Equal(single.FinalState.StateOfCharge.DecimalFractions, source.FinalState.StateOfCharge.DecimalFractions, 1e-5));
    }

    [Fact]
    public void The_fuller_pack_carries_alone_until_the_other_joins()
    {
        var half = new DischargeStart { StateOfCharge = Ratio.FromPercent(50) };
        var run = ParallelRun.Run(Network(12, 30), On, [new(One, DischargeStart.Full), new(One, half)], Temperature.FromDegreesCelsius(20), Duration.FromHours(20), TestContext.Current.CancellationToken);
        Assert.Equal(0, run.Series[0].Currents[1].Amperes);
        Assert.True(run.Series[^1].Currents[1].Amperes > 0.5);
        Assert.All(run.Series, point => Assert.All(point.Currents, current => Assert.True(current.Amperes >= 0)));

        // It takes over gradually: the charges come nearer and nearer.
        var gaps = run.Series.Select(point => (point.Charges[0] - point.Charges[1]).DecimalFractions).ToList();
        Assert.True(gaps[^1] < 0.05);
        Assert.All(gaps.Zip(gaps.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1e-6));
    }

    [Fact]
    public void A_drop_costs_what_it_says_and_charge_is_conserved()
    {
        var drop = ElectricPotential.FromVolts(0.4);
        var plain = One with { UsableCapacity = RigScenarios.Cells.UsableCapacity.Full };
        ParallelSource[] sources = [new(plain, DischargeStart.Full) { ForwardDrop = drop }, new(plain, new DischargeStart { StateOfCharge = Ratio.FromPercent(70) }) { ForwardDrop = drop }];
        var run = ParallelRun.Run(Network(12, 30), On, sources, Temperature.FromDegreesCelsius(20), Duration.FromHours(20), TestContext.Current.CancellationToken);
        var charge = run.Sources.Sum(source => source.ChargeOut.Coulombs);
        Assert.Equal(0.4 * charge, run.Sources.Sum(source => source.Delivered.Joules) - run.Delivered.Joules, 1);
        foreach (var (source, end) in sources.Zip(run.Sources))
        {
            var spent = source.Start.StateOfCharge.DecimalFractions - end.FinalState.StateOfCharge.DecimalFractions;
            Assert.Equal(spent * plain.Capacity.Coulombs, end.ChargeOut.Coulombs, 0.01);
        }
        var ideal = ParallelRun.Run(Network(12, 30), On, [.. sources.Select(source => source with { ForwardDrop = ElectricPotential.Zero })], Temperature.FromDegreesCelsius(20), Duration.FromHours(20), TestContext.Current.CancellationToken);
        Assert.True(ideal.EndTime > run.EndTime);
    }

    [Fact]
    public void A_pack_that_ends_leaves_the_other_to_go_on()
    {
        var weak = One with { CutoffVoltage = ElectricPotential.FromVolts(14.5) };
        var run = ParallelRun.Run(Network(12, 0), On, [new(weak, DischargeStart.Full), new(One, DischargeStart.Full)], Temperature.FromDegreesCelsius(20), Duration.FromHours(20), TestContext.Current.CancellationToken);
        Assert.Equal(EndCause.VoltageCutoff, run.Sources[0].Cause);
        Assert.True(run.Sources[0].Ended < run.EndTime);
        Assert.Null(run.Sources[1].Cause);
        Assert.Equal("camera", run.EndedBy);
    }

    private static OrderedMap<string> On => new([new("camera", "on")]);

    private static WiringNetwork Network(double minimum, double milliohms)
    {
        var device = new Device("camera", "cable", new([new("on", DeviceDraw.OfPower(Power.FromWatts(35)))])) { MinimumVoltage = ElectricPotential.FromVolts(minimum), Essential = true };
        return new WiringNetwork([new Wire("cable", null, ElectricResistance.FromMilliohms(milliohms)), device]);
    }
}
