using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Bench;

/// <summary>
/// Pulse test: resistances and time constant of a battery from a log in which a load is switched on or off.
/// </summary>
/// <remarks>
/// After a step ΔI the voltage falls by ΔI·(R0 + R1·(1 - exp(-x/τ))) + m·x, least squares: linear in R0, R1 and m for each τ
/// (separable least squares: G. H. Golub, V. Pereyra, SIAM J. Numer. Anal. 10 (1973) 413-432, from memory), τ from a grid and
/// then refined. Equations: docs/power-logs.md.
/// </remarks>
public static class PulseTest
{
    /// <summary>How long before a step its beginning is read, s.</summary>
    private const double BeforeSeconds = 10;

    private const int LeastRowsBefore = 2;
    private const int LeastRowsForLine = 4;
    private const int LeastRowsAfter = 8;
    private const int GridPoints = 81;
    private const double ShortestTimeConstant = 1;
    private const double RefinedTo = 1e-9;
    private const int Parameters = 4;

    /// <summary>How long after a step the voltage is looked at, if nothing else is said.</summary>
    public static Duration UsualWindow { get; } = Duration.FromSeconds(60);

    /// <summary>Finds all steps of the load that have rows enough before and behind them.</summary>
    /// <param name="rows">The log.</param>
    /// <param name="leastStep">The least change of current between two rows that counts as a step; above 0.</param>
    /// <param name="window">How long after a step the voltage is looked at, above 2 s; a minute if null.</param>
    /// <exception cref="ArgumentOutOfRangeException">Step or window lie outside their range.</exception>
    public static IReadOnlyList<PulseStep> Find(LogRows rows, ElectricCurrent leastStep, Duration? window = null)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Require.Positive(leastStep.Amperes, "A", nameof(leastStep));
        var windowSeconds = (window ?? UsualWindow).Seconds;
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(windowSeconds, 2 * ShortestTimeConstant, nameof(window));
        var places = StepPlaces(rows, leastStep.Amperes);
        var steps = new List<PulseStep>();
        for (var index = 0; index < places.Count; index++)
        {
            var before = index == 0 ? 0 : places[index - 1];
            var after = index + 1 < places.Count ? places[index + 1] : rows.Count;
            if (FindStep(rows, before, places[index], after, windowSeconds) is { } step)
                steps.Add(step);
        }
        return steps;
    }

    private static List<int> StepPlaces(LogRows rows, double leastAmperes)
    {
        var places = new List<int>();
        for (var row = 1; row < rows.Count; row++)
        {
            if (Math.Abs(rows.Amperes[row] - rows.Amperes[row - 1]) >= leastAmperes)
                places.Add(row);
        }
        return places;
    }

    private static PulseStep? FindStep(LogRows rows, int from, int step, int to, double window)
    {
        var at = rows.Seconds[step];
        while (rows.Seconds[from] < at - BeforeSeconds)
            from++;
        var end = step;
        while (end < to && rows.Seconds[end] < at + window)
            end++;
        if (step - from < LeastRowsBefore || end - step < LeastRowsAfter)
            return null;
        var (volts, varianceFactor) = VoltageBefore(rows, from, step);
        var change = Mean(rows.Amperes[step..end]) - Mean(rows.Amperes[from..step]);
        var response = new StepResponse(change, volts, rows.Seconds[step..end], rows.Volts[step..end]);
        var (timeConstant, found) = FindTimeConstant(response, window / 2);
        var (linear, squares) = response.Solve(timeConstant);
        var variance = squares / (response.Count - Parameters);
        var covariance = response.Covariance(timeConstant, linear[1]) * variance;
        return new(Duration.FromSeconds(at), ElectricCurrent.FromAmperes(change), ElectricResistance.FromOhms(linear[0]),
            ElectricResistance.FromOhms(linear[1]), Duration.FromSeconds(timeConstant), found,
            ElectricResistance.FromOhms(Math.Sqrt(covariance[0, 0] + (variance * varianceFactor / (change * change)))),
            ElectricResistance.FromOhms(Math.Sqrt(covariance[1, 1])),
            Duration.FromSeconds(Math.Sqrt(covariance[3, 3]) * timeConstant));
    }

    /// <summary>The voltage that a straight line through the rows before a step has at the step, and its variance over that of
    /// one row; the mean where the rows are too few for a line.</summary>
    private static (double Volts, double VarianceFactor) VoltageBefore(LogRows rows, int from, int step)
    {
        var count = step - from;
        if (count < LeastRowsForLine)
            return (Mean(rows.Volts[from..step]), 1.0 / count);
        var at = rows.Seconds[step];
        var line = Matrix<double>.Build.Dense(count, 2, (row, column) => column == 0 ? 1 : rows.Seconds[from + row] - at);
        var volts = Vector<double>.Build.DenseOfArray(rows.Volts[from..step].ToArray());
        return (line.QR().Solve(volts)[0], line.TransposeThisAndMultiply(line).Inverse()[0, 0]);
    }

    /// <summary>The time constant with the least squares; whether it lies inside what was tried.</summary>
    private static (double Seconds, bool Found) FindTimeConstant(StepResponse response, double longest)
    {
        var ends = Math.Log(longest / ShortestTimeConstant);
        double At(double place) => ShortestTimeConstant * Math.Exp(ends * place / (GridPoints - 1));
        var grid = Enumerable.Range(0, GridPoints).Select(point => response.Solve(At(point)).Squares).ToArray();
        var best = Array.IndexOf(grid, grid.Min());
        if (best is 0 or GridPoints - 1)
            return (At(best), false);
        var place = FindMinimum.OfScalarFunctionConstrained(point => response.Solve(At(point)).Squares, best - 1, best + 1,
            RefinedTo);
        return (At(place), true);
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }
}
