using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Shared;

/// <summary>
/// A power log of a discharge that never was: an invented battery, aged, under an invented load, read by a meter with
/// noise, and with an error of the model that lives some minutes, as a real battery's does. The same seed gives the same log.
/// </summary>
internal static class InventedLog
{
    /// <summary>Capacity left of the battery that was "measured".</summary>
    public const double TrueCapacity = 0.9;

    /// <summary>Its resistance over that of a new one.</summary>
    public const double TrueResistance = 1.3;

    private const int CoursePoints = 20_000;
    private const double ModelErrorVolts = 0.015;
    private const double ReadingErrorVolts = 0.01;
    private const double ReadingErrorAmperes = 0.005;

    /// <summary>The battery as new, from a label of 98 Wh and 14.4 V.</summary>
    public static Pack Battery { get; } = PackModel.From(
        new Battery
        {
            Energy = Energy.FromWattHours(98),
            Voltage = ElectricPotential.FromVolts(14.4),
            Chemistry = "nmc",
        },
        null, null, Age.New).Pack;

    /// <summary>Air at the battery.</summary>
    public static Temperature Air { get; } = Temperature.FromDegreesCelsius(22);

    /// <summary>The whole discharge in so many rows, each the mean until the next one.</summary>
    public static LogRows Of(int count, int seed)
    {
        var course = Course();
        var random = new Random(seed);
        var step = course[^1].Time.Seconds / count;
        double groups = Battery.SeriesGroups;
        var life = Math.Exp(-step / CorrelationSeconds(course));
        var (seconds, volts, amperes) = (new double[count], new double[count], new double[count]);
        var error = ModelErrorVolts * Normal(random);
        for (int row = 0, at = 0; row < count; row++)
        {
            seconds[row] = row * step;
            var middle = seconds[row] + (step / 2);
            while (at + 2 < course.Count && course[at + 1].Time.Seconds < middle)
                at++;
            var (before, after) = (course[at], course[at + 1]);
            var length = (after.Time - before.Time).Seconds;
            var along = length > 0 ? (middle - before.Time.Seconds) / length : 0;
            volts[row] = Between(before.Voltage.Volts, after.Voltage.Volts, along) + (groups * error)
                + (ReadingErrorVolts * Normal(random));
            amperes[row] = Between(before.Current.Amperes, after.Current.Amperes, along)
                + (ReadingErrorAmperes * Normal(random));
            error = (life * error) + (ModelErrorVolts * Math.Sqrt(1 - (life * life)) * Normal(random));
        }
        return LogRows.Of(seconds, volts, amperes);
    }

    /// <summary>The same log as if it had been read more rarely: each row the mean of so many, and the last reading to end the
    /// last of them.</summary>
    public static LogRows Thinned(LogRows rows, int every)
    {
        var count = rows.Count / every;
        var (seconds, volts, amperes) = (new double[count + 1], new double[count + 1], new double[count + 1]);
        for (var row = 0; row < count * every; row++)
        {
            if (row % every == 0)
                seconds[row / every] = rows.Seconds[row];
            volts[row / every] += rows.Volts[row] / every;
            amperes[row / every] += rows.Amperes[row] / every;
        }
        (seconds[count], volts[count], amperes[count]) = (count * seconds[1], rows.Volts[^1], rows.Amperes[^1]);
        return LogRows.Of(seconds, volts, amperes);
    }

    /// <summary>The log as a file of a meter.</summary>
    public static void Write(LogRows rows, TextWriter text)
    {
        text.Write("time_s,voltage_V,current_A\n");
        for (var row = 0; row < rows.Count; row++)
        {
            text.Write(string.Create(CultureInfo.InvariantCulture,
                $"{rows.Seconds[row]:F4},{rows.Volts[row]:F4},{rows.Amperes[row]:F4}\n"));
        }
    }

    private static IReadOnlyList<DischargePoint> Course() => Discharge.Run(
        Battery with { Age = new Age(Ratio.FromDecimalFractions(TrueCapacity), TrueResistance) }, Air, DischargeStart.Full,
        new Demand([Segment(600, 22), Segment(120, 38), Segment(300, 26), Segment(180, 41)]),
        new DischargeOptions { SeriesPoints = CoursePoints }).Series;

    private static DemandSegment Segment(double seconds, double watts) => new(
        Duration.FromSeconds(seconds), Power.FromWatts(watts), ElectricCurrent.Zero, ElectricConductance.Zero);

    private static double CorrelationSeconds(IReadOnlyList<DischargePoint> course) =>
        0.03 / TrueCapacity * course[^1].Time.Seconds;

    private static double Between(double before, double after, double along) => before + (along * (after - before));

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
