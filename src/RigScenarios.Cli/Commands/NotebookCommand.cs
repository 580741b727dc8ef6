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
    public static Command Create()
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
        var command = new Command("notebook", "Run a notebook and write it as one page that needs no network.") { file, set,
            output, executed };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
            RunAsync(parsed.GetRequiredValue(file), parsed.GetRequiredValue(set), parsed.GetRequiredValue(output),
                parsed.GetValue(executed), cancellation)));
        return command;
    }

    private static async Task<int> RunAsync(string file, string[] set, string output, string? executed,
        CancellationToken cancellation)
    {
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

    // From the folder of one's own rig the program's notebooks are not in sight; a file that is there goes first.
    private static string OwnOrShipped(string file)
    {
        var shipped = Path.Combine(AppContext.BaseDirectory, "notebooks", Path.GetFileName(file));
        return !File.Exists(file) && file == Path.GetFileName(file) && file.Length > 0 && File.Exists(shipped) ? shipped : file;
    }

    /// <summary>One line a cell on standard error. Written at once: a notebook takes the console for itself while a cell
    /// runs.</summary>
    private sealed class Lines : IProgress<NotebookProgress>
    {
        private readonly TextWriter console = Console.Error;

        public void Report(NotebookProgress value) =>
            console.WriteLine(ShownText.Of($"{value.Notebook}: cell {value.Cell} of {value.Cells}: {value.Text}"));
    }
}
