using RigScenarios.Answers;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes answers for people: the answer first, then what it rests on.</summary>
internal static class AnswerText
{
    /// <summary>Standard output; plain 100 columns wide where it is no terminal.</summary>
    public static IAnsiConsole Console()
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings());
        if (!console.Profile.Out.IsTerminal)
            console.Profile.Width = 100;
        return console;
    }

    public static void Write(IAnsiConsole console, Scenario scenario, IReadOnlyList<Answer> answers)
    {
        console.MarkupLine($"[bold]{Markup.Escape(scenario.Title)}[/]");
        if (scenario.Note is { } note)
            console.MarkupLine(Markup.Escape(note.Trim()));
        console.WriteLine();
        if (answers.Count > 1)
        {
            console.Write(Overview(answers));
            console.WriteLine();
            console.MarkupLine("In detail, the one with the least margin:");
            console.WriteLine();
        }
        Detail(console, answers[0]);
    }

    private static Table Overview(IReadOnlyList<Answer> answers)
    {
        var table = new Table().Border(TableBorder.Simple).AddColumns("Build", "Day", "Air", "Runs", "Planned", "Margin", "Ends by");
        foreach (var answer in answers)
        {
            var result = answer.Result;
            table.AddRow(new[]
            {
                answer.BuildTitle, answer.DayTitle, $"{answer.Ambient.DegreesCelsius:0.#} °C", (result.RuntimeIsLowerBound ? "over " : "") + DayWords.Length(result.Runtime), DayWords.Length(result.Planned),
                result.ReachesEnd ? "+" + DayWords.Length(result.Margin) : DayWords.Length(result.Margin), result.EndCause,
            }.Select(text => new Text(text)));
        }
        return table;
    }

    private static void Detail(IAnsiConsole console, Answer answer)
    {
        var result = answer.Result;
        console.MarkupLine($"[bold]{Markup.Escape(answer.BuildTitle)}[/], {Markup.Escape(answer.DayTitle)}, {answer.Ambient.DegreesCelsius:0.#} °C");
        console.MarkupLine($"[bold]{Markup.Escape(DayWords.Answer(result))}[/]");
        console.WriteLine(DayWords.Ending(result, answer.Day.Starts));
        if (!result.ReachesEnd)
            console.WriteLine($"The rest of the day needs about {DayWords.StillNeeded(result).WattHours:0} Wh more at the battery's terminals: a second battery of that size, in the same cold, would carry it.");
        console.WriteLine();
        var devices = new Table().Border(TableBorder.Simple).AddColumns("Device", "Runs", "Stopped by");
        foreach (var device in result.Devices)
            devices.AddRow(new[] { device.Title + (device.Essential ? " (essential)" : ""), DayWords.Length(device.Runtime), device.Cause }.Select(text => new Text(text)));
        console.Write(devices);
        if (answer.Helps.Count > 0)
        {
            console.MarkupLine("[bold]What would help most[/]");
            foreach (var help in answer.Helps)
                console.WriteLine($"  +{DayWords.Length(help.Gain),-10} {help.Words}{(help.ReachesEnd && !result.ReachesEnd ? ": then the day is reached" : "")}");
            console.WriteLine();
        }
        var limits = new Table().Border(TableBorder.Simple).AddColumns("Limit", "Worst", "Allowed", "Left", "From");
        foreach (var margin in result.Margins)
            limits.AddRow(new[] { margin.Limit, margin.Worst, margin.Allowed, $"{margin.Margin.Percent:0} %", margin.Source }.Select(text => new Text(text)));
        console.Write(limits);
        if (result.Assumed.Count > 0)
        {
            console.MarkupLine("[bold]Taken as given, because the files don't say[/] (a figure written into the file replaces one; --json gives fields and sources)");
            foreach (var assumed in result.Assumed)
                console.WriteLine($"  {assumed.Name}: {assumed.Value}");
            console.WriteLine();
        }
        console.MarkupLine("[bold]Mind[/]");
        foreach (var caution in answer.Cautions)
            console.WriteLine($"  - {caution}");
    }
}
