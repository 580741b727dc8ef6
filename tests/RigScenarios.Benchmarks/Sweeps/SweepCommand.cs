using System.Diagnostics;
using System.Globalization;
using RigScenarios.Batteries.Batch;
using UnitsNet;

namespace RigScenarios.Benchmarks.Sweeps;

/// <summary>`sweep`: how many discharges a second the batch does, how far its ends lie from those of the single
/// run.</summary>
internal static class SweepCommand
{
    public const string Usage = "sweep [CASES.json] [--scenarios N] [--lanes 1|4|8]";

    private const int SampleSize = 1521;

    public static int Run(ReadOnlySpan<string> arguments)
    {
        string? path = null;
        var count = 500_000L;
        var width = LaneWidths.Widest;
        for (var i = 0; i < arguments.Length; i++)
        {
            if (arguments[i] == "--scenarios" && i + 1 < arguments.Length
                && long.TryParse(arguments[i + 1], CultureInfo.InvariantCulture, out count) && count > 0)
            {
                i++;
            }
            else if (arguments[i] == "--lanes" && i + 1 < arguments.Length && arguments[i + 1] is "1" or "4" or "8")
            {
                width = arguments[++i] switch { "1" => LaneWidth.One, "4" => LaneWidth.Four, _ => LaneWidth.Eight };
            }
            else if (path is null && !arguments[i].StartsWith('-'))
            {
                path = arguments[i];
            }
            else
            {
                Console.Error.WriteLine($"'{arguments[i]}' is not understood: {Usage}");
                return 2;
            }
        }

        var scenarios = path is null ? InventedFamily.Scenarios : FamilyFile.Read(path);
        var shared = new SharedCurves();
        var cases = scenarios.Select(one => BatchDischarge.CaseOf(one, shared)).ToArray();
        Say($"{scenarios.Count:N0} different scenarios, {(path is null ? "an invented family" : path)}, {width} side by side, "
            + $"{cases.Count(one => one.NearShare < 1):N0} of them with two wells");
        TellErrors(scenarios, cases, width);
        TellSpeed(cases, count, width);
        return 0;
    }

    private static void TellErrors(IReadOnlyList<BatchScenario> scenarios, BatchCase[] cases, LaneWidth width)
    {
        var sample = Enumerable.Range(0, Math.Min(SampleSize, cases.Length)).ToArray();
        var ends = new BatchCaseEnd[cases.Length];
        BatchDischarge.Run(0, cases.Length, Source(cases), (first, some) => some.CopyTo(ends.AsSpan((int)first)),
            CancellationToken.None, width);
        var compared = sample.AsParallel().AsOrdered().Select(i => EndComparison.Of(scenarios[i], ends[i])).ToArray();
        var errors = compared.Select(one => one.Error).Order().ToArray();
        Say($"against the single run, on {sample.Length:N0}: end time off by {errors[errors.Length / 2]:P5} in the middle, "
            + $"at most {errors[^1]:P4}; within 0.1 % {errors.Count(error => error <= 1e-3):N0}");
        var grazing = compared.Where(one => one.Grazes).ToArray();
        var other = compared.Where(one => !one.Grazes).ToArray();
        Say($"graze a limit (resistances and capacity 0.01 % off move the end by more than 0.1 %): {grazing.Length:N0}, "
            + $"at most {Most(grazing):P3} off; of the others beyond 0.5 %: {other.Count(one => one.Error > 5e-3):N0}, "
            + $"at most {Most(other):P4} off");
        Say($"another end cause: {compared.Count(one => one.OtherCause):N0}; marked as grazing by the batch itself: "
            + $"{compared.Count(one => one.Marked):N0}, unmarked of those that graze: {grazing.Count(one => !one.Marked):N0}");

        static double Most(EndComparison[] some) => some.Select(one => one.Error).DefaultIfEmpty(0).Max();
    }

    private static void TellSpeed(BatchCase[] cases, long count, LaneWidth width)
    {
        // A first round compiles the kernel.
        BatchDischarge.Run(0, Math.Min(count, 20_000), Source(cases), (_, _) => { }, CancellationToken.None, width);
        var process = Process.GetCurrentProcess();
        var before = process.UserProcessorTime;
        var watch = Stopwatch.StartNew();
        var seconds = 0.0;
        BatchDischarge.Run(0, count, Source(cases),
            (_, ends) =>
            {
                foreach (var end in ends)
                    seconds += end.Seconds;
            },
            CancellationToken.None, width);
        process.Refresh();
        var used = (process.UserProcessorTime - before).TotalSeconds;
        Say($"{count:N0} scenarios, {seconds / count:N0} s discharged on average");
        Say($"{count / watch.Elapsed.TotalSeconds:N0} scenarios a second on {Environment.ProcessorCount} cores by the clock, "
            + $"{count / used:N0} a second of processor time, which is what one core does");
    }

    // The cases again and again, none of them twice in a row.
    private static BatchSource Source(BatchCase[] cases) => (first, some) =>
    {
        for (var i = 0; i < some.Length; i++)
            some[i] = cases[(first + i) % cases.Length];
    };

    private static void Say(string text) => Console.WriteLine(text);
}
