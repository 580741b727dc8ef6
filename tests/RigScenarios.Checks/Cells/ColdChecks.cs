using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Checks.Cells;

/// <summary>
/// Resistance and capacity in the cold against figures measured on one cell: P. Kollmeyer et al. (2020),
/// doi:10.17632/cp3473x7xv.3, CC BY 4.0;
/// sustained resistance = (V at C/20 - V at C/2)/ΔI over 0.3…1.5 Ah drawn, computed from the data.
/// </summary>
public class ColdChecks
{
    // 46.4 mΩ at 24.3 °C; each further value over that. The fit on which the activation energy rests has residuals of up to 8 %.
    [Theory]
    [InlineData(9.2, 77.9)]
    [InlineData(-0.1, 106.5)]
    [InlineData(-10.9, 168.4)]
    [InlineData(-19.8, 299)]
    public void Activation_energy_gives_the_measured_growth_of_the_sustained_resistance(double celsius, double milliohms)
    {
        var energy = CellChemistries.Nmc.ActivationEnergy.Value.JoulesPerMole;
        double Factor(double at) => Math.Exp(energy / 8.314462618 * ((1 / (at + 273.15)) - (1 / 298.15)));

        Assert.Equal(milliohms / 46.4, Factor(celsius) / Factor(24.3), 0.13 * milliohms / 46.4);
    }

    // 10 s pulses: 24.2 mΩ at 38.5 °C over 27.8 mΩ at 23.8 °C.
    [Fact]
    public void Floor_is_the_measured_gain_in_the_warm()
    {
        Assert.Equal(24.2 / 27.8, CellChemistries.Nmc.ResistanceFloor.Value, 0.005);
    }

    // Sustained at 25 °C: 42.3 mΩ (1C) to 46.4 mΩ (C/2) of a cell that gives 2.75 Ah.
    [Fact]
    public void Sustained_resistance_lies_between_the_measured_ones()
    {
        Assert.InRange(CellChemistries.Nmc.SustainedResistanceOhmAmpereHours.Value, 0.0423 * 2.726, 0.0464 * 2.751);
    }

    // C/2 capacity over that at 25 °C; the resistance takes its own part of the loss, so the usable fraction must not be lower.
    [Theory]
    [InlineData(9.1, 0.932)]
    [InlineData(-0.5, 0.909)]
    [InlineData(-9.3, 0.862)]
    [InlineData(-19.0, 0.730)]
    public void Usable_fraction_is_at_or_a_little_above_the_measured_charge(double celsius, double measured)
    {
        var usable = CellChemistries.Nmc.UsableCapacity.Value.At(Temperature.FromDegreesCelsius(celsius)).DecimalFractions;

        Assert.InRange(usable, measured - 0.004, measured + 0.02);
    }
}
