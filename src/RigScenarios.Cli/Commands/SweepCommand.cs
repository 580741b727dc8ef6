using System.CommandLine;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;

namespace RigScenarios.Cli.Commands;

/// <summary><c>sweep FILE --over …</c>: one run for every value, as a table.</summary>
internal static class SweepCommand
{
    /// <param name="clock">Gives today's date, for a battery's life without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var over = new Option<string[]>("--over")
        {
            Description = "A field and its range, once or twice. Example: --over \"days.day-one.ambient=-20 °C..20 °C:9\"",
            HelpName = "PATH=FROM..TO[:STEPS]",
            Required = true,
        };
        var output = new Option<string>("--out") { Description =
            "The table to write (CSV; docs/what-if.md says what its columns are).", HelpName = "FILE", Required = true };
        var command = new Command("sweep",
            "How long does it last for each value of one field or two? Runs one build through the days for each, and writes a "
                + "table.");
        options.AddTo(command);
        command.Add(over);
        command.Add(output);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var file = parsed.GetRequiredValue(output);
            OutputFile.Check("--out", file, "cold.csv", options.Inputs(parsed, scenario));
            var (builds, days) = (options.Builds(parsed, scenario), options.Days(parsed, scenario));
            var axes = parsed.GetRequiredValue(over).Select(text => SweepAxis.Parse(scenario, text)).ToList();
            if (builds.Count > 1)
                Paragraph.Write(AnswerText.Console(), Taken(builds, days));
            var table = LongWork.Run("Sweeping", progress => GridSweep.Run(scenario, builds[0], days, axes,
                progress, cancellation));
            TextFile.Write(file, table.ToCsv());
            Console.Out.WriteLine($"{table.Rows.Count} runs of the build \"{table.Build}\" on {Named(table.Days)} "
                + $"-> {ShownText.Of(file)}");
            foreach (var notice in table.Notices)
                Console.Out.WriteLine($"Notice: {notice}");
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    // A table is of one build: which one is told before anything else.
    private static string Taken(IReadOnlyList<string> builds, IReadOnlyList<string> days) =>
        $"Taken: the build \"{builds[0]}\" on {Named(days)}. Others: --build {string.Join(", ", builds.Skip(1))}.";

    private static string Named(IReadOnlyList<string> days) =>
        $"the {(days.Count == 1 ? "day" : "days")} {string.Join(", ", days.Select(day => $"\"{day}\""))}";
}
