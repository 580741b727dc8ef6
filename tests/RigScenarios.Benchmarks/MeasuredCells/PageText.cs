using System.Globalization;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>Errors as the page writes them.</summary>
internal static class PageText
{
    /// <summary>An error in % with its sign and one decimal.</summary>
    public static string Percent(double error) => (100 * error).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);

    /// <summary>The largest of some errors, with its sign.</summary>
    public static string Largest(IEnumerable<double> errors) => Percent(errors.MaxBy(Math.Abs));

    /// <summary>Root mean square of some errors, in %.</summary>
    public static string Rms(IEnumerable<double> errors) =>
        (100 * Math.Sqrt(errors.Average(error => error * error))).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Rate and chamber of a discharge: "2C at -20 °C".</summary>
    public static string Name(MeasuredDischarge one) =>
        string.Create(CultureInfo.InvariantCulture, $"{one.Rate} at {one.ChamberCelsius:0} °C");
}
