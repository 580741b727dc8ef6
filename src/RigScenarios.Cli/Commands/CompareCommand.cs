using System.CommandLine;
using RigScenarios.Charts.Compare;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Search.Compare;

namespace RigScenarios.Cli.Commands;

/// <summary><c>compare FILE…</c>: builds side by side, of one file or of several.</summary>
internal static class CompareCommand
{
    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new CompareOptions();
        var quick = new Option<bool>("--quick") { Description =
            "Leave out what the differences come from: that takes many runs." };
        var json = new Option<bool>("--json") { Description =
            "Print the comparison as JSON (docs/side-by-side.md says what is in it)." };
        var csv = new Option<string?>("--csv") { Description = "A table to write (CSV).", HelpName = "FILE" };
        var output = new Option<string?>("--out") { Description = "A page to write (HTML).", HelpName = "PAGE" };
        var command = new Command("compare",
            "Which of these rigs is better, in what, and why? Verdicts and figures side by side, differences to a base with the "
                + "parts that they come from, and which limit breaks.");
        options.AddTo(command);
        foreach (var option in (Option[])[quick, json, csv, output])
            command.Add(option);
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var files = options.Read(parsed, Today.Of(clock));
            var inputs = files.SelectMany(file => ScenarioFile.Inputs(file.Scenario, file.Path)).ToList();
            foreach (var (name, path, example) in new[]
            {
                ("--csv", parsed.GetValue(csv), "rigs.csv"), ("--out", parsed.GetValue(output), "rigs.html"),
            })
            {
                if (path is not null)
                    OutputFile.Check(name, path, example, inputs);
            }
            var (rigs, at) = options.Rigs(parsed, files, Today.Of(clock), cancellation);
            var side = LongWork.Run("Looking for what the differences come from", progress =>
                SideBySide.Of(rigs, at, !parsed.GetValue(quick), progress, cancellation));
            if (parsed.GetValue(json))
                Console.Out.WriteLine(JsonText.Document(SideBySideShape.Of(side)));
            else
                CompareText.Write(AnswerText.Console(), side);
            if (parsed.GetValue(csv) is { } table)
                TextFile.Write(table, SideBySideTable.ToCsv(side));
            if (parsed.GetValue(output) is { } page)
                TextFile.Write(page, SideBySidePage.Of(side).ToHtml());
            foreach (var written in new[] { parsed.GetValue(csv), parsed.GetValue(output) }.OfType<string>())
                (parsed.GetValue(json) ? Console.Error : Console.Out).WriteLine($"Written: {ShownText.Of(written)}");
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }
}
