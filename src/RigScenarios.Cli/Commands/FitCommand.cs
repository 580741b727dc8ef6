using System.CommandLine;
using RigScenarios.Answers.Fitted;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Fits.Notes;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>fit NOTES</c>: what field notes and logs say of a battery, and of the days that are planned with it.</summary>
internal static class FitCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var notes = new Argument<string>("NOTES") { Description = "The field notes: a .yaml file, or a table in a .csv file "
            + "(docs/field-notes.md)." };
        var scenario = new Option<string?>("--scenario")
        {
            Description = "The scenario whose builds and devices the notes name; the one that they say if left out.",
            HelpName = "FILE",
        };
        var build = new Option<string?>("--build") { Description =
            "The build that is planned, by its short name; also that of notes that name none, where their file says nothing.",
            HelpName = "NAME" };
        var days = new Option<string[]>("--days", "--day")
        {
            Description = "Only these days, by their short names; all of the scenario if left out.", HelpName = "NAME",
            AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [],
        };
        var output = new Option<string?>("--out")
        {
            Description = "Write the scenario with the fitted values to this file, so that every command answers by them.",
            HelpName = "FILE",
        };
        var json = new Option<bool>("--json") { Description = "Print the answer as JSON (docs/json.md says what is in it)." };
        var command = new Command("fit", "What your own notes and logs say of your battery: what it holds, how it resists, what "
            + "the devices draw, and what that means for the planned days.")
        {
            notes, scenario, build, days, output, json,
        };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var noted = Read(parsed.GetRequiredValue(notes), parsed.GetValue(scenario), parsed.GetValue(build));
            var target = parsed.GetValue(output);
            if (target is not null)
                OutputFile.Check("--out", target, "my-rig-fitted.yaml", [parsed.GetRequiredValue(notes), .. noted.LogFiles,
                    .. ScenarioFile.Inputs(noted.Scenario, noted.ScenarioFile)]);
            var answer = LongWork.Run("Fitting", progress => FittedAnswer.Of(noted, Days(parsed.GetRequiredValue(days),
                noted.Scenario), Today.Of(clock), progress, cancellation));
            if (target is not null)
                FittedText.Write(noted, answer.Fitted, target);
            if (parsed.GetValue(json))
                Console.Out.WriteLine(JsonText.Of(FitShape.Of(answer)));
            else
                FitText.Write(AnswerText.Console(), answer, target is null ? null : ShellWord.Of(target));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static NotedBattery Read(string path, string? scenario, string? build)
    {
        var (noted, problems) = FieldNotesFile.TryRead(path, scenario, build);
        if (noted is null)
            throw new ScenarioProblemsException(problems);
        foreach (var warning in problems)
            Console.Error.WriteLine(warning);
        return noted;
    }

    private static IReadOnlyList<string> Days(IReadOnlyList<string> names, Scenario scenario)
    {
        List<Diagnostic> problems = [.. names.Where(name => !scenario.Days.ContainsKey(name)).Select(name => new Diagnostic(
            Severity.Error, "", TextPlace.None, "--days", $"The scenario has no day \"{name}\".",
            string.Join(", ", scenario.Days.Keys), NearestName.To(name, scenario.Days.Keys)))];
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : names;
    }
}
