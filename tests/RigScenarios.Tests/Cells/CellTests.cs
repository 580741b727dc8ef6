using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Cells;

/// <summary>Tables, chemistries and age.</summary>
public class CellTests
{
    [Fact]
    public void Usable_capacity_is_linear_between_points_and_flat_outside()
    {
        var usable = UsableCapacity.FromTable([260, 280, 300], [0.6, 0.8, 1]);

        Assert.Equal(0.6, At(200), 1e-15);
        Assert.Equal(0.6, At(260), 1e-15);
        Assert.Equal(0.75, At(275), 1e-12);
        Assert.Equal(1, At(300), 1e-15);
        Assert.Equal(1, At(400), 1e-15);

        double At(double kelvin) => usable.At(Temperature.FromKelvins(kelvin)).DecimalFractions;
    }

    [Fact]
    public void Broken_tables_are_refused_with_the_point()
    {
        Assert.Contains("two or more", Assert.Throws<ArgumentException>(() => OpenCircuitVoltage.FromTable([0], [3])).Message);
        Assert.Contains("exactly 0 to exactly 1",
            Assert.Throws<ArgumentException>(() => OpenCircuitVoltage.FromTable([0.1, 1], [3, 4])).Message);
        Assert.Contains("Point 3",
            Assert.Throws<ArgumentException>(() => OpenCircuitVoltage.FromTable([0, 0.5, 0.5, 1], [3, 3.5, 3.6, 4])).Message);
        Assert.Contains("Point 2", Assert.Throws<ArgumentException>(() => OpenCircuitVoltage.FromTable([0, 1], [3, 0])).Message);
        Assert.Contains("Point 1", Assert.Throws<ArgumentException>(() => UsableCapacity.FromTable([280], [0])).Message);
        Assert.Contains("rising", Assert.Throws<ArgumentException>(() => UsableCapacity.FromTable([280, 270], [1, 1])).Message);
    }

    [Fact]
    public void Chemistries_are_found_by_name_in_any_case()
    {
        Assert.Same(CellChemistries.Nmc, CellChemistries.Find("NMC"));
        Assert.Same(CellChemistries.Lfp, CellChemistries.Find(" lfp "));
        Assert.Contains("did you mean 'lfp'", Assert.Throws<ArgumentException>(() => CellChemistries.Find("lfpo4")).Message);
        Assert.False(CellChemistries.TryFind(null, out _));
    }

    [Fact]
    public void Shares_of_the_resistance_add_up_to_one()
    {
        Each.Of(CellChemistries.All, one =>
        {
            var split = one.ResistanceSplit.Value;
            Assert.Equal(1, split.Share0 + split.Share1 + split.Share2, 1e-12);
        });
    }

    [Fact]
    public void Open_circuit_voltages_never_fall_with_charge()
    {
        Each.Of(CellChemistries.All, one =>
        {
            var volts = Enumerable.Range(0, 1001)
                .Select(i => one.OpenCircuitVoltage.Value.At(Ratio.FromDecimalFractions(i / 1000.0)).Volts).ToArray();
            Each.Of(volts.Zip(volts.Skip(1)), pair => Assert.True(pair.Second >= pair.First));
        });
    }

    // The window: solved for 2.5 and 4.2 V by an independent program (SciPy's root finder) with the functions, the electrode
    // capacities and the lithium of the parameter set of C.-H. Chen et al., J. Electrochem. Soc. 167 (2020) 080534, read in a
    // public implementation; the paper's own table prints 0.0279 and 0.9014 (from memory), a window for other voltages.
    // The table of the curve is fine enough: between its points it stays within half a millivolt of the electrode functions.
    [Fact]
    public void Nmc_table_follows_its_functions()
    {
        var (empty, full) = (Chen2020.LithiationAt(2.5), Chen2020.LithiationAt(4.2));
        Assert.Equal(0.02635, empty, 5e-6);
        Assert.Equal(0.91062, full, 5e-6);
        for (var i = 0; i <= 2000; i++)
        {
            var z = i / 2000.0;
            Assert.Equal(Chen2020.Cell(empty + (z * (full - empty))),
                Chen2020.OpenCircuitVoltage.At(Ratio.FromDecimalFractions(z)).Volts, 5e-4);
        }
    }

    [Fact]
    public void Age_outside_its_range_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Age(Ratio.Zero, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Age(Ratio.FromDecimalFractions(1.51), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Age(Ratio.FromDecimalFractions(0.8), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Age.New with { ResistanceFactor = double.NaN });
    }

    [Fact]
    public void Citation_says_its_standing()
    {
        Assert.EndsWith("[computed from the source]", Kollmeyer2020.Source.ToString());
        Assert.Equal("3.6 V nominal a group [common practice, no source]", CellChemistries.Nmc.NominalVoltage.Source.ToString());
    }

    // Titles of data sets carry makers' names and model numbers: authors, year, identifier and licence say the same without them.
    [Fact]
    public void Sources_of_cells_name_creators_year_and_identifier_only()
    {
        foreach (var source in new[] { Kollmeyer2020.Source, Chen2020.Source, Moeller2022.Source })
        {
            Assert.Empty(source.Title);
            Assert.NotNull(source.Year);
            Assert.Contains("doi:10.", source.Where, StringComparison.Ordinal);
            Assert.DoesNotContain("niversit", source.Authors, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("0.37 W/K", 0.37)]
    [InlineData("1e-1W/K", 0.1)]
    public void Thermal_conductance_is_read_and_written(string text, double value)
    {
        Assert.Equal(value, ThermalConductance.Parse(text).WattsPerKelvin);
        Assert.Equal(value, ThermalConductance.Parse(ThermalConductance.Parse(text).ToString()).WattsPerKelvin);
    }

    [Theory]
    [InlineData("0.37")]
    [InlineData("W/K")]
    [InlineData("NaN W/K")]
    [InlineData(null)]
    public void Thermal_conductance_without_number_or_unit_is_refused(string? text)
    {
        Assert.False(ThermalConductance.TryParse(text, out _));
    }
}
