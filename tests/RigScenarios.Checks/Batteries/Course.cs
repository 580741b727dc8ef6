using RigScenarios.Batteries;
using RigScenarios.Benchmarks.MeasuredCells;

namespace RigScenarios.Checks.Batteries;

/// <summary>Voltage and temperature of a discharge over the charge drawn, straight between its points.</summary>
internal sealed class Course
{
    private readonly double[] drawn;
    private readonly double[] volts;
    private readonly double[] celsius;

    private Course(IEnumerable<(double Drawn, double Volts, double Celsius)> points)
    {
        var all = points.ToList();
        drawn = [.. all.Select(point => point.Drawn)];
        volts = [.. all.Select(point => point.Volts)];
        celsius = [.. all.Select(point => point.Celsius)];
    }

    /// <summary>As measured.</summary>
    public static Course Of(MeasuredDischarge discharge) => new(MeasuredCell.Read("nmc18650_cc_discharge.csv")
        .Where(row => row.Number("ambient_C") == discharge.ChamberCelsius && row.Text("rate") == discharge.Rate)
        .Select(row => (row.Number("discharged_Ah"), row.Number("voltage_V"), row.Number("cell_temperature_C"))));

    /// <summary>As predicted, at a steady current.</summary>
    public static Course Of(DischargeResult result) => new(result.Series.Select(point =>
        (point.Current.Amperes * point.Time.Hours, point.Voltage.Volts, point.Temperature.DegreesCelsius)));

    /// <summary>Voltage after so many Ah, V.</summary>
    public double VoltsAt(double ampereHours) => At(volts, ampereHours);

    /// <summary>Temperature after so many Ah, °C.</summary>
    public double CelsiusAt(double ampereHours) => At(celsius, ampereHours);

    private double At(double[] values, double ampereHours)
    {
        Assert.InRange(ampereHours, drawn[0], drawn[^1]);
        var i = Math.Max(1, Array.FindIndex(drawn, one => one >= ampereHours));
        return values[i - 1] + ((values[i] - values[i - 1]) * (ampereHours - drawn[i - 1]) / (drawn[i] - drawn[i - 1]));
    }
}
