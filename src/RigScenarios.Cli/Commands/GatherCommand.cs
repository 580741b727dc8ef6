using System.CommandLine;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Tables;

namespace RigScenarios.Cli.Commands;

/// <summary><c>gather PARTS… --out TABLE</c>: the parts of a sweep that ran on several machines, as one table.</summary>
internal static class GatherCommand
{
    /// <param name="clock">Gives the time that is over.</param>
    public static Command Create(TimeProvider clock)
    {
        var files = new Argument<string[]>("PARTS")
        {
            Description = "The tables that \"sweep --part\" wrote, in any order; or one whole table, for the other "
                + "kind of it.",
            Arity = ArgumentArity.OneOrMore,
        };
        var output = new Option<string>("--out") { Description = "The table to write: .csv or .parquet.", HelpName = "FILE",
            Required = true };
        var command = new Command("gather",
            "Puts the parts of a sweep together, after making sure that all are there, once each, of one scenario, command and "
                + "version. The table is byte for byte the one that a single run writes.") { files, output };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(async () =>
        {
            var paths = parsed.GetRequiredValue(files);
            var file = SweepTableFile.Of("--out", parsed.GetRequiredValue(output),
                paths.Concat(paths.Select(path => CsvTable.AboutFile(path))));
            var (parts, problems) = (new List<TablePart>(), new List<Diagnostic>());
            foreach (var path in paths)
            {
                var (part, wrong) = await TablePartFile.TryOpenAsync(path, cancellation);
                problems.AddRange(wrong);
                if (part is not null)
                    parts.Add(part);
            }
            if (problems.Count > 0)
                throw new ScenarioProblemsException(problems);
            var table = GatheredTable.Of(parts);
            var rows = table.Head.Count;
            await WatchedWork.RunAsync("Gathering", new SweepPace(0, rows, clock), clock,
                progress => file.WriteAsync(table, progress, cancellation));
            Console.Out.WriteLine($"{rows} runs from {parts.Count} {(parts.Count == 1 ? "table" : "parts")} "
                + $"-> {ShownText.Of(file.Path)}");
            return ExitCodes.Done;
        }));
        return command;
    }
}
