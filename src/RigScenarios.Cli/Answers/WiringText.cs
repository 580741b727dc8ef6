using RigScenarios.Answers;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people what fails first in the wiring: the answer, what would fix it, then every limit.</summary>
internal static class WiringText
{
    private const int MostRows = 12;

    public static void Write(IAnsiConsole console, Scenario scenario, IReadOnlyList<WiringOfDay> answers)
    {
        console.MarkupLine($"[bold]{Markup.Escape(scenario.Title)}[/]");
        if (scenario.Note is { } note)
            console.MarkupLine(Markup.Escape(note.Trim()));
        foreach (var wiring in answers)
            Detail(console, wiring);
        console.MarkupLine("[bold]Mind[/]");
        foreach (var caution in answers.SelectMany(WiringWords.Cautions).Distinct())
            console.WriteLine($"  - {caution}");
    }

    private static void Detail(IAnsiConsole console, WiringOfDay wiring)
    {
        console.WriteLine();
        console.MarkupLine($"[bold]{Markup.Escape(wiring.Build.Title ?? wiring.BuildName)}, {Markup.Escape(wiring.Day.Title ?? wiring.DayName)}, {wiring.Ambient.DegreesCelsius:0.#} °C[/]");
        console.MarkupLine($"[bold]{Markup.Escape(WiringWords.Answer(wiring))}[/]");
        if (wiring.Fixes.Count > 0)
        {
            console.WriteLine();
            console.MarkupLine("[bold]What would fix it, each run through the day[/]");
            foreach (var fix in wiring.Fixes)
                console.WriteLine($"  {WiringWords.Fix(fix)}");
        }
        var passed = WiringWords.Passed(wiring);
        if (passed.Count > 0)
        {
            console.WriteLine();
            console.MarkupLine("[bold]Past a limit[/]");
            foreach (var finding in passed.Take(6))
                console.WriteLine($"  {WiringWords.Finding(wiring, finding)} What helps: {finding.Remedy}.");
        }
        console.WriteLine();
        var table = new Table().Border(TableBorder.Simple).AddColumns("Where", "Limit", "Worst", "Allowed", "Left", "When");
        foreach (var finding in wiring.Findings.Take(MostRows))
        {
            table.AddRow(new[]
            {
                wiring.NameOf(finding.Element), finding.Limit, finding.Load, finding.Allowed, WiringWords.Left(finding), WiringWords.ShortMoment(wiring, finding),
            }.Select(text => new Text(text)));
        }
        console.Write(table);
        if (wiring.Findings.Count > MostRows)
            console.WriteLine($"{wiring.Findings.Count - MostRows} more limits have {wiring.Findings[MostRows].Margin.Percent:0} % or more left; --json lists them.");
        foreach (var line in WiringWords.NotKnown(wiring))
            console.WriteLine(line);
        console.WriteLine();
    }
}
