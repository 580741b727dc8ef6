using RigScenarios.Answers;
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
[Source(SourceKind.Regulation, "Federal Aviation Administration, \"Airline passengers and batteries\": Wh = V × Ah; read in the "
    + "source; products by hand")]
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

    // Products as printed: an airline's statement of 12 March 2025 (100 Wh is 27,027 mAh, 160 Wh is 43,243 mAh, both at 3.7 V);
    // an airline's example (10,000 mAh at 3.7 V is 37 Wh); a trade article of 2008 on the rules of the United States (7.2 V and
    // 6,000 mAh is 43.2 Wh); two more of the same kind (20,000 mAh at 3.7 V is 74 Wh; at 4 V 80 Wh).
    [Source(SourceKind.TradePractice, "Worked examples of watt-hours for passengers: two airlines' pages and statements, "
        + "provideocoalition.com (2008), topaviationnews.com (2026), tech-fruit.com (2021); read in the sources or in reports")]
    [Theory]
    [InlineData(3.7, 27.027, 100, BaggageKind.SmallSpare)]
    [InlineData(3.7, 43.243, 160, BaggageKind.LargeSpare)]
    [InlineData(3.7, 10, 37, BaggageKind.SmallSpare)]
    [InlineData(3.7, 20, 74, BaggageKind.SmallSpare)]
    [InlineData(4, 20, 80, BaggageKind.SmallSpare)]
    [InlineData(7.2, 6, 43.2, BaggageKind.SmallSpare)]
    public void Watt_hours_as_printed(double volts, double ampereHours, double printed, BaggageKind kind)
    {
        var rated = RatedEnergy.Of(ElectricPotential.FromVolts(volts), ElectricCharge.FromAmpereHours(ampereHours));
        Assert.Equal(printed, rated.Energy.WattHours, 0.005);
        Assert.Equal(kind, FlightCheck.Of(Batteries.Spare(rated), RuleEditions.On(Batteries.January2026).Rules.Passengers).Kind);
    }

    [Fact]
    public void The_marked_figure_goes_before_the_computed_one()
    {
        var battery = new Battery { Energy = Energy.FromWattHours(99), Voltage = ElectricPotential.FromVolts(14.8),
            Capacity = ElectricCharge.FromAmpereHours(6.8) };
        var marked = RatedEnergy.Of(battery, []);
        Assert.Equal((99.0, WattHourBasis.Label), (marked.Energy.WattHours, marked.Basis));
        Assert.Contains("on the other side of 100 Wh", TravelWords.Doubt(marked, Batteries.Rules2026.Passengers),
            StringComparison.Ordinal);
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
