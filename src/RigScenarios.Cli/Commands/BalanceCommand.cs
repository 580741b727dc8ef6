using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;

namespace RigScenarios.Cli.Commands;

/// <summary><c>balance SCENARIO</c>: whether each build balances, what the hands hold, when the stand tips, what the joints
/// carry.</summary>
internal static class BalanceCommand
{
    public static Command Create()
    {
        var options = new ScenarioOptions();
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("balance",
            "Say whether each build balances, by what margin, what the stand and the joints carry, and what to move.");
        options.AddWithoutDayTo(command);
        command.Add(json);
        command.SetAction((parsed, _) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed);
            var builds = options.Builds(parsed, scenario).Select(build => ScenarioBalance.Of(scenario, build)).ToList();
            if (parsed.GetValue(json))
                Console.Out.WriteLine(BalanceJson.Text(scenario, builds));
            else
                BalanceText.Write(AnswerText.Console(), scenario, builds);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
