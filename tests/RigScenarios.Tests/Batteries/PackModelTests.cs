using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>From a label to a pack, with every assumption told. Labels and data sheets are invented.</summary>
public class PackModelTests
{
    private static readonly string[] Fields =
    [
        "chemistry", "series-groups", "capacity", "open-circuit-voltage", "resistance-0", "resistance-1", "resistance-2",
        "time-constant-1",
        "time-constant-2", "lead-resistance", "activation-energy", "resistance-floor", "usable-capacity", "heat-capacity",
        "heat-conductance",
        "cutoff-voltage", "maximum-current", "maximum-temperature", "capacity-left", "resistance-growth", "near-share",
        "exchange-time", "exchange-activation-energy",
    ];

    private static readonly Battery Complete = Packs.Label with
    {
        Chemistry = "nmc",
        SeriesGroups = 4,
        Capacity = ElectricCharge.FromAmpereHours(6.8),
        OpenCircuitVoltage = [.. CellChemistries.Nmc.OpenCircuitVoltage.Value.Points],
        Resistance0 = ElectricResistance.FromMilliohms(9),
        Resistance1 = ElectricResistance.FromMilliohms(4),
        Resistance2 = ElectricResistance.FromMilliohms(5),
        TimeConstant1 = Duration.FromSeconds(20),
        TimeConstant2 = Duration.FromSeconds(600),
        LeadResistance = ElectricResistance.FromMilliohms(15),
        ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(25),
        ResistanceFloor = 0.9,
        UsableCapacity = [.. CellChemistries.Nmc.UsableCapacity.Value.Points],
        NearShare = 0.6,
        ExchangeTime = Duration.FromSeconds(12),
        ExchangeActivationEnergy = MolarEnergy.FromKilojoulesPerMole(60),
        HeatCapacity = Entropy.FromJoulesPerKelvin(700),
        HeatConductance = ThermalConductance.FromWattsPerKelvin(0.5),
        CutoffVoltage = ElectricPotential.FromVolts(11),
        MaximumCurrent = ElectricCurrent.FromAmperes(12),
        MaximumTemperature = Temperature.FromDegreesCelsius(65),
    };

    [Fact]
    public void Label_alone_is_enough_and_every_other_value_is_listed_as_assumed()
    {
        var model = PackModel.From(Packs.Label, null, null, null);

        Assert.Equal(Fields.Order(), model.Assumed.Select(one => one.Field).Order());
        Each.Of(model.Assumed, one =>
        {
            Assert.NotEmpty(one.Name);
            Assert.NotEmpty(one.Value);
            Assert.NotEmpty(one.Why);
            Assert.NotEmpty(one.Source.ToString());
        });
    }

    [Fact]
    public void Complete_data_leave_nothing_to_assume()
    {
        var model = PackModel.From(Complete, null, null, Age.New);

        Assert.Empty(model.Assumed);
        Assert.Equal(12, model.Pack.MaximumCurrent.Amperes);
        Assert.Equal(0.5, model.Pack.HeatConductance.WattsPerKelvin);
    }

    // 3.6 or 3.7 V a group of NMC and 3.2 V a group of LFP: common practice, no source.
    [Theory]
    [InlineData(3.6, null, 1)]
    [InlineData(7.2, null, 2)]
    [InlineData(7.4, null, 2)]
    [InlineData(14.4, null, 4)]
    [InlineData(14.8, null, 4)]
    [InlineData(25.9, "nmc", 7)]
    [InlineData(28.8, "NMC", 8)]
    [InlineData(12.8, "lfp", 4)]
    [InlineData(25.6, "lfp", 8)]
    [InlineData(1.2, null, 1)]
    public void Groups_follow_the_label_voltage(double volts, string? chemistry, int groups)
    {
        var battery = Packs.Label with { Voltage = ElectricPotential.FromVolts(volts), Chemistry = chemistry };

        Assert.Equal(groups, PackModel.From(battery, null, null, null).Pack.SeriesGroups);
    }

