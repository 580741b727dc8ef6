using System.CommandLine;
using RigScenarios.Files;
using RigScenarios.Sweeps;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary><c>sweep SCENARIO --over …</c>: one run for every value, as a table.</summary>
internal static class SweepCommand
{
    public static Command Create()
    {
        var options = new ScenarioOptions();
        var over = new Option<string[]>("--over")
        {
            Description = "A field and its range, once or twice. Example: --over \"days.day-one.ambient=-20 °C..20 °C:9\"",
            HelpName = "PATH=FROM..TO[:STEPS]",
            Required = true,
        };
        var output = new Option<string>("--out") { Description = "The table to write (CSV).", HelpName = "FILE", Required = true };
        var command = new Command("sweep", "Run a scenario over a range of one or two fields and write a table.");
        options.AddTo(command);
        command.Add(over);
        command.Add(output);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed);
            var pairs = options.Pairs(parsed, scenario);
            var (build, day) = pairs[0];
            if (pairs.Count > 1)
                Console.Out.WriteLine(Taken(build, day, [.. pairs.Select(pair => pair.Build).Distinct()], [.. pairs.Select(pair => pair.Day).Distinct()]));
            var axes = parsed.GetRequiredValue(over).Select(text => SweepAxis.Parse(scenario, text)).ToList();
            var table = Run(progress => GridSweep.Run(scenario, build, day, axes, progress, cancellation));
            var file = parsed.GetRequiredValue(output);
            TextFile.Write(file, table.ToCsv());
            Console.Out.WriteLine($"{table.Rows.Count} runs of the build \"{build}\" on the day \"{day}\" -> {file}");
            foreach (var notice in table.Notices)
                Console.Out.WriteLine($"Notice: {notice}");
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    // A table is of one build and one day: which one is told before anything else.
    private static string Taken(string build, string day, IReadOnlyList<string> builds, IReadOnlyList<string> days)
    {
        var others = new List<string>();
        if (builds.Count > 1)
            others.Add($"--build {string.Join(", ", builds.Where(name => name != build))}");
        if (days.Count > 1)
            others.Add($"--day {string.Join(", ", days.Where(name => name != day))}");
        return $"Taken: the build \"{build}\" on the day \"{day}\". Others: {string.Join("; ", others)}.";
    }

    private static SweepTable Run(Func<IProgress<double>, SweepTable> sweep)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        if (!console.Profile.Capabilities.Interactive || Console.IsErrorRedirected)
            return sweep(new Quiet());
        return console.Progress().AutoClear(true).Start(context =>
        {
            var task = context.AddTask("Sweeping", maxValue: 1);
            return sweep(new Shown(task));
        });
    }

    private sealed class Quiet : IProgress<double>
    {
        public void Report(double value)
        {
        }
    }

    private sealed class Shown(ProgressTask task) : IProgress<double>
    {
        public void Report(double value) => task.Value = Math.Max(task.Value, value);
    }
}
