using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Checks.Wiring;

/// <summary>What a regulator loses: own draw + a·I + b·I², against a worked figure and against measurements.</summary>
public class RegulatorLossChecks
{
    /// <summary>
    /// At 12 V in, 3.3 V and 2 A out: 0.48 W in the switch's resistance (0.4 Ω · 4 A² · 0.3), 0.42 W of switching (12 V · 2 A ·
    /// 70 ns · 250 kHz) and 0.03 W of its own (12 V · 2.5 mA) = 0.93 W. The same as a loss form: own draw 0.03 W, 0.21 W/A,
    /// 0.12 Ω.
    /// </summary>
    [Fact]
    [Source(SourceKind.DataSheet, "STMicroelectronics, A5973D monolithic buck regulator, thermal considerations; read")]
    public void Loss_form_gives_the_worked_loss_of_the_data_sheet()
    {
        var point = At(12, 2, Regulator(3.3, 0.03, 0.21, 0.12));

        Assert.Equal(0.93, (double)point.Elements["regulator"].Loss.Watts, 1e-9);
        Assert.Equal((6.6 + 0.93) / 12, point.Current.Amperes, 1e-9);
    }

    /// <summary>
    /// A step-down regulator of 5.00 V in, measured at nine loads; its input current to 1 mA. The loss form goes through the
    /// first, the fifth and the ninth (own draw 11.35 mW, a = 65.57 mV, b = 0.4729 Ω, solved by hand from the three); the six
    /// between are those that can fail. The output voltage is the measured one of each row.
    /// </summary>
    [Theory]
    [Source(SourceKind.OpenData,
        "Test of MT3410 power supply, board rev. 2, a public hardware repository, table of measures; read")]
    [InlineData(106, 3.32, 150.1)]
    [InlineData(141, 3.31, 198.9)]
    [InlineData(179, 3.32, 251.8)]
    [InlineData(249, 3.31, 349.3)]
    [InlineData(289, 3.30, 403.4)]
    [InlineData(324, 3.29, 449.5)]
    public void Loss_form_through_three_loads_gives_the_input_current_of_six_others(double milliamperesIn, double volts,
        double milliamperesOut)
    {
        var point = At(5, milliamperesOut / 1000, Regulator(volts, 0.011354645, 0.065568409, 0.472889372));

        Assert.Equal(milliamperesIn, point.Current.Milliamperes, 1.0);
    }

    private static Regulator Regulator(double volts, double ownWatts, double lossVolts, double lossOhms) =>
        new("regulator", null, ElectricPotential.FromVolts(volts))
        {
            OwnDraw = Power.FromWatts(ownWatts),
            LossPerAmpere = ElectricPotential.FromVolts(lossVolts),
            LossResistance = ElectricResistance.FromOhms(lossOhms),
        };

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
