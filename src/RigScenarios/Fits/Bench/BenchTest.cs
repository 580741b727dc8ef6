using MathNet.Numerics.LinearRegression;
using RigScenarios.Cells;
using RigScenarios.Fits.Logs;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Bench;

/// <summary>Bench test: a battery's own open-circuit voltage and capacity from a slow, steady discharge from full to
/// empty.</summary>
/// <remarks>
/// What the current takes off the voltage is put back with the sustained resistance; the points are read from local straight
/// lines with tricube weights (W. S. Cleveland, J. Am. Stat. Assoc. 74 (1979) 829-836, from memory) and made never falling.
/// Equations: docs/power-logs.md.
/// </remarks>
public static class BenchTest
{
    /// <summary>Number of points if nothing else is said: every 2.5 % of the charge.</summary>
    public const int UsualPoints = 41;

    private const int MostPoints = 1001;

    /// <summary>Reads the table from a discharge.</summary>
    /// <param name="rows">The log, from full to the cut-off.</param>
    /// <param name="seriesGroups">Groups in series; 1 or more.</param>
    /// <param name="sustained">Sustained resistance of the whole battery, its leads with it; 0 or more.</param>
    /// <param name="cutoff">Voltage of the whole battery at which the discharge counts as ended.</param>
    /// <param name="points">Number of points of the table, equally apart; from 3 to 1001.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    /// <exception cref="ArgumentException">The log holds no discharge, or too few rows for so many points; the message says
    /// which.</exception>
    public static BenchTable Find(LogRows rows, int seriesGroups, ElectricResistance sustained, ElectricPotential cutoff,
        int points = UsualPoints)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Require.AtLeast(seriesGroups, 1);
        Require.NotNegative(sustained.Ohms, "Ω", nameof(sustained));
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(points, MostPoints);
        var discharging = Discharging(rows, cutoff.Volts);
        var (drawn, total) = Drawn(rows, discharging);
        var charge = drawn.Select(coulombs => 1 - (coulombs / total)).ToArray();
        var volts = discharging.Select(row => (rows.Volts[row] + (rows.Amperes[row] * sustained.Ohms)) / seriesGroups).ToArray();
        var read = Enumerable.Range(0, points)
            .Select(point => LineAt((double)point / (points - 1), 1.0 / (points - 1), charge, volts))
            .ToArray();
        var (rising, pooled) = NeverFalling.Of(read);
        return new(ElectricCharge.FromAmpereHours(total / 3600), OpenCircuitVoltage.FromTable(
            [.. Enumerable.Range(0, points).Select(point => (double)point / (points - 1))], rising), pooled);
    }

    /// <summary>The rows with a current above half the median, to the first one at the cut-off.</summary>
    private static List<int> Discharging(LogRows rows, double cutoffVolts)
    {
        var flowing = rows.Amperes.ToArray().Where(amperes => amperes > 0).ToArray();
        var least = flowing.Length == 0 ? double.PositiveInfinity
            : MathNet.Numerics.Statistics.ArrayStatistics.MedianInplace(flowing) / 2;
        var found = new List<int>();
        for (var row = 0; row < rows.Count; row++)
        {
            if (!(rows.Amperes[row] > least))
                continue;
            found.Add(row);
            if (rows.Volts[row] <= cutoffVolts)
                return found;
        }
        throw new ArgumentException(found.Count == 0 ? "No current out of the battery flows in the log."
            : $"The log ends before the voltage falls to {cutoffVolts:0.##} V, so that it does not tell what the battery holds.",
            nameof(rows));
    }

    /// <summary>Charge drawn before each of the rows, and up to the last one, A·s; each current holds until the next row of the
    /// log.</summary>
    private static (double[] Before, double Total) Drawn(LogRows rows, List<int> discharging)
    {
        var before = new double[discharging.Count];
        for (var place = 1; place < before.Length; place++)
        {
            var row = discharging[place - 1];
            before[place] = before[place - 1] + (rows.Amperes[row] * (rows.Seconds[row + 1] - rows.Seconds[row]));
        }
        if (!(before[^1] > 0))
            throw new ArgumentException("The voltage is at the cut-off from the first row on.", nameof(rows));
        return (before, before[^1]);
    }

    /// <summary>Value at a place of a straight line through what lies within a distance of it, the nearest counting
    /// most.</summary>
    private static double LineAt(double place, double distance, double[] charge, double[] volts)
    {
        var offsets = new List<double[]>();
        var values = new List<double>();
        var weights = new List<double>();
        for (var row = 0; row < charge.Length; row++)
        {
            var far = Math.Abs(charge[row] - place) / distance;
            if (far >= 1)
                continue;
            offsets.Add([charge[row] - place]);
            values.Add(volts[row]);
            weights.Add(Math.Pow(1 - (far * far * far), 3));
        }
        if (offsets.Count < 2 || offsets.TrueForAll(offset => offset[0] == offsets[0][0]))
        {
            throw new ArgumentException(
                $"At {place:P0} of the charge the log has fewer than two rows within {distance:P1}; a bench "
                + "test needs a row at least every minute or two, or a table of fewer points.", nameof(charge));
        }
        return WeightedRegression.Weighted([.. offsets], [.. values], [.. weights], intercept: true)[0];
    }
}
