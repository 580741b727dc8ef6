using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Answers.Years;
using RigScenarios.Cli.Answers;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary><c>aging FILE</c>: how old the batteries are, the years ahead, when to replace them, how best to keep them.</summary>
internal static class AgingCommand
{
    /// <param name="clock">Gives today's date, where a battery's life says no other.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var battery = new Option<string?>("--battery") { Description =
            "Only this battery, by its short name; all of the build if left out.", HelpName = "NAME" };
        var years = new Option<int?>("--years") { Description = "How many years the tables go; 5 if left out.",
            HelpName = "1..40" };
        var cold = new Option<string?>("--cold") { Description =
            "Air of the days in the cold; -10 °C if left out.", HelpName = "TEMPERATURE" };
        var folder = new Option<string?>("--out") { Description =
            "A folder for every table in full resolution (CSV; docs/battery-age.md says what the columns are).",
            HelpName = "FOLDER" };
        var command = new Command("aging",
            "How old are the batteries, how long do the days still last, when to replace them, how best to keep them, and what "
                + "they cost.");
        options.AddAnswerTo(command);
        command.Add(battery);
        command.Add(years);
        command.Add(cold);
        command.Add(folder);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(years) is < 1 or > YearsQuestion.MostYears)
                parsed.AddError($"--years: found {parsed.GetValue(years)}. Accepted: 1 to {YearsQuestion.MostYears}.");
        });
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var today = Today.Of(clock);
            var scenario = options.Read(parsed, today);
            var target = parsed.GetValue(folder);
            if (target is not null)
                CheckFolder(target, options.Inputs(parsed, scenario));
            var builds = options.Builds(parsed, scenario);
            var answer = options.FirstAnswer(parsed, scenario, today, cancellation);
            var question = new YearsQuestion
            {
                Years = parsed.GetValue(years) ?? new YearsQuestion().Years, From = today,
                Battery = Named(answer, parsed.GetValue(battery)),
                Cold = OptionValue.Read(parsed.GetValue(cold), new QuantityFormat<Temperature>(WarmerAir.Coldest,
                    WarmerAir.Warmest, "-10 °C"), "--cold") ?? new YearsQuestion().Cold,
            };
            var result = LongWork.Run("Looking years ahead",
                progress => YearsAhead.Of(answer, question, progress, cancellation));
            if (target is not null)
                WriteTables(target, result);
            if (options.IsJson(parsed))
                Console.Out.WriteLine(AgingJson.Text(scenario, result));
            else
            {
                var others = builds.Count > 1 ? $"Taken: the build \"{builds[0]}\". Others: --build "
                    + $"{string.Join(", ", builds.Skip(1))}." : null;
                AgingText.Write(AnswerText.Console(), result, others, target);
            }
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static string? Named(RigAnswer answer, string? battery)
    {
        var all = answer.Plan.Batteries;
        return battery is null || all.ContainsKey(battery) ? battery
            : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "--battery",
                $"This build has no battery \"{battery}\".", string.Join(", ", all.Keys), NearestName.To(battery, all.Keys))]);
    }

    private static void CheckFolder(string folder, IEnumerable<string> inputs)
    {
        if (string.IsNullOrWhiteSpace(folder) || File.Exists(folder))
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "--out",
                $"Found \"{folder}\". The name of a folder is needed.",
                "a new folder, or one that is there, such as \"tables\"")]);
        foreach (var name in YearsTables.Names)
            OutputFile.Check("--out", PathOf(folder, name), $"{name}.csv", inputs);
    }

    private static void WriteTables(string folder, YearsResult result)
    {
        foreach (var table in YearsTables.Of(result))
            TextFile.Write(PathOf(folder, table.Name), table.ToCsv());
    }

    private static string PathOf(string folder, string name) => Path.Combine(folder, $"{name}.csv");
}