    [Fact]
    public void Defaults_follow_from_the_label_as_documented()
    {
        var size = new BoxSize(Length.FromMillimeters(60), Length.FromMillimeters(95), Length.FromMillimeters(140));
        var pack = PackModel.From(Packs.Label, Mass.FromKilograms(0.75), size, null).Pack;

        // By definition of the label's energy.
        Assert.Equal(98 / 14.4, pack.Capacity.AmpereHours, 1e-12);
        // 0.125 Ω·Ah, 20 kJ/mol, a near share of 0.5, 9 s and 71 kJ/mol: one set, computed from the discharges of P. Kollmeyer,
        // C. Vidal, M. Naguib and M. Skells (2020), doi:10.17632/cp3473x7xv.3, one cell at -20…40 °C.
        Assert.Equal(0.125 / (98 / 14.4), (pack.Resistance0 + pack.Resistance1 + pack.Resistance2).Ohms, 1e-12);
        Assert.Equal(20, pack.ActivationEnergy.KilojoulesPerMole, 1e-12);
        Assert.Equal((0.5, 9.0, 71.0), (pack.NearShare, pack.ExchangeTime.Seconds,
            pack.ExchangeActivationEnergy.KilojoulesPerMole));
        Assert.Equal([91.5, 95, 100], pack.UsableCapacity.Points.Select(point => point.Fraction.Percent));
        // 1000 J/(kg·K): the range of published values is 800 to 1100 (H. Steinhardt et al., J. Power Sources (2022) 230829;
        // second-hand).
        Assert.Equal(750, pack.HeatCapacity.JoulesPerKelvin, 1e-9);
        // 10 W/(m²·K): the default of a public battery simulator, read in its code.
        Assert.Equal(10 * 2 * ((0.06 * 0.095) + (0.095 * 0.14) + (0.14 * 0.06)), pack.HeatConductance.WattsPerKelvin, 1e-12);
        // Four groups of 2.8 V, the end of the measured discharges (Kollmeyer et al. 2020, as above).
        Assert.Equal(11.2, pack.CutoffVoltage.Volts, 1e-12);
        // Twice the capacity in an hour: common practice, no source.
        Assert.Equal(2 * 98 / 14.4, pack.MaximumCurrent.Amperes, 1e-12);
        Assert.Equal(Age.New, pack.Age);
    }

    [Fact]
    public void Unknown_chemistry_names_the_nearest()
    {
        var error = Assert.Throws<ArgumentException>(() => PackModel.From(Packs.Label with { Chemistry = "nmx" },
            null, null, null));

        Assert.Contains("did you mean 'nmc'", error.Message);
    }

    [Fact]
    public void Borrowed_values_of_lfp_say_so()
    {
        var model = PackModel.From(Packs.Label with { Chemistry = "lfp", Voltage = ElectricPotential.FromVolts(12.8) },
            null, null, null);

        foreach (var field in (string[])["usable-capacity", "near-share", "exchange-time", "exchange-activation-energy"])
            Assert.Contains("BORROWED", model.Assumed.Single(one => one.Field == field).Why);
        Assert.Equal(0.143 / (98 / 12.8), (model.Pack.Resistance0 + model.Pack.Resistance1 + model.Pack.Resistance2).Ohms, 1e-12);
        Assert.Equal(17.4, model.Pack.ActivationEnergy.KilojoulesPerMole, 1e-12);
    }

