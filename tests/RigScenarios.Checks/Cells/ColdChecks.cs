using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Checks.Batteries;
using UnitsNet;

namespace RigScenarios.Checks.Cells;

/// <summary>
/// The growth of the resistance in the cold, as the discharges of the project show it: run, and reduced as the measured ones
/// were.
/// </summary>
public class ColdChecks
{
    // Voltage at C/20 less that at the rate, over the difference of the currents; mean of 0.3 to 1.5 Ah drawn. The default
    // resistance (0.125 Ω·Ah), its activation energy (20 kJ/mol) and the two wells were fitted on charge and energy, so none is
    // met exactly. mΩ of the source have three digits: half a point.
    [Theory]
    [Source(SourceKind.OpenData, MeasuredCell.Citation)]
    [InlineData(25, "C/2", 46.4, -3.9)]
    [InlineData(10, "C/2", 77.9, -8.4)]
    [InlineData(0, "C/2", 106.5, -5.4)]
    [InlineData(-10, "C/2", 168.4, -6.2)]
    [InlineData(-20, "C/2", 299, -13.1)]
    [InlineData(25, "1C", 42.3, -0.8)]
    [InlineData(10, "1C", 65.3, 1.0)]
    [InlineData(0, "1C", 88.4, 4.5)]
    [InlineData(-10, "1C", 130.2, 6.2)]
    [InlineData(-20, "1C", 197, 4.7)]
    public void Sustained_resistance_is_off_by_what_is_stated(double chamber, string rate, double milliohms, double percent)
    {
        var (slow, fast) = (MeasuredCell.At(chamber, "C/20"), MeasuredCell.At(chamber, rate));
        var between = fast.Amperes - slow.Amperes;

        Assert.Equal(milliohms, Sustained(Course.Of(slow), Course.Of(fast), between), 0.01 * milliohms);
        StatedError.Holds(Sustained(
            Course.Of(MeasuredCell.Model.Run(slow, 1500)), Course.Of(MeasuredCell.Model.Run(fast, 1500)), between),
            milliohms, percent, 0.5);
    }

    // "A reaction whose rate doubles from 25 to 35 °C has an activation energy of 52.9 kJ/mol": the classic exercise on the law
    // of Arrhenius. A resistance is the inverse of a rate: it halves, and grows accordingly into the cold. Three digits: 0.1 %.
    [Theory]
    [Source(SourceKind.FromMemory, "textbook exercise on Arrhenius' law: rate doubled from 25 to 35 °C, 52.9 kJ/mol")]
    [InlineData(35, 0.5)]
    [InlineData(25, 1)]
    public void Resistance_halves_from_25_to_35_degrees_at_52_9_kilojoules_per_mole(double celsius, double times) =>
        Assert.Equal(times, ResistanceTimes(celsius, 52.9), 0.001 * times);

    // 52.9 kJ/mol at other temperatures: exp(52900/8.314462618·(1/T - 1/298.15)), worked to seven digits outside the project.
    [Theory]
    [Source(SourceKind.ClosedForm, "law of Arrhenius, worked outside the project")]
    [InlineData(15, 2.097137)]
    [InlineData(0, 7.050542)]
    [InlineData(-20, 44.40426)]
    public void Resistance_grows_into_the_cold_by_the_law(double celsius, double times) =>
        Assert.Equal(times, ResistanceTimes(celsius, 52.9), 1e-6 * times);

    // How many times its resistance at 25 °C a pack shows: the first voltage of a discharge at 1 A from 4 V through 0.1 Ω.
    private static double ResistanceTimes(double celsius, double kilojoulesPerMole)
    {
        var pack = MeasuredCell.Model.Cell() with
        {
            OpenCircuitVoltage = OpenCircuitVoltage.FromTable([0, 1], [4, 4]),
            Resistance0 = ElectricResistance.FromOhms(0.01),
            ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(kilojoulesPerMole),
            ResistanceFloor = 0,
        };
        var run = Discharge.Run(
            pack, Temperature.FromDegreesCelsius(celsius), DischargeStart.Full,
            Demand.OfCurrent(ElectricCurrent.FromAmperes(1)), new DischargeOptions { TimeLimit = Duration.FromSeconds(1) });
        return (4 - run.Series[0].Voltage.Volts) / 0.01;
    }

    private static double Sustained(Course slow, Course fast, double amperes) => 1000 / amperes
        * Enumerable.Range(3, 13).Average(tenths => slow.VoltsAt(tenths / 10.0) - fast.VoltsAt(tenths / 10.0));
}
