using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>Assumed values as text.</summary>
internal static class AssumedText
{
    public static string Volts(ElectricPotential value) => $"{value.Volts:G4} V";

    public static string Amperes(ElectricCurrent value) => $"{value.Amperes:G4} A";

    public static string AmpereHours(ElectricCharge value) => $"{value.AmpereHours:G4} Ah";

    public static string Milliohms(ElectricResistance value) => $"{value.Milliohms:G3} mΩ";

    public static string Seconds(Duration value) => $"{value.Seconds:G4} s";

    public static string KilojoulesPerMole(MolarEnergy value) => $"{value.KilojoulesPerMole:G4} kJ/mol";

    public static string Number(double value) => $"{value:G3}";

    public static string Celsius(Temperature value) => $"{value.DegreesCelsius:G4} °C";

    public static string Kilograms(Mass value) => $"{value.Kilograms:G3} kg";

    public static string Range(OpenCircuitVoltage value) =>
        $"{Volts(value.Points[0].Voltage)} empty to {Volts(value.Points[^1].Voltage)} full, {value.Points.Count} points";

    public static string Range(UsableCapacity value) => string.Join(", ", value.Points.Select(
        point => $"{point.Fraction.Percent:G3} % at {Celsius(point.Temperature)}"));
}
