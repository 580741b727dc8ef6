using System.CommandLine;
using RigScenarios.Scenarios;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Pages;

namespace RigScenarios.Cli.Commands;

/// <summary><c>notebook FILE</c>: runs a notebook with other values and writes it as one self-contained page.</summary>
internal static class NotebookCommand
{
    /// <param name="clock">Tells what day it is.</param>
    public static Command Create(TimeProvider clock)
    {
        var file = new Argument<string>("FILE") { Description =
            "The notebook (.ipynb); one that came with the program by its name alone, such as 03-the-cold.ipynb." };
        var set = new Option<string[]>("--set")
        {
            Description = "Another value for one of the notebook's parameters; may be given several times. Example: --set "
                + "ambientCelsius=-12",
            HelpName = "NAME=VALUE",
            DefaultValueFactory = _ => [],
        };
        var output = new Option<string>("--out") { Description = "The page to write (HTML).", HelpName = "PAGE",
            Required = true };
        var executed = new Option<string?>("--executed") { Description = "Also write the notebook with its results.",
            HelpName = "NOTEBOOK" };
        var live = new Option<bool>("--live") { Description = "Put the library into the page, too: its controls then answer, "
            + "without a network; the page has some MB more, which are told." };
        var cells = new Option<string?>("--notebook-files") { Description = "With --live: a published browser build with the "
            + "cells of notebooks in it, instead of the one beside the program or of making it from the sources.",
            HelpName = "DIR" };
        var command = new Command("notebook", "Run a notebook and write it as one page that needs no network.") { file, set,
            output, executed, live, cells };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() => RunAsync(new Asked(parsed.GetRequiredValue(file),
            parsed.GetRequiredValue(set), parsed.GetRequiredValue(output), parsed.GetValue(executed), parsed.GetValue(live),
            parsed.GetValue(cells)), clock, cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(Asked asked, TimeProvider clock, CancellationToken cancellation)
    {
        var (file, set, output, executed, live, cells) = asked;
        try
        {
            var values = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var (name, value) in ScenarioOptions.Changes(set))
                values[name] = value;
            var (page, notebookOut) = (Path.GetFullPath(output), executed is null ? null : Path.GetFullPath(executed));
            var notebook = NotebookFile.Load(OwnOrShipped(file));
            OutputFile.Check("--out", page, "page.html", file);
            if (notebookOut is not null)
                OutputFile.Check("--executed", notebookOut, "with-results.ipynb", file, page);
            if (live && executed is null)
                return await LivePageFile.WriteAsync(notebook, values, new(page, output, cells), clock, cancellation);
            if (live)
                return Refused("--executed: found together with --live. A page that answers and a notebook with its results are "
                    + "made in two runs: give the command once with each.");
            if (cells is not null)
                return Refused("--notebook-files: found without --live. Only a page whose controls answer takes a browser "
                    + "build.");
            var run = await NotebookRunner.RunAsync(notebook, values, new Lines(), cancellation);
            if (run.Failure is { } failure)
            {
                ErrorText.Lines($"error: {failure}");
                return ExitCodes.Failed;
            }
            await NotebookPage.Of(run).WriteAsync(page, cancellation);
            if (notebookOut is not null)
                await ExecutedNotebook.WriteAsync(run, notebookOut, cancellation);
            foreach (var answer in run.Answers)
                await Console.Out.WriteLineAsync(answer.Text);
            await Console.Out.WriteLineAsync($"Page: {ShownText.Of(output)}");
            return ExitCodes.Done;
        }
        catch (NotebookInputException exception)
        {
            foreach (var problem in exception.Problems)
                ErrorText.Line($"error: {problem}");
            return ExitCodes.BadInput;
        }
    }

    private static int Refused(string why)
    {
        ErrorText.Line($"error: {why}");
        return ExitCodes.BadInput;
    }

    // From the folder of one's own rig the program's notebooks are not in sight; a file that is there goes first.
    private static string OwnOrShipped(string file)
    {
        var shipped = Path.Combine(AppContext.BaseDirectory, "notebooks", Path.GetFileName(file));
        return !File.Exists(file) && file == Path.GetFileName(file) && file.Length > 0 && File.Exists(shipped) ? shipped : file;
    }

    /// <summary>What the command line says.</summary>
    private sealed record Asked(string File, string[] Set, string Output, string? Executed, bool Live, string? Cells);

    /// <summary>One line a cell on standard error. Written at once: a notebook takes the console for itself while a cell
    /// runs.</summary>
    private sealed class Lines : IProgress<NotebookProgress>
    {
        private readonly TextWriter console = Console.Error;

        public void Report(NotebookProgress value) =>
            console.WriteLine(ShownText.Of($"{value.Notebook}: cell {value.Cell} of {value.Cells}: {value.Text}"));
    }
}
