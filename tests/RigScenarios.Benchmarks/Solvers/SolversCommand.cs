using System.Diagnostics;
using RigScenarios.Batteries.Batch;
using RigScenarios.Benchmarks.Sweeps;

namespace RigScenarios.Benchmarks.Solvers;

/// <summary>`solvers`: the batch beside general solvers on the same discharges and the same machine, each as loose as its ends
/// allow: the loosest tolerance with which no smaller part of them is right to 0.1 % than of the batch's.</summary>
internal static class SolversCommand
{
    public const string Usage = "solvers [CASES.json]";

    private const double CloseEnough = 1e-3;

    // Of a hundred thousand in the batch, of some hundred in plain Python.
    private const int Rounds = 100;
    private const int FewForPython = 15;

    // From loose to tight: the first one whose ends are close enough counts.
    private static readonly double[] Tolerances = [1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5, 1e-6];

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length > 1 || (arguments.Length == 1 && arguments[0].StartsWith('-')))
        {
            Console.Error.WriteLine($"'{arguments[^1]}' is not understood: {Usage}");
            return 2;
        }
        var all = arguments.Length == 0 ? InventedFamily.Scenarios : FamilyFile.Read(arguments[0]);
        BatchScenario[] scenarios = [.. all.Where(one => one.Pack.NearShare == 1)];
        if (scenarios.Length == 0)
        {
            Console.Error.WriteLine("These solvers have the equations with one well; here every battery has two.");
            return 2;
        }
        Console.WriteLine($"{scenarios.Length:N0} discharges, held against the single run");
        var ends = scenarios.AsParallel().AsOrdered().Select(one => EndComparison.Single(one).EndTime.Seconds).ToArray();
        var (batch, close) = OfBatch(scenarios, ends);
        using var folder = new WorkFolder();
        Compare(SolverProgram.Cvode(folder.Path), folder.Path, scenarios, ends, batch, close);
        var some = Enumerable.Range(0, scenarios.Length).Where(i => i % FewForPython == 0).ToArray();
        Compare(SolverProgram.SciPy(), folder.Path, [.. some.Select(i => scenarios[i])], [.. some.Select(i => ends[i])],
            batch, close);
        return 0;
    }

    private static (double Rate, double Close) OfBatch(BatchScenario[] scenarios, double[] ends)
    {
        var shared = new SharedCurves();
        var cases = scenarios.Select(one => BatchDischarge.CaseOf(one, shared)).ToArray();
        var found = new double[cases.Length];
        void Run() => BatchDischarge.Run(0, (long)cases.Length * Rounds, (first, some) =>
        {
            for (var i = 0; i < some.Length; i++)
                some[i] = cases[(first + i) % cases.Length];
        }, (first, some) =>
        {
            for (var i = 0; i < some.Length; i++)
                found[(first + i) % cases.Length] = some[i].Seconds;
        }, CancellationToken.None, LaneWidths.Widest);
        // A first round compiles the kernel.
        Run();
        using var process = Process.GetCurrentProcess();
        var before = process.UserProcessorTime;
        Run();
        process.Refresh();
        var rate = cases.Length * Rounds / (process.UserProcessorTime - before).TotalSeconds;
        var errors = Errors(found, ends);
        Tell("the batch", null, rate, errors, null);
        return (rate, Close(errors));
    }

    private static void Compare((SolverProgram? Program, string WhyNot) solver, string folder, BatchScenario[] scenarios,
        double[] ends, double batch, double close)
    {
        if (solver.Program is not { } program)
        {
            Console.WriteLine($"not run: {solver.WhyNot}");
            return;
        }
        var file = Path.Combine(folder, "cases.txt");
        File.WriteAllText(file, SolverCases.Text(scenarios));
        foreach (var tolerance in Tolerances)
        {
            var (found, seconds) = program.Run(file, tolerance);
            var (errors, rate) = (Errors(found, ends), scenarios.Length / seconds);
            Tell(program.Name, tolerance, rate, errors, batch / rate);
            if (Close(errors) >= close)
                return;
        }
    }

    private static double[] Errors(IReadOnlyList<double> found, double[] ends) =>
        [.. found.Zip(ends, (one, other) => other == 0 ? Math.Abs(one) : Math.Abs((one / other) - 1)).Order()];

    private static double Close(double[] errors) => errors.Count(error => error <= CloseEnough) / (double)errors.Length;

    private static void Tell(string name, double? tolerance, double rate, double[] errors, double? times) => Console.WriteLine(
        name + (tolerance is { } rtol ? $", relative tolerance {rtol:0e+0}" : "")
        + $": {rate:N0} a second of processor time; {Close(errors):P2} "
        + $"within 0.1 %, in the middle {errors[errors.Length / 2]:P4}, at most {errors[^1]:P2}"
        + (times is { } ratio ? $"; the batch does {ratio:N0} times as many" : ""));

    private sealed class WorkFolder : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("solvers-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}
