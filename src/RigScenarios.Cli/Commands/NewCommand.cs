using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Asking;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary><c>new FILE</c>: asks about one's own rig, writes it as a scenario, and gives the answer.</summary>
internal static class NewCommand
{
    private const string Ending = ".yaml";

    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The scenario file to write, such as my-rig.yaml." };
        var parts = new Option<string[]>("--parts")
        {
            Description = "Parts files or folders of them to choose from; those that come with the program if left out.",
            HelpName = "PATH",
            DefaultValueFactory = _ => [Path.Combine(AppContext.BaseDirectory, "data", "parts")],
        };
        var command = new Command("new",
            "Ask about your own rig, write it as a scenario file, and say whether it runs all day.") { file, parts };
        command.SetAction((parsed, cancellation) =>
            Guard.RunAsync(() => RunAsync(Terminal(), parsed.GetRequiredValue(file), parsed.GetRequiredValue(parts),
            Today.Of(TimeProvider.System), cancellation)));
        return command;
    }

    /// <summary>Asks and writes. The file is written whole and only after the last answer.</summary>
    internal static async Task<int> RunAsync(IAnsiConsole console, string file, IReadOnlyList<string> parts, DateOnly today,
        CancellationToken cancellation)
    {
        if (!console.Profile.Capabilities.Interactive)
        {
            ErrorText.Line("error: \"new\" asks questions, and there is no terminal to ask them in. Start it in a terminal "
                + "window "
                    + "without a pipe; "
                + "or describe the rig in the browser with: rigscenarios open; or copy a file of data/scenarios and change it.");
            return ExitCodes.BadInput;
        }
        if (Path.GetExtension(file).Length == 0)
            file += Ending;
        OutputFile.Check("FILE", file, "my-rig.yaml");
        var library = RigLibrary.Read(parts);
        if (File.Exists(file) && !await new ConfirmationPrompt(Markup.Escape($"{ShownText.Of(file)} is there already. Replace "
            + "it with a new "
            + "rig?")) { DefaultValue = false }.ShowAsync(console, cancellation))
        {
            console.WriteLine("Nothing was written.");
            return ExitCodes.Stopped;
        }
        console.MarkupLine("[bold]Your own rig[/]: a few questions, about ten minutes. Ctrl-C stops and leaves nothing behind.");
        var scenario = await AskAsync(console, new RigDialogue(console, library, today), cancellation);
        var answer = RigAnswer.Of(scenario, RigFrame.NewBuild, [RigFrame.NewDay], AnswerOptions.EndOnly,
            cancellation: cancellation);
        cancellation.ThrowIfCancellationRequested();
        ScenarioFile.Write(scenario, file);
        console.WriteLine();
        RunCommand.Write(console, [answer], quick: false, cancellation);
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]Written[/]: {ShownText.Of(file)}");
        console.WriteLine($"Run it again: rigscenarios run {ShellWord.Of(file)}");
        return ExitCodes.Done;
    }

    private static async Task<Scenario> AskAsync(IAnsiConsole console, RigDialogue dialogue, CancellationToken cancellation)
    {
        try
        {
            return await dialogue.AskAsync(cancellation);
        }
        catch (OperationCanceledException)
        {
            // A question that is stopped leaves the cursor hidden and in the middle of its line.
            console.Cursor.Show(true);
            console.WriteLine();
            throw;
        }
    }

    private static IAnsiConsole Terminal() => AnsiConsole.Create(new AnsiConsoleSettings
    {
        Interactive = Console.IsInputRedirected || Console.IsOutputRedirected ? InteractionSupport.No : InteractionSupport.Yes,
    });
}
