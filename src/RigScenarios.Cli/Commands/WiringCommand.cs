using System.CommandLine;
using RigScenarios.Cli.Answers;

namespace RigScenarios.Cli.Commands;

/// <summary><c>wiring FILE</c>: the part of the answer that is between battery and devices.</summary>
internal static class WiringCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var command = new Command("wiring",
            "Is any limit passed between battery and devices? Outlets, fuses, cables, regulators and voltages, what is left "
                + "to each.");
        options.AddAnswerTo(command);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var answers = options.Answers(parsed, scenario, Today.Of(clock), cancellation);
            if (options.IsJson(parsed))
                Console.Out.WriteLine(WiringJson.Text(scenario, answers));
            else
                WiringText.Write(AnswerText.Console(), AnswerText.LeastFirst(answers), options.File(parsed));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
