using System.CommandLine;
using System.Globalization;
using RigScenarios.Charts.Search;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;
using UnitsNet;

namespace RigScenarios.Cli.Commands;

/// <summary><c>search FILE</c>: the best rigs of the parts that a scenario's question allows.</summary>
internal static class SearchCommand
{
    private const double UsualLimit = 60;
    private const double LongestLimit = 86_400;

    /// <param name="clock">Gives today's date, for batteries' lives and flights, and the time that is over.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var json = new Option<bool>("--json") { Description = "Print the result as JSON (docs/json.md says what is in it)." };
        var csv = new Option<string?>("--csv") { Description = "The rigs as a table to write (CSV).", HelpName = "FILE" };
        var output = new Option<string?>("--out") { Description = "The result as a page to write (HTML).", HelpName = "PAGE" };
        var limit = new Option<string?>("--limit")
        {
            Description = "Seconds after which it gives what it has, and says what is still open; 60 if left out.",
            HelpName = "SECONDS",
        };
        var command = new Command("search",
            "Which parts make the best rig? Goes through every choice that the file's \"best-rig\" allows, and gives the rigs "
                + "that nobody would swap for another, why each part, what more money buys, and what stands in the way.");
        options.AddFileTo(command);
        command.Add(json);
        command.Add(csv);
        command.Add(output);
        command.Add(limit);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var scenario = options.Read(parsed, Today.Of(clock));
            var (table, page) = (parsed.GetValue(csv), parsed.GetValue(output));
            if (table is not null)
                OutputFile.Check("--csv", table, "rigs.csv", options.Inputs(parsed, scenario));
            if (page is not null)
                OutputFile.Check("--out", page, "rigs.html", options.Inputs(parsed, scenario));
            var time = Seconds(parsed.GetValue(limit));
            var question = BestRigQuestion.Of(scenario, Today.Of(clock));
            var result = LongWork.Run("Searching", progress => RigSearch.Find(question,
                new RigSearchOptions(time) { Clock = clock }, new Elapsed(progress, time, clock), cancellation));
            if (table is not null)
                TextFile.Write(table, RigSearchTable.ToCsv(result));
            if (page is not null)
                TextFile.Write(page, RigSearchPage.Of(result).ToHtml());
            if (parsed.GetValue(json))
                Console.Out.WriteLine(JsonText.Of(RigSearchShape.Of(result)));
            else
                SearchText.Write(AnswerText.Console(), result,
                    new[] { table, page }.OfType<string>().Select(file => ShownText.Of(file)));
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static Duration Seconds(string? text) => text is null ? Duration.FromSeconds(UsualLimit)
        : double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
            && seconds is >= 1 and <= LongestLimit ? Duration.FromSeconds(seconds)
        : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "--limit",
            $"Found \"{text}\".", $"seconds, 1 to {LongestLimit:0}, such as \"30\"")]);

    /// <summary>How much of the time is over: nobody knows how much of the work is done.</summary>
    private sealed class Elapsed(IProgress<double> bar, Duration limit, TimeProvider clock) : IProgress<FrontProgress>
    {
        private readonly long start = clock.GetTimestamp();

        public void Report(FrontProgress value) =>
            bar.Report(Math.Min(1, clock.GetElapsedTime(start).TotalSeconds / limit.Seconds));
    }
}
