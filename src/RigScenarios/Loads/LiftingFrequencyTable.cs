namespace RigScenarios.Loads;

/// <summary>Table 5 of the manual of the revised lifting equation (NIOSH 94-110, 1994): the frequency multiplier (second-hand,
/// located by page).</summary>
internal static class LiftingFrequencyTable
{
    private static readonly double[] PerMinute = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

    private static readonly double[][] Raised =
    [
        [1.00, .97, .94, .91, .88, .84, .80, .75, .70, .60, .52, .45, .41, .37, .34, .31, .28],
        [.95, .92, .88, .84, .79, .72, .60, .50, .42, .35, .30, .26, .23, .21, 0, 0, 0],
        [.85, .81, .75, .65, .55, .45, .35, .27, .22, .18, .15, .13, 0, 0, 0, 0, 0],
    ];

    /// <summary>How many rows are above zero with the hands below 75 cm; from there on it is 0.</summary>
    private static readonly int[] LowRows = [14, 12, 10];

    /// <summary>The multiplier.</summary>
    /// <param name="perMinute">Lifts a minute.</param>
    /// <param name="duration">How long it goes on.</param>
    /// <param name="raised">Whether the hands are at 75 cm or higher.</param>
    public static double Of(double perMinute, LiftingDuration duration, bool raised)
    {
        if (!(perMinute > PerMinute[0]))
            return At(0, duration, raised);
        for (var row = 1; row < PerMinute.Length; row++)
        {
            if (perMinute > PerMinute[row])
                continue;
            var part = (perMinute - PerMinute[row - 1]) / (PerMinute[row] - PerMinute[row - 1]);
            return ((1 - part) * At(row - 1, duration, raised)) + (part * At(row, duration, raised));
        }

        return 0;
    }

    private static double At(int row, LiftingDuration duration, bool raised) =>
        raised || row < LowRows[(int)duration] ? Raised[(int)duration][row] : 0;
}
