using RigScenarios.Parts;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Checks.Travel;

/// <summary>
/// Wh = nominal V × rated Ah, and the marked figure goes first: Federal Aviation Administration, "Airline passengers and
/// batteries" (read), and two
/// makers' and press pages that state the relation (read). The products were computed by hand; the classes follow from 100 Wh and
/// 160 Wh, both "not more than".
/// </summary>
public class WattHourChecks
{
    [Theory]
    [InlineData(14.4, 6.8, 97.92, BaggageKind.SmallSpare)]
    [InlineData(14.4, 6.944, 99.9936, BaggageKind.SmallSpare)]
    [InlineData(14.4, 6.95, 100.08, BaggageKind.LargeSpare)]
    [InlineData(14.8, 6.6, 97.68, BaggageKind.SmallSpare)]
    [InlineData(14.4, 10.2, 146.88, BaggageKind.LargeSpare)]
    [InlineData(14.4, 11.11, 159.984, BaggageKind.LargeSpare)]
    [InlineData(14.8, 11.0, 162.8, null)]
    [InlineData(28.8, 3.4, 97.92, BaggageKind.SmallSpare)]
    [InlineData(3.7, 20.0, 74.0, BaggageKind.SmallSpare)]
    public void Volts_times_ampere_hours_and_the_class(double volts, double ampereHours, double wattHours, BaggageKind? kind)
    {
        var rated = RatedEnergy.Of(ElectricPotential.FromVolts(volts), ElectricCharge.FromAmpereHours(ampereHours));
        Assert.Equal(wattHours, rated.Energy.WattHours, 1e-9);
        Assert.Equal(WattHourBasis.VoltageTimesCapacity, rated.Basis);
        var check = FlightCheck.Of(Batteries.Spare(rated), Batteries.Rules2026.Passengers);
        if (kind is null)
            Assert.NotNull(check.StoppedBy);
        else
            Assert.Equal((kind.Value, false), (check.Kind, check.StoppedBy is not null));
    }

    [Fact]
    public void The_marked_figure_goes_before_the_computed_one()
    {
        var battery = new Battery { Energy = Energy.FromWattHours(99), Voltage = ElectricPotential.FromVolts(14.8),
            Capacity = ElectricCharge.FromAmpereHours(6.8) };
        var marked = RatedEnergy.Of(battery, []);
        Assert.Equal((99.0, WattHourBasis.Label, null), (marked.Energy.WattHours, marked.Basis, marked.Doubt));
        var unmarked = RatedEnergy.Of(battery, ["battery.energy"]);
        Assert.Equal(WattHourBasis.VoltageTimesCapacity, unmarked.Basis);
        Assert.Equal(100.64, unmarked.Energy.WattHours, 1e-9);
    }

    // The same cells at 3.6 V and 3.7 V: 3.7/3.6 - 1 = 2.8 %, enough to cross 100 Wh (computed).
    [Fact]
    public void The_nominal_voltage_alone_can_cross_the_line()
    {
        BaggageKind At(double volts) =>
            FlightCheck.Of(Batteries.Spare(RatedEnergy.Of(ElectricPotential.FromVolts(volts),
            ElectricCharge.FromAmpereHours(6.9))), Batteries.Rules2026.Passengers).Kind;
        Assert.Equal((BaggageKind.SmallSpare, BaggageKind.LargeSpare), (At(14.4), At(14.8)));
    }
}
