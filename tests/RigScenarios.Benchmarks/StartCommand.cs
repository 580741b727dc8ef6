using System.Diagnostics;
using System.Globalization;

namespace RigScenarios.Benchmarks;

/// <summary>`start [TIMES [COMMAND…]]`: how long a command takes from a cold start, beside a program that prints one
/// word.</summary>
internal static class StartCommand
{
    public const string Usage = "start [TIMES [COMMAND...]]";

    private static readonly string[][] Usual =
    [
        ["run", "data/scenarios/winter-harbour.yaml"],
        ["run", "data/scenarios/winter-harbour.yaml", "--quick"],
        ["check", "data/scenarios/winter-harbour.yaml"],
    ];

    public static int Run(string[] arguments)
    {
        var times = 15;
        if (arguments.Length > 0 && (!int.TryParse(arguments[0], NumberStyles.None, CultureInfo.InvariantCulture, out times)
            || times is < 1 or > 1000))
        {
            Console.Error.WriteLine($"Usage: {Usage}, such as: start 15 run data/scenarios/winter-harbour.yaml");
            return 2;
        }
        var commands = arguments.Length > 1 ? [arguments[1..]] : Usual;
        var root = Root();
        OneWordProgram.Dotnet(root, "build", "-c", "Release", Path.Combine("src", "RigScenarios.Cli"), "--nologo");
        var program = Path.Combine(root, "artifacts", "bin", "RigScenarios.Cli", "release",
            OperatingSystem.IsWindows() ? "RigScenarios.Cli.exe" : "RigScenarios.Cli");
        using var word = OneWordProgram.Build();
        Console.WriteLine($"{times} starts of each, by turns; wall clock: median; processor: mean of user and system time");
        foreach (var command in commands)
            Compare(word, () => new ProcessStartInfo(program, command) { WorkingDirectory = root },
                string.Join(' ', command), times);
        return 0;
    }

    private static void Compare(OneWordProgram word, Func<ProcessStartInfo> command, string name, int times)
    {
        // The first start reads the files from the disk; it is not counted.
        OneWordProgram.Finish(new ProcessStartInfo(word.Command));
        OneWordProgram.Finish(command());
        var (plain, own) = (new List<(double Wall, double? Processor)>(), new List<(double Wall, double? Processor)>());
        for (var i = 0; i < times; i++)
        {
            plain.Add(Measured(new ProcessStartInfo(word.Command)));
            own.Add(Measured(command()));
        }
        var (plainWall, ownWall) = (Median(plain), Median(own));
        var (plainProcessor, ownProcessor) = (plain.Average(run => run.Processor), own.Average(run => run.Processor));
        Tell("one word", plainWall, plainProcessor, word.MethodsCompiled(new ProcessStartInfo(word.Command)));
        Tell(name, ownWall, ownProcessor, word.MethodsCompiled(command()));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  {ownWall / plainWall:0.0} times as long, {Text(ownProcessor / plainProcessor, "0.0")} times the processor"));
    }

    private static void Tell(string name, double wall, double? processor, int methods) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{name}: {wall:0} ms, processor {Text(processor, "0")} ms, {methods} methods compiled while it runs"));

    private static string Text(double? number, string format) =>
        number?.ToString(format, CultureInfo.InvariantCulture) ?? "unknown";

    private static (double Wall, double? Processor) Measured(ProcessStartInfo start)
    {
        var (before, clock) = (OfChildren(), Stopwatch.StartNew());
        OneWordProgram.Finish(start);
        return (clock.Elapsed.TotalMilliseconds, OfChildren() - before);
    }

    /// <summary>The processor time of all finished children, in ms; null where the system doesn't tell it in this way. It comes
    /// in
    /// steps of 10 ms, so only a mean over many runs says something.</summary>
    private static double? OfChildren()
    {
        const string Stat = "/proc/self/stat";
        if (!File.Exists(Stat))
            return null;
        // proc(5): after the name in brackets the fields are counted from the third; 16 and 17 are the children's, in 1/100 s.
        var text = File.ReadAllText(Stat);
        var fields = text[(text.LastIndexOf(')') + 2)..].Split(' ');
        return 10 * (double.Parse(fields[13], CultureInfo.InvariantCulture)
            + double.Parse(fields[14], CultureInfo.InvariantCulture));
    }

    private static double Median(List<(double Wall, double? Processor)> runs) =>
        runs.Select(run => run.Wall).Order().ElementAt(runs.Count / 2);

    private static string Root()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "RigScenarios.sln")))
                return folder.FullName;
        }
        throw new IOException("This program is not in its checkout, so the command line can't be built.");
    }
}
