using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary>What the program does when it is called with nothing: runs the demo scenario, draws it, and says what to try next.</summary>
internal static class DemoCommand
{
    private const string PageName = "rigscenarios-demo.html";

    public static async Task<int> RunAsync(CancellationToken cancellation)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "data", "scenarios", "winter-harbour.yaml");
        var scenario = ScenarioFile.Read(file);
        var answers = Answer.All(scenario, [.. scenario.Builds.Keys.SelectMany(build => scenario.Days.Keys.Select(day => (build, day)))], cancellation);
        var console = AnswerText.Console();
        AnswerText.Write(console, scenario, answers);
        await console.Status().StartAsync("Drawing the charts", _ => DemoPage.Of(scenario, answers[0], cancellation).WriteAsync(PageName, cancellation));
        var local = Path.GetRelativePath(Environment.CurrentDirectory, file);
        console.WriteLine();
        console.MarkupLine($"[bold]Charts[/]: {Markup.Escape(PageName)} in this folder; open it in a browser, it needs no network.");
        console.MarkupLine("[bold]Try next[/] (rigscenarios stands for: dotnet run -c Release --project src/RigScenarios.Cli --)");
        console.WriteLine("  Copy the demo file, change what is yours, and let it be checked:");
        console.WriteLine($"    {local}");
        console.WriteLine("    rigscenarios check my-rig.yaml");
        console.WriteLine("  What if the battery were warm, or newer?");
        console.WriteLine("    rigscenarios run data/scenarios/winter-harbour.yaml --set \"builds.tripod.battery.capacity-left=100 %\"");
        console.WriteLine("  A notebook that tells it as a story:");
        console.WriteLine("    rigscenarios notebook notebooks/01-one-build-one-day.ipynb --out page.html");
        return ExitCodes.Done;
    }
}
