using System.CommandLine;
using RigScenarios.Cli.Answers;

namespace RigScenarios.Cli.Commands;

/// <summary><c>run SCENARIO</c>: the answer in words and a small table.</summary>
internal static class RunCommand
{
    public static Command Create()
    {
        var options = new ScenarioOptions();
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("run", "Say how long each build runs on its battery, why it stops, and what would help.");
        options.AddTo(command);
        command.Add(json);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed);
            var answers = Answer.All(scenario, options.Pairs(parsed, scenario), cancellation);
            if (parsed.GetValue(json))
                Console.Out.WriteLine(AnswerJson.Text(scenario, answers));
            else
                AnswerText.Write(AnswerText.Console(), scenario, answers);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
