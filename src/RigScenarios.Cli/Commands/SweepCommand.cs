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
            var (build, day) = options.Pairs(parsed, scenario)[0];
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
