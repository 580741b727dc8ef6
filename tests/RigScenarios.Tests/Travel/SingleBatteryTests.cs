using RigScenarios.Travel;
using UnitsNet;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

/// <summary>One battery held against the rules: where the lines are, and what the margin is called.</summary>
public sealed class SingleBatteryTests
{
    [Theory]
    [InlineData(98, "2 Wh under 100 Wh")]
    [InlineData(100, "0 Wh under 100 Wh")]
    [InlineData(100.001, "60 Wh under 160 Wh")]
    [InlineData(99.999, "0.001 Wh under 100 Wh")]
    [InlineData(160, "0 Wh under 160 Wh")]
    [InlineData(160.25, "0.25 Wh over 160 Wh")]
    [InlineData(190, "30 Wh over 160 Wh")]
    public void A_margin_in_words_is_never_negative_and_reads_0_only_on_the_line(double wattHours, string words) =>
        Assert.Equal(words, Check(wattHours).MarginWords);

    [Theory]
    [InlineData(0, "0")]
    [InlineData(0.005, "0.01")]
    [InlineData(0.0049, "0.005")]
    [InlineData(-0.001, "-0.001")]
    [InlineData(0.004, "0.004")]
    [InlineData(59.92, "59.92")]
    [InlineData(2, "2")]
    public void A_number_has_two_digits_or_as_many_as_keep_it_from_reading_0(double value, string words) =>
        Assert.Equal(words, FlightCheck.Number(value));

    // The next number above the limit that the computer has.
    [Fact]
    public void Rounding_inside_the_computer_crosses_no_line_and_leaves_no_negative_margin()
    {
        var check = Check(Math.BitIncrement(100));
        Assert.Equal((BaggageKind.SmallSpare, false, 0.0), (check.Kind, check.NeedsApproval, check.Margin.WattHours));
        Assert.Equal("0 Wh under 100 Wh", check.MarginWords);
        var highest = Check(Math.BitIncrement(160));
        Assert.Equal((BaggageKind.LargeSpare, true, 0.0), (highest.Kind, highest.NeedsApproval, highest.Margin.WattHours));
        Assert.Null(highest.StoppedBy);
    }

    [Theory]
    [InlineData(30, "at most 30 % charge; 0 points under it", false)]
    [InlineData(29.5, "at most 30 % charge; 0.5 points under it", false)]
    [InlineData(45, "at most 30 % charge; 15 points over it", true)]
    public void The_margin_of_charge_as_cargo_in_words(double percent, string words, bool stopped)
    {
        var check = Cargo(Some("b", 98, 1) with { Charge = Ratio.FromPercent(percent) });
        Assert.Equal((words, stopped), (check.ChargeWords, check.StoppedBy is not null));
    }

    [Theory]
    [InlineData(false, false, true)]
    [InlineData(false, true, false)]
    [InlineData(true, false, false)]
    [InlineData(true, true, false)]
    public void As_cargo_open_contacts_stop_a_battery_outside_of_equipment_alone(bool installed, bool covered, bool stopped)
    {
        var check = Cargo(Some("b", 98, 1) with { Installed = installed, ContactsCovered = covered });
        Assert.Equal(stopped ? "Cover the contacts." : null, check.Remedy);
        Assert.Equal(stopped, check.StoppedBy is not null);
    }

    [Theory]
    [InlineData(LithiumKind.Ion, "lithium ion batteries")]
    [InlineData(LithiumKind.Metal, "lithium metal batteries")]
    public void The_shipping_name_says_what_the_battery_is(LithiumKind kind, string name)
    {
        Each.Of(Enum.GetValues<CargoForm>(), form => Assert.StartsWith(name, UnEntry.Of(kind, form).ShippingName,
            StringComparison.Ordinal), atLeast: 3);
        Assert.Equal(name, UnEntry.Of(kind, CargoForm.Loose).ShippingName);
    }

    [Fact]
    public void What_is_not_packed_in_words_is_one_spare_battery_with_covered_contacts()
    {
        Assert.Equal((0, true, false), (new BatteryPacking().Installed, new BatteryPacking().ContactsCovered,
            new BatteryPacking().PowerBank));
        var packed = new PackedBattery { Name = "b", Title = "B", Rated = Some("b", 98, 1).Rated };
        Assert.Equal((1, false, true), (packed.Count, packed.Installed, packed.ContactsCovered));
    }

    [Theory]
    [InlineData(0, 7)]
    [InlineData(-14.4, 7)]
    [InlineData(14.4, 0)]
    [InlineData(14.4, -7)]
    public void Volts_and_ampere_hours_that_are_not_above_0_are_refused(double volts, double ampereHours) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            RatedEnergy.Of(ElectricPotential.FromVolts(volts), ElectricCharge.FromAmpereHours(ampereHours)));

    [Theory]
    [InlineData(0)]
    [InlineData(-98)]
    public void A_label_that_is_not_above_0_is_refused(double wattHours) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RatedEnergy.Of(new RigScenarios.Parts.Battery
        {
            Energy = Energy.FromWattHours(wattHours), Voltage = ElectricPotential.FromVolts(14.4),
        }, []));

    private static FlightCheck Check(double wattHours) =>
        FlightCheck.Of(Some("b", wattHours, 1), RuleEditions.On(Date).Rules.Passengers);

    private static CargoCheck Cargo(PackedBattery battery) => CargoCheck.Of(battery, 1, RuleEditions.On(Date).Rules.Cargo);
}
