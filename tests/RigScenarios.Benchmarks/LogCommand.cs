using System.Diagnostics;
using System.Globalization;
using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;
using RigScenarios.Tests.Shared;

namespace RigScenarios.Benchmarks;

/// <summary>`log ROWS`: how long a log of so many rows takes from its file to the fitted battery, and that many rows are no more
/// certain than a hundred.</summary>
internal static class LogCommand
{
    public const string Usage = "log ROWS [SEED]";

    private const int Fewest = 1000;
    private const int FewRows = 100;

    public static int Run(ReadOnlySpan<string> arguments)
    {
        var seed = 1;
        if (arguments.Length is not (1 or 2) || !int.TryParse(arguments[0], CultureInfo.InvariantCulture, out var count)
            || count is < Fewest or > PowerLogFile.MostRows
            || (arguments.Length == 2 && !int.TryParse(arguments[1], CultureInfo.InvariantCulture, out seed)))
        {
            Console.Error.WriteLine($"A number of rows from {Fewest} to {PowerLogFile.MostRows} is needed: {Usage}");
            return 2;
        }
        var rows = InventedLog.Of(count, seed);
        var path = Path.GetTempFileName();
        try
        {
            using (var text = new StreamWriter(path))
                InventedLog.Write(rows, text);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"an invented log of {count:N0} rows, seed {seed}, {new FileInfo(path).Length / 1e6:F1} MB"));
            var watch = Stopwatch.StartNew();
            var log = PowerLogFile.Read(path);
            Tell($"read: {log.Counts.Rows:N0} rows, {log.Counts.Dropped} left out", watch);
            var bins = LogBins.Of(log.Rows, InventedLog.Battery.Capacity);
            Tell($"in bins: {bins.Count:N0} of {bins.WidthSeconds:F1} s, {bins.Blocks.Count} blocks", watch);
            var fit = Fit(log.Rows);
            Tell("fitted, intervals checked", watch);
            var few = Fit(InventedLog.Thinned(rows, count / FewRows));
            Say(fit, few, UnknownKind.Capacity, "capacity left", InventedLog.TrueCapacity);
            Say(fit, few, UnknownKind.Resistance, "resistance over new", InventedLog.TrueResistance);
            return 0;
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>The battery by the log alone: as new, full at the begin.</summary>
    private static FitResult Fit(LogRows rows) => BatteryFit.Find(new FitProblem(InventedLog.Battery,
        FitPriors.Of(Age.New) with { Load = null }, [], [new PowerLog { Id = "log", Rows = rows, Ambient = InventedLog.Air }]));

    private static void Tell(string what, Stopwatch watch)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{watch.Elapsed.TotalSeconds,7:F2} s  {what}"));
        watch.Restart();
    }

    private static void Say(FitResult fit, FitResult few, UnknownKind kind, string name, double truth)
    {
        var found = fit[kind];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name} {found.Value:F3} ({found.Low:F3} to {found.High:F3}), made with {truth:F3}; standard error "
            + $"{found.StandardError:F4}, from {FewRows} rows of the same discharge {few[kind].StandardError:F4}"));
    }
}
