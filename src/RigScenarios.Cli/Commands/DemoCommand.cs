using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary>What the program does when it is called with nothing: runs the demo scenario, draws it, and says what to try
/// next.</summary>
internal static class DemoCommand
{
    private const string PageName = "rigscenarios-demo.html";

    public static async Task<int> RunAsync(CancellationToken cancellation)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "data", "scenarios", "winter-harbour.yaml");
        var scenario = ScenarioFile.Read(file);
        var answers = AnswerText.LeastFirst(
            scenario.Builds.Keys.Select(build => RigAnswer.Of(scenario, build, [], new AnswerOptions(),
                cancellation: cancellation)));
        var console = AnswerText.Console();
        RunCommand.Write(console, answers, quick: false, cancellation);
        await console.Status().StartAsync("Drawing the charts",
            _ => DemoPage.Of(answers[0], cancellation).WriteAsync(PageName, cancellation));
        console.WriteLine();
        console.MarkupLine($"[bold]Charts[/]: {Markup.Escape(PageName)} in this folder; open it in a browser, it needs no "
            + "network.");
        console.MarkupLine("[bold]Try next[/] (rigscenarios stands for: dotnet run -c Release --project src/RigScenarios.Cli "
            + "--)");
        // Straight to the console: a command that is broken over two lines can't be copied.
        var demo = Path.Combine(Shown("data"), "scenarios", "winter-harbour.yaml");
        var notebook = Path.Combine(Shown("notebooks"), "00-will-it-work.ipynb");
        Console.Out.WriteLine($"""
              Copy the demo file (beside data/parts, or say in it where the parts are), change what is yours, check it:
                {demo}
                rigscenarios check my-rig.yaml
              What if the battery were new?
                rigscenarios run {demo} --set "builds.tripod.battery.capacity-left=100 %"
              A notebook that tells it as a story:
                rigscenarios notebook {notebook} --out page.html
            """);
        return ExitCodes.Done;
    }

    /// <summary>A folder that came with the program: as seen from here if the checkout is here, else where it was
    /// installed.</summary>
    private static string Shown(string folder) =>
        Directory.Exists(folder) ? folder : Path.Combine(AppContext.BaseDirectory, folder);
}
