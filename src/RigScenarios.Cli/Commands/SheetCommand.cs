using System.CommandLine;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Cli.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>sheet FILE --kind KIND --out PAGE|CSV</c>: a sheet to take along, for building, for shopping or for the day, as a
/// page to print or as a table.</summary>
internal static class SheetCommand
{
    private const string Table = ".csv";

    private static readonly string[] Endings = [".html", ".htm", Table];

    private static readonly Dictionary<string, SheetKind> Kinds = new(StringComparer.Ordinal)
    {
        ["build"] = SheetKind.Build, ["shopping"] = SheetKind.Shopping, ["day"] = SheetKind.Day,
    };

    private static readonly Dictionary<string, SheetPaper> Papers = new(StringComparer.Ordinal)
    {
        ["a4"] = SheetPaper.A4, ["letter"] = SheetPaper.Letter,
    };

    /// <param name="clock">Gives today's date, for a journey without one.</param>
    public static Command Create(TimeProvider clock)
    {
        var options = new ScenarioOptions();
        var kind = new Option<string?>("--kind")
        {
            Description = "Which: build (parts, places, cables, checks), shopping (what to buy and to rent, and what it comes "
                + "to) or day (as take-along writes it).",
            HelpName = "build|shopping|day",
        };
        var output = new Option<string?>("--out")
        {
            Description = "What to write: a page to print (.html), or a table (.csv).", HelpName = "PAGE|CSV",
        };
        var paper = new Option<string?>("--paper")
        {
            Description = "Use all of this paper: a4 or letter. If left out, the page fits on both.", HelpName = "a4|letter",
        };
        var whole = new Option<bool>("--whole") { Description = "Leave nothing out: on as many pages as it takes." };
        var command = new Command("sheet", "One printed page, or a table: the build sheet for whoever puts the rig together, "
            + "the list for shop and rental house, or the sheet of the day.");
        options.AddAnswerTo(command);
        command.Add(kind);
        command.Add(output);
        command.Add(paper);
        command.Add(whole);
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(output) is null && !options.IsJson(parsed))
                parsed.AddError("Nothing is asked for: --out PAGE for a page or a table, such as \"--out build.html\", or "
                    + "--json.");
            if (IsTable(parsed.GetValue(output)) && (parsed.GetResult(paper) is not null || parsed.GetValue(whole)))
                parsed.AddError("--paper and --whole are for a page; a table has everything and no pages.");
        });
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() =>
        {
            var which = Kinds[Named("--kind", parsed.GetValue(kind), Kinds.Keys, "build")];
            var printed = parsed.GetResult(paper) is null ? SheetPaper.Either
                : Papers[Named("--paper", parsed.GetValue(paper), Papers.Keys, "a4")];
            var scenario = options.Read(parsed, Today.Of(clock));
            var file = parsed.GetValue(output);
            if (file is not null)
                Check(file, which, options.Inputs(parsed, scenario));
            var build = which == SheetKind.Shopping ? options.NamedBuild(parsed, scenario)
                : options.Builds(parsed, scenario)[0];
            var answer = which == SheetKind.Shopping ? null
                : options.FirstAnswer(parsed, scenario, Today.Of(clock), cancellation);
            var (sheet, table) = answer is not null ? (TakeAlongSheets.Of(answer, which), TakeAlongSheets.Table(answer, which))
                : TakeAlongSheets.Shopping(scenario, build, options.Days(parsed, scenario).Count);
            if (file is not null)
                TextFile.Write(file, IsTable(file) ? table.ToCsv()
                    : SheetPage.Of(sheet, parsed.GetValue(whole), printed));
            if (options.IsJson(parsed))
                Console.Out.WriteLine(SheetJson.Text(which, build, answer, sheet, table));
            else
                Tell(file!, options.Builds(parsed, scenario), sheet, answer);
            return Task.FromResult(ExitCodes.Done);
        }));
        return command;
    }

    private static void Tell(string file, IReadOnlyList<string> builds, TakeAlongSheet sheet, RigAnswer? answer)
    {
        if (answer is not null && builds.Count > 1)
            Paragraph.Write(AnswerText.Console(), $"Taken: the build \"{builds[0]}\". Others: --build "
                + $"{string.Join(", ", builds.Skip(1))}.");
        Paragraph.Write(AnswerText.Console(), sheet.Headline, bold: true);
        Console.Out.WriteLine($"{(IsTable(file) ? "Table" : "Page")}: {ShownText.Of(file)}");
    }

    private static bool IsTable(string? file) => Table.Equals(Path.GetExtension(file), StringComparison.OrdinalIgnoreCase);

    private static void Check(string file, SheetKind kind, IEnumerable<string> inputs)
    {
        var example = $"{kind.ToString().ToLowerInvariant()}.html";
        OutputFile.Check("--out", file, example, inputs);
        if (!Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase))
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "--out",
                $"Found \"{file}\". From its ending it can't be told whether a page or a table is wanted.",
                $"a page (.html) or a table (.csv), such as \"{example}\"")]);
    }

    private static string Named(string option, string? word, IEnumerable<string> accepted, string example) =>
        word is not null && accepted.Contains(word) ? word : throw new ScenarioProblemsException([new Diagnostic(Severity.Error,
            "", TextPlace.None, option, word is null ? "Which one is not said." : $"Found \"{word}\".",
            $"{string.Join(", ", accepted)}; such as \"{option} {example}\"", NearestName.To(word ?? "", accepted))]);
}
