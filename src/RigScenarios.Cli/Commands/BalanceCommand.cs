using System.CommandLine;
using RigScenarios.Cli.Answers;

namespace RigScenarios.Cli.Commands;

/// <summary><c>balance FILE</c>: the part of the answer that is about head, shoulder or hand, tripod and joints.</summary>
internal static class BalanceCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var command = new Command("balance",
            "Does it balance, and does it stand? Head, shoulder or hand, tripod, wind and joints, what is left, where to set "
                + "what.");
        options.AddAnswerTo(command);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var answers = options.Answers(parsed, scenario, Today.Of(clock), cancellation);
            if (options.IsJson(parsed))
                Console.Out.WriteLine(BalanceJson.Text(scenario, answers));
            else
                BalanceText.Write(AnswerText.Console(), answers, options.File(parsed));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
