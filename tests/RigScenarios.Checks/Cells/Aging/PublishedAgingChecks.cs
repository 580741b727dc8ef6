using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Checks.Cells.Aging;

/// <summary>
/// Figures that the published equations give, worked out apart from this program from the equations as read in public
/// implementations: storage at one condition, cycles alone.
/// </summary>
public class PublishedAgingChecks
{
    private const double Digits = 6e-7;

    [Theory]
    [Source(SourceKind.Paper, "J. Schmalstieg et al., A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries, "
        + "J. Power Sources 257 (2014) 325-334; equations second-hand, figures computed from them")]
    [InlineData(3.70, 25, 365, 0.976052, 1.050654)]
    [InlineData(3.70, 25, 1095, 0.945411, 1.115467)]
    [InlineData(3.70, 35, 365, 0.948830, 1.097180)]
    [InlineData(3.70, 10, 365, 0.993066, 1.017487)]
    [InlineData(3.70, 50, 365, 0.853652, 1.239431)]
    [InlineData(3.50, 25, 365, 0.984739, 1.033860)]
    [InlineData(4.00, 25, 365, 0.963023, 1.075846)]
    [InlineData(4.16, 25, 365, 0.956074, 1.089282)]
    [InlineData(4.16, 40, 365, 0.865271, 1.233575)]
    [InlineData(4.16, 40, 30, 0.979318, 1.035855)]
    public void Storage_of_the_nmc_set(double volts, double celsius, double days, double capacity, double resistance) =>
        Holds(capacity, resistance, AgingSets.Nmc, Cycling.AboutVoltage(Duration.FromDays(days), Celsius(celsius), 0, Ratio.Zero,
            1, ElectricPotential.FromVolts(volts)));

    [Theory]
    [Source(SourceKind.Paper, "J. Schmalstieg et al., A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries, "
        + "J. Power Sources 257 (2014) 325-334; equations second-hand, figures computed from them")]
    [InlineData(3.70, 1.0, 100, 0.901815, 1.108537)]
    [InlineData(3.70, 1.0, 300, 0.829939, 1.325611)]
    [InlineData(3.70, 1.0, 500, 0.780452, 1.542685)]
    [InlineData(3.70, 0.8, 500, 0.817407, 1.427967)]
    [InlineData(3.70, 0.5, 500, 0.872840, 1.255890)]
    [InlineData(3.70, 0.2, 500, 0.928272, 1.083813)]
    [InlineData(3.95, 0.5, 500, 0.846557, 1.277959)]
    [InlineData(3.667, 0.1, 1000, 0.925205, 1.061500)]
    [InlineData(3.725, 1.0, 500, 0.779695, 1.542410)]
    public void Cycles_of_the_nmc_set(double volts, double depth, double cycles, double capacity, double resistance) =>
        Holds(capacity, resistance, AgingSets.Nmc, Cycling.AboutVoltage(Duration.Zero, Celsius(35), cycles, Share(depth), 1,
            ElectricPotential.FromVolts(volts)));

    [Fact]
    [Source(SourceKind.Paper, "J. Schmalstieg et al., A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries, "
        + "J. Power Sources 257 (2014) 325-334; equations second-hand, figures computed from them")]
    public void Storage_and_then_cycles_of_the_nmc_set_add_up() => Holds(0.803681, 1.370216, AgingSets.Nmc,
        Cycling.AboutVoltage(Duration.FromDays(730), Celsius(25), 0, Ratio.Zero, 1, ElectricPotential.FromVolts(3.90)),
        Cycling.AboutVoltage(Duration.Zero, Celsius(25), 300, Share(0.8), 1, ElectricPotential.FromVolts(3.70)));

    [Theory]
    [Source(SourceKind.Paper, "M. Naumann et al., J. Energy Storage 17 (2018) 153-169; constants from the authors' released "
        + "function file, second-hand, figures computed from them")]
    [InlineData(0.5, 25, 365, 0.957486, 1.016827)]
    [InlineData(1.0, 25, 365, 0.932272, 1.007687)]
    [InlineData(0.0, 25, 365, 0.982701, 1.007687)]
    [InlineData(0.5, 40, 365, 0.940810, 1.067414)]
    [InlineData(1.0, 40, 365, 0.905705, 1.030797)]
    [InlineData(1.0, 60, 365, 0.860048, 1.161344)]
    [InlineData(0.5, 10, 365, 0.970516, 1.003626)]
    [InlineData(0.75, 25, 1095, 0.920905, 1.043625)]
    [InlineData(0.5, 25, 3650, 0.865560, 1.168266)]
    public void Storage_of_the_lfp_set(double charge, double celsius, double days, double capacity, double resistance) =>
        Holds(capacity, resistance, AgingSets.Lfp, new Storage(Duration.FromDays(days), Celsius(celsius), Share(charge)));

