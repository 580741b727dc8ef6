using System.CommandLine;
using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Cli.Answers;
using Spectre.Console;

namespace RigScenarios.Cli.Commands;

/// <summary><c>run FILE</c>: the answer to "will it work?", and what would change a "no".</summary>
internal static class RunCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var quick = new Option<bool>("--quick") { Description =
            "Leave out the search for what would make it work, and for the assumptions that matter most." };
        var command = new Command("run",
            "Will it work? The verdict with its time, each question with what is left, what would make it work, and cautions.");
        options.AddAnswerTo(command);
        command.Add(quick);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var answers = options.Answers(parsed, scenario, Today.Of(clock), cancellation);
            if (options.IsJson(parsed))
                Console.Out.WriteLine(RunJson.Text(scenario,
                    [.. answers.Select(answer => Json(answer, parsed.GetValue(quick), cancellation))]));
            else
                Write(AnswerText.Console(), answers, parsed.GetValue(quick), cancellation);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    /// <summary>Writes the answers: what is known at once, and then what takes a search.</summary>
    /// <param name="console">The console.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="quick">Whether the searches are left out.</param>
    /// <param name="cancellation">Stops the searches; what was said stands.</param>
    public static void Write(IAnsiConsole console, IReadOnlyList<RigAnswer> answers, bool quick, CancellationToken cancellation)
    {
        var ordered = AnswerText.LeastFirst(answers);
        var answer = ordered[0];
        var cautions = AnswerCautions.Of(answer);
        RunText.Verdict(console, ordered);
        WorkingSets? sets = null;
        IReadOnlyList<AssumptionEffect>? leading = null;
        try
        {
            if (!quick)
            {
                sets = Sets(answer, cancellation);
                RunText.FirstWay(console, sets);
            }
        }
        finally
        {
            // Whoever stops the search has read the verdict, and must read these too.
            AnswerText.Cautions(console, cautions);
        }
        if (!quick)
            leading = Leading(answer, cancellation);
        RunText.Rest(console, ordered, sets, leading);
    }

    private static JsonObject Json(RigAnswer answer, bool quick, CancellationToken cancellation) =>
        quick ? RunJson.One(answer, null, null) : RunJson.One(answer, Sets(answer, cancellation), Leading(answer, cancellation));

    private static WorkingSets Sets(RigAnswer answer, CancellationToken cancellation) =>
        LongWork.Run("Looking for what would make it work", progress => WouldWork.Find(answer, null, progress, cancellation));

    private static IReadOnlyList<AssumptionEffect> Leading(RigAnswer answer, CancellationToken cancellation) =>
        LongWork.Run("Trying what is assumed", progress => LeadingAssumptions.Find(answer, progress: progress,
            cancellation: cancellation));
}