    // The values that go with one well: 0.12 Ω·Ah, 25 kJ/mol and 73.8 % at -19 °C (Kollmeyer et al. 2020, computed).
    [Fact]
    public void A_cold_table_or_a_resistance_of_its_own_stands_for_one_well()
    {
        var table = PackModel.From(Packs.Label with { UsableCapacity = Complete.UsableCapacity }, null, null, null);
        Assert.Equal(1, table.Pack.NearShare);
        Assert.Equal(0.12 / (98 / 14.4), (table.Pack.Resistance0 + table.Pack.Resistance1 + table.Pack.Resistance2).Ohms, 1e-12);
        Assert.Equal(25, table.Pack.ActivationEnergy.KilojoulesPerMole, 1e-12);
        Assert.Contains("all of the charge", table.Assumed.Single(one => one.Field == "near-share").Why);
        Assert.DoesNotContain(table.Assumed, one => one.Field.StartsWith("exchange", StringComparison.Ordinal));

        var resistance = PackModel.From(Packs.Label with { Resistance1 = Complete.Resistance1 }, null, null, null).Pack;
        Assert.Equal((1, 73.8), (resistance.NearShare, resistance.UsableCapacity.Points[0].Fraction.Percent));
        var lfp = PackModel.From(Packs.Label with { Chemistry = "lfp", UsableCapacity = Complete.UsableCapacity }, null, null,
            null);
        Assert.Equal((1, 17.4), (lfp.Pack.NearShare, lfp.Pack.ActivationEnergy.KilojoulesPerMole));
        var said = PackModel.From(Packs.Label with { NearShare = 1 }, null, null, null);
        Assert.Equal((1, 25.0), (said.Pack.NearShare, said.Pack.ActivationEnergy.KilojoulesPerMole));
        Assert.DoesNotContain(said.Assumed, one => one.Field == "near-share");
    }

    [Fact]
    public void Who_says_that_there_are_two_wells_gets_the_rest_of_their_values()
    {
        var own = Packs.Label with { UsableCapacity = Complete.UsableCapacity };
        var shared = PackModel.From(own with { NearShare = 0.6 }, null, null, null).Pack;
        Assert.Equal((0.6, 9.0, 20.0), (shared.NearShare, shared.ExchangeTime.Seconds,
            shared.ActivationEnergy.KilojoulesPerMole));
        var timed = PackModel.From(own with { ExchangeTime = Duration.FromSeconds(12) }, null, null, null).Pack;
        Assert.Equal((0.5, 12.0, 71.0), (timed.NearShare, timed.ExchangeTime.Seconds,
            timed.ExchangeActivationEnergy.KilojoulesPerMole));
    }

    [Fact]
    public void Lfp_is_charged_above_what_its_full_cells_have_at_rest()
    {
        var label = Packs.Label with { Chemistry = "lfp", Voltage = ElectricPotential.FromVolts(12.8) };
        var pack = PackModel.From(label, null, null, null).Pack;
        Assert.Equal(3.65, pack.FullVoltage.Volts, 1e-12);
        Assert.Equal(3.5305, pack.OpenCircuitVoltage.At(Ratio.FromPercent(100)).Volts, 1e-12);
        Assert.Equal(14.4, 4 * PackModel.From(label with { ChargeVoltage = ElectricPotential.FromVolts(14.4) }, null, null, null)
            .Pack.FullVoltage.Volts, 1e-12);
        Assert.Equal(4.2, PackModel.From(Packs.Label, null, null, null).Pack.FullVoltage.Volts, 1e-9);
        var setting = new ChargeSetting(ElectricCurrent.FromAmperes(2));
        var from = new DischargeStart { StateOfCharge = Ratio.FromPercent(50) };
        var air = Temperature.FromDegreesCelsius(20);
        var run = ChargeRun.Run(pack, air, from, setting, TestContext.Current.CancellationToken);
        var slow = ChargeRun.Run(pack with { ChargeVoltage = null }, air, from, setting, TestContext.Current.CancellationToken);
        Assert.Equal(ChargeEnd.Full, run.End);
        Assert.InRange(run.Series.Max(point => point.Voltage.Volts), 4 * 3.5305, (4 * 3.65) + 1e-6);
        Assert.True(run.EndTime < slow.EndTime);
    }

    [Fact]
    public void Value_out_of_range_is_named_with_the_accepted_range()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() =>
            Packs.Default with { Capacity = ElectricCharge.FromAmpereHours(-2) });
        Assert.StartsWith("Capacity is -2 Ah; accepted: above 0 Ah.", error.Message);

        Assert.Throws<ArgumentOutOfRangeException>(() => Packs.Default with { ResistanceFloor = double.NaN });
        Assert.Throws<ArgumentOutOfRangeException>(() => Packs.Default with { SeriesGroups = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Packs.Watts(0, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => Packs.Watts(10, -1));
        Assert.Throws<ArgumentException>(() => new Demand([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DischargeOptions { RelativeTolerance = 0 });
    }
}
