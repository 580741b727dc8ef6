using MathNet.Numerics.LinearAlgebra;

namespace RigScenarios.Fits;

/// <summary>Which unknowns the data cannot tell apart.</summary>
internal static class Separability
{
    // The data do say something of the one direction; of the other less than the prior, and far less than of the first; and both
    // unknowns have a part in it.
    private const double LeastStrong = 4;
    private const double LargestWeak = 1;
    private const double LeastRatio = 100;
    private const double LeastPart = 0.3;

    /// <summary>The pairs, from the information of the data alone.</summary>
    public static IReadOnlyList<InseparablePair> Pairs(FitModel model, double[] at, Matrix<double> information)
    {
        var pairs = new List<InseparablePair>();
        for (var a = 0; a < model.Main; a++)
        {
            for (var b = a + 1; b < model.Main; b++)
            {
                if (Pair(model, at, information, a, b) is { } pair)
                    pairs.Add(pair);
            }
        }

        return pairs;
    }

    private static InseparablePair? Pair(FitModel model, double[] at, Matrix<double> information, int a, int b)
    {
        var (priorA, priorB) = (model.Priors[a], model.Priors[b]);
        var (aa, bb, ab) = (
            priorA.Deviation * priorA.Deviation * information[a, a],
            priorB.Deviation * priorB.Deviation * information[b, b],
            priorA.Deviation * priorB.Deviation * information[a, b]);

        // Eigenvalues of a 2 x 2; the smaller from the product, for it may be a millionth of the larger.
        var strong = 0.5 * (aa + bb + Math.Sqrt(((aa - bb) * (aa - bb)) + (4 * ab * ab)));
        var weak = strong > 0 ? Math.Max(0, ((aa * bb) - (ab * ab)) / strong) : 0;
        if (!(strong >= LeastStrong && weak < LargestWeak && strong > LeastRatio * weak))
            return null;
        var (partA, partB) = ab == 0 ? (aa >= bb ? 1.0 : 0.0, aa >= bb ? 0.0 : 1.0) : (ab, strong - aa);
        var length = Math.Sqrt((partA * partA) + (partB * partB));
        (partA, partB) = (partA / length, partB / length);
        if (Math.Abs(partA) < LeastPart || Math.Abs(partB) < LeastPart)
            return null;
        var along = (partA * (at[a] - priorA.Mean) / priorA.Deviation) + (partB * (at[b] - priorB.Mean) / priorB.Deviation);
        return new InseparablePair(
            model.Unknowns[a], model.Unknowns[b], along * partA >= 0, along * partB >= 0, strong, weak);
    }
}
