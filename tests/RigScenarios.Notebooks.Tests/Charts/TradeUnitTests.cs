using RigScenarios.Charts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Notebooks.Tests.Charts;

public sealed class TradeUnitTests
{
    public static TheoryData<string, IQuantity> Texts => new()
    {
        { "42 W", Power.FromKilowatts(0.042) },
        { "98 Wh", Energy.FromKilojoules(352.8) },
        { "14.4 V", ElectricPotential.FromMillivolts(14400) },
        { "35 mΩ", ElectricResistance.FromOhms(0.035) },
        { "1.2 Ω", ElectricResistance.FromOhms(1.2) },
        { "6.8 Ah", ElectricCharge.FromMilliampereHours(6800) },
        { "850 g", Mass.FromKilograms(0.85) },
        { "5.4 kg", Mass.FromGrams(5400) },
        { "180 mm", Length.FromMeters(0.18) },
        { "6.25 N·m", Torque.FromNewtonCentimeters(625) },
        { "−8 °C", Temperature.FromKelvins(265.15) },
        { "12.5°", Angle.FromDegrees(12.5) },
        { "80 %", Ratio.FromDecimalFractions(0.8) },
        { "7 h 40 min", Duration.FromHours(7.6667) },
        { "3 h 00 min", Duration.FromMinutes(179.8) },
        { "12 min", Duration.FromSeconds(725) },
        { "2 min 05 s", Duration.FromSeconds(125) },
        { "1 min 00 s", Duration.FromSeconds(59.99) },
        { "0.8 s", Duration.FromSeconds(0.8) },
    };

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void Quantities_are_written_as_the_trade_writes_them(string expected, IQuantity quantity) =>
        Assert.Equal(expected, TradeUnits.Text(quantity));

    [Fact]
    public void An_axis_converts_to_its_unit()
    {
        var axis = ChartAxis.Of("time since start", DurationUnit.Hour);
        Assert.Equal("time since start (h)", axis.Label);
        Assert.Equal(1.5, axis.Value(Duration.FromMinutes(90)));
        Assert.Throws<InvalidOperationException>(() => new ChartAxis("load", "W").Value(Power.FromWatts(3)));
    }
}
