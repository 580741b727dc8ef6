using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>take-along FILE --out PAGE</c>: the answer as a sheet of one page for the day, or for a class.</summary>
internal static class TakeAlongCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var output = new Option<string>("--out") { Description = "The page to write (HTML).", HelpName = "PAGE",
            Required = true };
        var blanks = new Option<bool>("--blanks") { Description =
            "What is given, with blanks for one's own estimate, and no answer." };
        var solution = new Option<bool>("--solution") { Description = "The answers to those blanks." };
        var whole = new Option<bool>("--whole") { Description = "Leave nothing out: on as many pages as it takes." };
        var command = new Command("take-along",
            "One printed page for the day: swaps and charging with their times, places, setting, cables, who flies what, checks, "
                + "cautions. Or the same as an exercise.");
        options.AddAnswerTo(command, json: false);
        command.Add(output);
        command.Add(blanks);
        command.Add(solution);
        command.Add(whole);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(blanks) && parsed.GetValue(solution))
                parsed.AddError("--blanks and --solution are two pages: give one of them, and the other in a second call.");
        });
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var file = parsed.GetRequiredValue(output);
            OutputFile.Check("--out", file, "sheet.html", options.Inputs(parsed, scenario));
            var kind = parsed.GetValue(blanks) ? SheetKind.Exercise : parsed.GetValue(solution) ? SheetKind.Solution
                : SheetKind.Day;
            var builds = options.Builds(parsed, scenario);
            var answer = options.FirstAnswer(parsed, scenario, Today.Of(clock), cancellation);
            if (builds.Count > 1)
                Paragraph.Write(AnswerText.Console(), $"Taken: the build \"{builds[0]}\". Others: --build "
                    + $"{string.Join(", ", builds.Skip(1))}.");
            TextFile.Write(file, SheetPage.Of(TakeAlongSheets.Of(answer, kind), parsed.GetValue(whole)));
            if (kind != SheetKind.Exercise)
                Paragraph.Write(AnswerText.Console(), AnswerSentences.Headline(answer), bold: true);
            Console.Out.WriteLine($"Page: {ShownText.Of(file)}");
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
