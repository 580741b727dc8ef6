using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The set fitted again without the discharges at one temperature, to predict those: least squares of the errors of charge,
/// energy and voltage on the way (30 mV count as 1 %), with the project's open-circuit voltage and with the cell's own together,
/// by Gauss and Newton with Marquardt's damping. Six values are free: tauX (by its logarithm), EX, kappa at -20 and at 10 °C,
/// sustained resistance, its activation energy. The near share is not fitted, and the capacity comes from C/20 at 25 °C always.
/// </summary>
/// <param name="measured">All discharges.</param>
/// <param name="folder">The folder of the measured data.</param>
internal sealed class LeftOutFit(IReadOnlyList<MeasuredDischarge> measured, string folder)
{
    private const int Points = 100;
    private const double VoltsPerPercent = 0.03;
    private const int MostSteps = 40;

    private readonly OwnOpenCircuit own = OwnOpenCircuit.Read(folder);
    private readonly Dictionary<MeasuredDischarge, IReadOnlyList<double>> volts =
        measured.ToDictionary(one => one, one => MeasuredCourse.Of(folder, one));

    // So far each value is moved to see what it does, and no step goes further than ten of these at once.
    private static readonly double[] Steps = [0.05, 0.5, 0.002, 0.002, 0.001, 0.25];

    /// <summary>The values that come out.</summary>
    /// <param name="leftOut">Setting of the chamber that is left out, °C; null to leave out none.</param>
    public CellSet Without(double? leftOut)
    {
        List<MeasuredDischarge> kept = [.. measured.Where(one => one.ChamberCelsius != leftOut)];
        var at = Values(CellSet.Now);
        var errors = Errors(kept, at);
        var damping = 1e-3;
        for (var step = 0; step < MostSteps; step++)
        {
            var slopes = Slopes(kept, at, errors);
            var squares = slopes.TransposeThisAndMultiply(slopes);
            var downhill = -slopes.TransposeThisAndMultiply(errors);
            var moved = squares.Add(Matrix<double>.Build.DiagonalOfDiagonalVector(squares.Diagonal() * damping)).Solve(downhill)
                .PointwiseMinimum(10).PointwiseMaximum(-10);
            var there = at + moved.PointwiseMultiply(Vector<double>.Build.Dense(Steps));
            var then = Errors(kept, there);
            if (then.DotProduct(then) < errors.DotProduct(errors))
            {
                var gain = 1 - (then.DotProduct(then) / errors.DotProduct(errors));
                (at, errors, damping) = (there, then, damping / 5);
                if (gain < 1e-5)
                    break;
            }
            else if ((damping *= 5) > 1e6)
            {
                break;
            }
        }

        return Set(at);
    }

    /// <summary>Sum of the squares of the errors, in %, over the discharges that a fit has seen.</summary>
    public double Squares(CellSet set, double? leftOut)
    {
        var errors = Errors([.. measured.Where(one => one.ChamberCelsius != leftOut)], Values(set));
        return errors.DotProduct(errors);
    }

    /// <summary>The set with one of its six values moved by so many steps.</summary>
    public static CellSet Moved(CellSet set, int value, double steps)
    {
        var at = Values(set);
        at[value] += steps * Steps[value];
        return Set(at);
    }

    /// <summary>How many values are free.</summary>
    public static int Free => Steps.Length;

    private Matrix<double> Slopes(IReadOnlyList<MeasuredDischarge> kept, Vector<double> at, Vector<double> errors)
    {
        var columns = Enumerable.Range(0, Steps.Length).Select(i =>
        {
            var moved = at.Clone();
            moved[i] += Steps[i];
            return Errors(kept, moved) - errors;
        });
        return Matrix<double>.Build.DenseOfColumnVectors(columns);
    }

    private Vector<double> Errors(IReadOnlyList<MeasuredDischarge> kept, Vector<double> at)
    {
        var models = new[] { null, own }.Select(voltage => new MeasuredCellModel(measured, Set(at), own: voltage)).ToList();
        return Vector<double>.Build.DenseOfEnumerable(models.SelectMany(model =>
            kept.AsParallel().AsOrdered().Select(one => Errors(model, one)).SelectMany(errors => errors)));
    }

    private List<double> Errors(MeasuredCellModel model, MeasuredDischarge one)
    {
        var run = model.Run(one, Points);
        var course = MeasuredCourse.Of(run, one);
        var weight = VoltsPerPercent * Math.Sqrt(course.Count);
        return
        [
            100 * ((run.Energies.ChargeDrawn.AmpereHours / one.AmpereHours) - 1),
            100 * ((run.Energies.Delivered.WattHours / one.WattHours) - 1),
            .. course.Zip(volts[one], (predicted, real) => (predicted - real) / weight),
        ];
    }

    private static Vector<double> Values(CellSet set) => Vector<double>.Build.Dense(
    [
        Math.Log(set.ExchangeSeconds), set.ExchangeKilojoules, set.Usable[0].Fraction, set.Usable[1].Fraction,
        set.OhmAmpereHours, set.ActivationKilojoules,
    ]);

    private static CellSet Set(Vector<double> at) => CellSet.Now with
    {
        ExchangeSeconds = Math.Exp(at[0]),
        ExchangeKilojoules = at[1],
        Usable = [(CellSet.Now.Usable[0].Celsius, at[2]), (CellSet.Now.Usable[1].Celsius, at[3]), CellSet.Now.Usable[2]],
        OhmAmpereHours = at[4],
        ActivationKilojoules = at[5],
    };
}
