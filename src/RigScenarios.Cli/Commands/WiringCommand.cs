using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;

namespace RigScenarios.Cli.Commands;

/// <summary><c>wiring SCENARIO</c>: what fails first between the battery and the devices, what is left to each limit, what would fix it.</summary>
internal static class WiringCommand
{
    public static Command Create()
    {
        var options = new ScenarioOptions();
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("wiring", "Say what fails first between battery and devices, what is left to each limit of outlets, fuses, cables and regulators, and what would fix it.");
        options.AddTo(command);
        command.Add(json);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed);
            var answers = options.Pairs(parsed, scenario).Select(pair => ScenarioWiring.Of(scenario, pair.Build, pair.Day, cancellation)).ToList();
            if (parsed.GetValue(json))
                Console.Out.WriteLine(WiringJson.Text(scenario, answers));
            else
                WiringText.Write(AnswerText.Console(), scenario, answers);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