    [Theory]
    [Source(SourceKind.Paper, "M. Naumann et al., J. Power Sources 451 (2020) 227666; constants from the authors' released "
        + "function file, second-hand, figures computed from them")]
    [InlineData(1, 1.0, 100, 0.978390, 1.000865)]
    [InlineData(1, 1.0, 1000, 0.931663, 1.008647)]
    [InlineData(1, 1.0, 5000, 0.847194, 1.043235)]
    [InlineData(0.5, 0.8, 1000, 0.954282, 1.015538)]
    [InlineData(0.2, 1.0, 1000, 0.953190, 1.034788)]
    [InlineData(1, 0.4, 1000, 0.946335, 1.004443)]
    [InlineData(1, 0.1, 1000, 0.970177, 1.002341)]
    [InlineData(0.5, 0.6, 3000, 0.923082, 1.039095)]
    public void Cycles_of_the_lfp_set(double rate, double depth, double cycles, double capacity, double resistance) =>
        Holds(capacity, resistance, AgingSets.Lfp, Cycles(25, rate, depth, cycles));

    [Theory]
    [Source(SourceKind.Paper, "J. Wang et al., Cycle-life model for graphite-LiFePO4 cells, J. Power Sources 196 (2011) "
        + "3942-3948; constants second-hand, figures computed from them")]
    [InlineData(0.5, 25, 1000, 4.2524)]
    [InlineData(0.5, 25, 2000, 6.2258)]
    [InlineData(0.5, 45, 2000, 13.8450)]
    [InlineData(0.5, 60, 2000, 23.6739)]
    [InlineData(0.5, 0, 2000, 1.9447)]
    [InlineData(2, 25, 2000, 5.3394)]
    [InlineData(2, 45, 2000, 11.7077)]
    [InlineData(6, 25, 2000, 5.7897)]
    [InlineData(10, 25, 2000, 12.6212)]
    public void Throughput_of_the_lfp_set_in_Ah_of_its_cell_of_2_2_Ah(
        double rate, double celsius, double ampereHours, double percent)
    {
        var age = BatteryLife.After(AgingSets.LfpThroughput, false, [Cycles(celsius, rate, 0.5, ampereHours / 2.2)]).Age;
        Assert.Equal(percent, 100 - age.CapacityLeft.Percent, 6e-5);
    }

    [Theory]
    [Source(SourceKind.Paper, "Fits on data of P. Keil et al. 2016 and Y. Preger et al. 2020 (NCA) and of the EVERLASTING "
        + "project's report D2.3 (NMC811 with silicon); constants read in a public implementation, figures computed from them")]
    [InlineData(0.5, 25, 0.961875, 0.901542)]
    [InlineData(1.0, 25, 0.931086, 0.891538)]
    [InlineData(0.5, 40, 0.936622, 0.884361)]
    [InlineData(0.2, 25, 0.973273, 0.907095)]
    [InlineData(1.0, 40, 0.888642, 0.873201)]
    public void A_year_of_storage_of_the_high_energy_sets(double charge, double celsius, double nca, double silicon)
    {
        var phase = new Storage(Duration.FromDays(365), Celsius(celsius), Share(charge));
        Assert.Equal(nca, Left(AgingSets.Nca, phase), Digits);
        Assert.Equal(silicon, Left(AgingSets.Nmc811Silicon, phase), Digits);
    }

    [Theory]
    [Source(SourceKind.Paper, "Fits on data of P. Keil et al. 2016 and Y. Preger et al. 2020 (NCA) and of the EVERLASTING "
        + "project's report D2.3 (NMC811 with silicon); constants read in a public implementation, figures computed from them")]
    [InlineData(1.0, 25, 0.972450, 0.943365)]
    [InlineData(0.8, 25, 0.977903, 0.949654)]
    [InlineData(0.8, 0, 0.977903, 0.899555)]
    [InlineData(0.8, 45, 0.977903, 0.968672)]
    public void Five_hundred_cycles_at_C_2_of_the_high_energy_sets(double depth, double celsius, double nca, double silicon)
    {
        var phase = Cycles(celsius, 0.5, depth, 500);
        Assert.Equal(nca, Left(AgingSets.Nca, phase), Digits);
        Assert.Equal(silicon, Left(AgingSets.Nmc811Silicon, phase), Digits);
    }

    private static void Holds(double capacity, double resistance, AgingSet set, params LifePhase[] phases)
    {
        var age = BatteryLife.After(set, false, phases).Age;
        Assert.Equal(capacity, age.CapacityLeft.DecimalFractions, Digits);
        Assert.Equal(resistance, age.ResistanceFactor, Digits);
    }

    private static double Left(AgingSet set, LifePhase phase) =>
        BatteryLife.After(set, false, [phase]).Age.CapacityLeft.DecimalFractions;

    private static Cycling Cycles(double celsius, double rate, double depth, double cycles) =>
        new(Duration.Zero, Celsius(celsius), cycles, Share(depth), rate, Share(0.5));

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    private static Ratio Share(double value) => Ratio.FromDecimalFractions(value);
}
