using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>What a regulator loses, against worked figures of data sheets.</summary>
public class RegulatorLossChecks
{
    /// <summary>
    /// A monolithic buck regulator at 12 V in, 3.3 V and 2 A out: 0.48 W in the switch's resistance (0.4 Ω · 4 A² · 0.3), 0.42 W
    /// of switching (12 V · 2 A · 70 ns ·
    /// 250 kHz) and 0.03 W of its own (12 V · 2.5 mA) = 0.93 W: STMicroelectronics, A5973D data sheet, thermal considerations
    /// [read]. The same
    /// as a loss form: own draw 0.03 W, 0.21 W/A, 0.12 Ω.
    /// </summary>
    [Fact]
    public void Loss_form_gives_the_worked_loss_of_the_data_sheet()
    {
        var point = At(12, 2, new Regulator("regulator", null, ElectricPotential.FromVolts(3.3))
        {
            OwnDraw = Power.FromWatts(0.03),
            LossPerAmpere = ElectricPotential.FromVolts(0.21),
            LossResistance = ElectricResistance.FromOhms(0.12),
        });

        Assert.Equal(0.93, (double)point.Elements["regulator"].Loss.Watts, 1e-9);
        Assert.Equal((6.6 + 0.93) / 12, point.Current.Amperes, 1e-9);
    }

    /// <summary>
    /// A synchronous 5 V, 10 A regulator from 12 V: 97 % at half, 95 % at full load are its design targets: Texas Instruments,
    /// LM25148 data sheet SNVSC05 [read].
    /// The loss form through both (a = 0) is own draw 0.153 W and 24.8 mΩ [computed].
    /// </summary>
    [Theory]
    [InlineData(5, 0.97)]
    [InlineData(10, 0.95)]
    public void Loss_form_gives_the_efficiencies_of_the_design(double amperes, double efficiency)
    {
        var point = At(12, amperes, new Regulator("regulator", null, ElectricPotential.FromVolts(5))
        {
            OwnDraw = Power.FromWatts(0.153),
            LossResistance = ElectricResistance.FromMilliohms(24.8),
        });

        Assert.Equal(efficiency, 5 * amperes / (double)point.Power.Watts, 5e-4);
    }

    private static OperatingPoint At(double volts, double amperes, Regulator regulator)
    {
        var network = new WiringNetwork(
        [
            regulator,
            new Device("device", regulator.Name,
                new([new("on", new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes(amperes) })])),
        ]);
        return network.TrySolve(ElectricPotential.FromVolts(volts), new OrderedMap<string>([new("device", "on")]))!;
    }
}
