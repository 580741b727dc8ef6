using System.Globalization;
using RigScenarios.Fits;

namespace RigScenarios.Benchmarks.Coverage;

/// <summary>`coverage [TRIALS]`: how often the true value lies in the 95 % interval, as a table for docs/calibration.md.</summary>
internal static class CoverageCommand
{
    public const string Usage = "coverage [TRIALS]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        var trials = 400;
        if (arguments.Length > 1 || (arguments.Length == 1
            && !(int.TryParse(arguments[0], NumberStyles.None, CultureInfo.InvariantCulture, out trials) && trials > 0)))
        {
            Console.Error.WriteLine($"Accepted: a number of trials, such as 400: {Usage}");
            return 2;
        }

        var hits = Enumerable.Range(0, trials).SelectMany(number => CoverageTrials.Run(number, FitOptions.Default)).ToList();
        Console.WriteLine("| what | intervals | truth inside, % | one deviation of that, % | mean of ((estimate - truth)/se)² |");
        Console.WriteLine("| --- | --- | --- | --- | --- |");
        foreach (var group in hits.GroupBy(hit => hit.Unknown))
            Row(Words(group.Key), [.. group]);
        foreach (var group in hits.GroupBy(hit => hit.Design))
            Row(group.Key, [.. group]);
        Row("**those told to rest on what was assumed**", [.. hits.Where(hit => hit.IsOpen)]);
        Row("**in all**", hits);
        return 0;
    }

    private static string Words(UnknownKind unknown) => unknown switch
    {
        UnknownKind.Capacity => "**capacity**",
        UnknownKind.Resistance => "**resistance**",
        UnknownKind.Load => "**loads**",
        _ => "**warmth of the air**",
    };

    private static void Row(string what, List<CoverageHit> hits)
    {
        if (hits.Count == 0)
            return;
        var inside = hits.Average(hit => hit.Inside ? 1.0 : 0);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {what} | {hits.Count} | {100 * inside:F1} | {100 * Math.Sqrt(0.95 * 0.05 / hits.Count):F1} | "
            + $"{hits.Average(hit => hit.Pull * hit.Pull):F2} |"));
    }
}
