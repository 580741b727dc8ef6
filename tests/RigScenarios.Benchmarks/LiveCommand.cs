using System.Diagnostics;
using System.Globalization;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Live;

namespace RigScenarios.Benchmarks;

/// <summary>`live NOTEBOOK PARAMETER LOW HIGH CHANGES`: moves one parameter to and fro, and tells times and memory.</summary>
internal static class LiveCommand
{
    public const string Usage = "live NOTEBOOK PARAMETER LOW HIGH CHANGES";

    public static async Task<int> RunAsync(string[] arguments)
    {
        if (arguments.Length != 5 || !TryNumber(arguments[2], out var low) || !TryNumber(arguments[3], out var high)
            || !int.TryParse(arguments[4], CultureInfo.InvariantCulture, out var changes) || changes < 20)
        {
            await Console.Error.WriteLineAsync($"Usage: {Usage}, with at least 20 changes, such as: live "
                + "notebooks/01-one-build-one-day.ipynb degreesColder -10 10 1000");
            return 2;
        }

        var notebook = NotebookFile.Load(arguments[0]);
        Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
        var watch = Stopwatch.StartNew();
        using var live = await NotebookCompiler.CompileAsync(notebook);
        var compiled = watch.Elapsed;
        var (session, reader) = (live.OpenSession(), new CountingReader());
        await session.RunAsync(new Dictionary<string, string>(), reader);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"compiled in {compiled.TotalMilliseconds:0} ms, first run "
            + $"{(watch.Elapsed - compiled).TotalMilliseconds:0} ms"));

        var times = new List<double>(changes);
        var (memoryBefore, setBefore) = (0L, 0L);
        for (var i = 0; i < changes; i++)
        {
            // The first tenth warms up: its memory is the base.
            if (i == changes / 10)
                (memoryBefore, setBefore) = Memory();
            var share = 0.5 - 0.5 * Math.Cos(2 * Math.PI * i * 7 / 100.0 + i * 0.001);
            var value = Math.Round(low + (high - low) * share, 3).ToString(CultureInfo.InvariantCulture);
            watch.Restart();
            var run = await session.RunAsync(new Dictionary<string, string> { [arguments[1]] = value }, reader);
            times.Add(watch.Elapsed.TotalMilliseconds);
            if (run.Failure is { } failure)
                throw new IOException(failure.ToString());
        }

        var (memoryAfter, setAfter) = Memory();
        var warm = times.Skip(changes / 10).Order().ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{changes} changes of {arguments[1]}: median {warm[warm.Count / 2]:0.0} ms, 95 of 100 "
            + $"within {warm[warm.Count * 95 / 100]:0.0} ms, {reader.Characters / changes / 1000.0:0} kB shown each"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"memory from change {changes / 10} to {changes}: managed "
            + $"{(memoryAfter - memoryBefore) / 1e6:+0.0;-0.0} MB, process {(setAfter - setBefore) / 1e6:+0.0;-0.0} MB, in "
                + $"all {setAfter / 1e6:0} MB"));
        return 0;
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    private static (long Managed, long Process) Memory()
    {
        using var process = Process.GetCurrentProcess();
        return (GC.GetTotalMemory(forceFullCollection: true), process.WorkingSet64);
    }

    private sealed class CountingReader : ILiveObserver
    {
        public long Characters { get; private set; }

        public void Parameters(IReadOnlyList<LiveParameter> parameters)
        {
            // Only what is shown counts.
        }

        public void Cell(int cell, IReadOnlyList<PagePart> parts) => Characters += parts.Sum(part => PartHtml.Of(part).Length);

        public void Progress(int cell, double fraction, string text)
        {
            // Only what is shown counts.
        }
    }
}
