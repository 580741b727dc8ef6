using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Fits.Bench;

/// <summary>The voltage after a step of the load, and the curve through it for a given time constant. SI.</summary>
internal sealed class StepResponse
{
    private readonly double change;
    private readonly double[] seconds;
    private readonly Vector<double> fall;

    /// <param name="change">Change of the current, A.</param>
    /// <param name="before">Voltage at the step if it had not come, V.</param>
    /// <param name="times">Times of the rows, the first one that of the step, s.</param>
    /// <param name="volts">Their voltages, V.</param>
    public StepResponse(double change, double before, ReadOnlySpan<double> times, ReadOnlySpan<double> volts)
    {
        this.change = change;
        seconds = new double[times.Length];
        fall = Vector<double>.Build.Dense(times.Length);
        for (var row = 0; row < times.Length; row++)
            (seconds[row], fall[row]) = (times[row] - times[0], before - volts[row]);
    }

    public int Count => seconds.Length;

    /// <summary>R0, R1 and the slope m for a time constant, and the sum of the squared misses.</summary>
    public (Vector<double> Linear, double Squares) Solve(double timeConstant)
    {
        var matrix = Columns(timeConstant);
        var linear = matrix.QR().Solve(fall);
        var misses = fall - (matrix * linear);
        return (linear, misses * misses);
    }

    /// <summary>Covariance of R0, R1, m and ln τ, for a variance of 1 in the voltage.</summary>
    public Matrix<double> Covariance(double timeConstant, double resistance1)
    {
        var all = Columns(timeConstant).InsertColumn(3, Vector<double>.Build.Dense(Count, row =>
            -change * resistance1 * Math.Exp(-seconds[row] / timeConstant) * seconds[row] / timeConstant));
        return all.TransposeThisAndMultiply(all).Inverse();
    }

    private Matrix<double> Columns(double timeConstant) => Matrix<double>.Build.Dense(Count, 3, (row, column) => column switch
    {
        0 => change,
        1 => change * (1 - Math.Exp(-seconds[row] / timeConstant)),
        _ => seconds[row],
    });
}
