using RigScenarios.Cli.Answers;
using RigScenarios.Files;

namespace RigScenarios.Cli.Commands;

/// <summary>What the program does when it is called with nothing: runs the demo scenario and says what to try next.</summary>
internal static class DemoCommand
{
    public static Task<int> RunAsync(CancellationToken cancellation)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "data", "scenarios", "winter-harbour.yaml");
        var scenario = ScenarioFile.Read(file);
        var answers = Answer.All(scenario, [.. scenario.Builds.Keys.SelectMany(build => scenario.Days.Keys.Select(day => (build, day)))], cancellation);
        AnswerText.Write(AnswerText.Console(), scenario, answers);
        return Task.FromResult(ExitCodes.Done);
    }
}
