namespace RigScenarios.Numerics;

/// <summary>
/// All places on a line where a continuous function passes through zero. Between neighbouring samples of one sign the function is
/// searched for its turning
/// point where it comes near zero, so that two zeros close together are found too.
/// </summary>
internal static class LineZeros
{
    /// <summary>Part of the line to which a zero is found.</summary>
    private const double Tolerance = 1e-13;

    /// <summary>A turning point is looked for where the value is below this many times its change to the next samples.</summary>
    private const double Near = 4;

    public static List<double> Of(Func<double, double> function, ReadOnlySpan<double> samples)
    {
        var zeros = new List<double>();
        var values = new double[samples.Length];
        for (var i = 0; i < values.Length; i++)
            values[i] = function(samples[i]);
        var tolerance = Tolerance * (samples[^1] - samples[0]);
        for (var i = 1; i < values.Length; i++)
        {
            if (Inside(values[i - 1]) != Inside(values[i]))
                zeros.Add(RootBracket.Root(function, samples[i - 1], samples[i], tolerance));
            else if (i + 1 < values.Length && Inside(values[i]) == Inside(values[i + 1])
                && Turns(values[i - 1], values[i], values[i + 1]))
                AddPair(function, samples[i - 1], samples[i + 1], Inside(values[i]) ? 1 : -1, tolerance, zeros);
        }

        // A turn between the first two samples, or the last two, has a neighbour on one side only. Where it lies midway the two
        // are
        // equal, and only the sample beyond them shows how steep the function is.
        foreach (var (near, far, beyond) in ((int, int, int)[])[(0, 1, 2),
            (values.Length - 1, values.Length - 2, values.Length - 3)])
        {
            if (beyond < 0 || beyond >= values.Length || Inside(values[near]) != Inside(values[far]))
                continue;
            double size = Math.Abs(values[near]), rise = Math.Abs(values[far]) - size;
            // Equal ones at the right end were taken as a turn above.
            if ((near == 0 ? rise >= 0 : rise > 0) && size <= Near * Math.Max(rise, Math.Abs(values[beyond]) - size))
                AddPair(function, Math.Min(samples[near], samples[far]), Math.Max(samples[near], samples[far]),
                    Inside(values[near]) ? 1 : -1, tolerance, zeros);
        }

        zeros.Sort();
        return zeros;
    }

    // Zero counts as inside.
    private static bool Inside(double value) => value >= 0;

    private static bool Turns(double before, double here, double after)
    {
        double size = Math.Abs(here), fall = Math.Abs(before) - size, rise = Math.Abs(after) - size;
        return fall > 0 && rise >= 0 && size <= Near * Math.Max(fall, rise);
    }

    private static void AddPair(
        Func<double, double> function, double low, double high, int sign, double tolerance, List<double> zeros)
    {
        var turn = RootBracket.Minimum(at => sign * function(at), low, high, 1e-9 * (high - low));
        if (Inside(function(turn)) == sign > 0)
            return;
        zeros.Add(RootBracket.Root(function, low, turn, tolerance));
        zeros.Add(RootBracket.Root(function, turn, high, tolerance));
    }
}
