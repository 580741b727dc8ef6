using System.Diagnostics;
using System.Globalization;
using RigScenarios.Tests.Mutations;

namespace RigScenarios.Benchmarks;

/// <summary>
/// `mutate COUNT [--seed S] [--from N]`: changes files of data/ by chance and takes each through the doors of the commands; tells
/// what no file may lead to, each kind once, and keeps the file that led to it.
/// </summary>
internal static class MutateCommand
{
    public const string Usage = "mutate COUNT [--seed S] [--from N]";

    public static int Run(string[] arguments)
    {
        if (!TryRead(arguments, out var cases, out var seed, out var from))
        {
            Console.Error.WriteLine($"Usage: {Usage}, such as: mutate 10000 --seed 7");
            return 2;
        }
        var data = Data();
        var mutator = new FileMutator(data);
        using var trial = new MutationTrial(data);
        var ends = new Dictionary<TrialEnd, int>();
        var faults = new Dictionary<string, (int Count, MutatedFile First, string Fault)>(StringComparer.Ordinal);
        var clock = Stopwatch.StartNew();
        for (var number = from; number < from + cases; number++)
        {
            var file = mutator.Make(seed, number);
            var result = trial.Run(file);
            ends[result.End] = ends.GetValueOrDefault(result.End) + 1;
            if (result.Fault is { } fault)
                Keep(faults, file, fault);
        }
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{cases} files of seed {seed}, from {from}, in {clock.Elapsed.TotalSeconds:0} s"));
        foreach (var (end, count) in ends.OrderBy(end => end.Key))
            Console.WriteLine($"  {end}: {count}");
        Console.WriteLine($"{faults.Count} kinds of faults");
        return faults.Count == 0 ? 0 : 1;
    }

    // Two faults are of one kind where the same place of the code met the same sort of trouble.
    private static void Keep(Dictionary<string, (int Count, MutatedFile First, string Fault)> faults,
        MutatedFile file, string fault)
    {
        var lines = fault.Split('\n');
        var kind = string.Join(' ', lines[0].Split(':')[0],
            lines.FirstOrDefault(line => line.Contains("RigScenarios", StringComparison.Ordinal)));
        if (faults.TryGetValue(kind, out var known))
        {
            faults[kind] = known with { Count = known.Count + 1 };
            return;
        }
        faults[kind] = (1, file, fault);
        var place = Path.Combine(Directory.CreateDirectory(Path.Combine("artifacts", "mutated")).FullName,
            $"{file.Seed}-{file.Number}-{Path.GetFileName(file.Name)}");
        File.WriteAllBytes(place, file.Bytes);
        Console.WriteLine($"{file}\n  kept as {place}\n  {string.Join("\n  ", lines.Take(8))}");
    }

    private static bool TryRead(string[] arguments, out int cases, out int seed, out int from)
    {
        (cases, seed, from) = (0, 1, 0);
        if (arguments.Length is not (1 or 3 or 5) || !int.TryParse(arguments[0], CultureInfo.InvariantCulture, out cases))
            return false;
        for (var i = 1; i < arguments.Length; i += 2)
        {
            if (!int.TryParse(arguments[i + 1], CultureInfo.InvariantCulture, out var value))
                return false;
            if (arguments[i] == "--seed")
                seed = value;
            else if (arguments[i] == "--from")
                from = value;
            else
                return false;
        }
        return cases > 0;
    }

    private static string Data()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "data", "parts")) || !File.Exists(Path.Combine(folder, "README.md")))
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("The folder data/ was not found.");
        return Path.Combine(folder, "data");
    }
}
