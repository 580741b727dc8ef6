using System.Globalization;
using RigScenarios.Fits;

namespace RigScenarios.Benchmarks.Coverage;

/// <summary>`coverage [TRIALS [DEVIATIONS]]`: how often the true value lies in the 95 % interval, as a table for
/// docs/calibration.md; of batteries drawn from what is believed, or always so many deviations above it.</summary>
internal static class CoverageCommand
{
    public const string Usage = "coverage [TRIALS [DEVIATIONS]]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        var trials = 400;
        double? away = null;
        if (arguments.Length > 2
            || (arguments.Length > 0 && !(int.TryParse(arguments[0], CultureInfo.InvariantCulture, out trials) && trials > 0))
            || (arguments.Length > 1 && (away = Number(arguments[1])) is null))
        {
            Console.Error.WriteLine($"Accepted: a number of trials, such as 400, and deviations, such as 1.5: {Usage}");
            return 2;
        }

        var hits = Enumerable.Range(0, trials)
            .SelectMany(number => CoverageTrials.Run(number, FitOptions.Default, away)).ToList();
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

    private static double? Number(string text) =>
        double.TryParse(text, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;

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
