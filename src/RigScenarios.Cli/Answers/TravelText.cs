using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Travel;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes a travel answer for people in a hurry: the answer, a list for each traveller, what stays, then what to mind and the sources.</summary>
internal static class TravelText
{
    public static void Write(IAnsiConsole console, Scenario scenario, IReadOnlyList<(string Name, TravelAnswer Answer)> answers)
    {
        console.MarkupLine($"[bold]{Markup.Escape(scenario.Title)}[/]");
        if (scenario.Note is { } note)
            console.MarkupLine(Markup.Escape(note.Trim()));
        foreach (var (_, answer) in answers)
        {
            console.WriteLine();
            One(console, answer);
        }
    }

    private static void One(IAnsiConsole console, TravelAnswer answer)
    {
        var journey = answer.Journey;
        console.MarkupLine($"[bold]{Markup.Escape(journey.Title)}[/], {TravelWords.Day(journey.Date)}, {string.Join(", then ", journey.Legs.Select(TravelWords.Of))}");
        if (answer.Rules.Warning is { } warning)
            console.MarkupLine($"[bold red]{Markup.Escape(warning)}[/]");
        console.MarkupLine($"[bold]{Markup.Escape(TravelWords.Headline(answer))}[/]");
        console.WriteLine($"By: {TravelWords.Edition(answer.Rules.Rules)}.");
        console.WriteLine();
        foreach (var list in answer.Lists)
            List(console, list);
        if (answer.Lists.Count > 1 && !answer.ShareProven)
            console.WriteLine("A more even share may exist: there are too many to try all.");
        if (answer.Left.Count > 0)
        {
            console.MarkupLine("[bold]Stays behind, or goes another way[/]");
            foreach (var left in answer.Left)
            {
                Indented(console, 2, $"{left.Count} × {left.Battery.Title}: {left.Margin}");
                Indented(console, 4, $"Why: {left.StoppedBy.Value}");
                Indented(console, 4, $"Then: {left.Remedy}");
                if (left.AsCargo is { } cargo)
                    Indented(console, 4, $"As air cargo: {TravelWords.Of(cargo)}.");
            }
            console.WriteLine();
        }
        if (answer.Consignment.Count > 0)
        {
            console.MarkupLine("[bold]As air cargo[/]");
            foreach (var check in answer.Consignment)
            {
                Indented(console, 2, $"{check.Count} × {check.Battery.Title}: {TravelWords.Of(check)}.");
                if (check.StoppedBy is { } rule)
                    Indented(console, 4, $"STOPS HERE: {rule.Value} {check.Remedy}");
            }
            console.WriteLine();
        }
        console.MarkupLine("[bold]Mind[/]");
        foreach (var caution in TravelWords.Cautions(answer))
            Indented(console, 2, $"- {caution}");
        console.WriteLine();
        console.MarkupLine("[bold]Rests on[/]");
        foreach (var source in TravelWords.Sources(answer).GroupBy(item => item.Source))
            Indented(console, 2, $"- {source.Key}");
    }

    private static void List(IAnsiConsole console, PackingList list)
    {
        console.MarkupLine($"[bold]{Markup.Escape(list.Traveller)}[/]: {Batteries(list.Lines.Sum(line => line.Count))}, {list.Energy.WattHours:0.##} Wh");
        foreach (var line in list.Lines)
        {
            Indented(console, 2, $"{line.Count} × {line.Battery.Title}: {TravelWords.Place(line)}. {line.Check.MarginWords} ({line.Battery.Rated.BasisWords}).");
            if (line.Check.NeedsApproval)
                console.MarkupLine("      [bold]ASK THE AIRLINE FIRST[/]: above 100 Wh it must approve, before the journey.");
        }
        foreach (var number in list.Numbers)
            Indented(console, 2, $"{number.Used} of {number.Limit.Value} {number.What}.");
        console.WriteLine();
    }

    private static string Batteries(int count) => count == 1 ? "1 battery" : $"{count} batteries";

    /// <summary>A paragraph whose further lines stand under the first; those of a list item under its words. Without trailing blanks, so that the text can be pasted.</summary>
    private static void Indented(IAnsiConsole console, int spaces, string text)
    {
        var margin = new string(' ', spaces);
        var line = margin;
        foreach (var word in text.Split(' '))
        {
            if (line.Length > margin.Length && line.Length + word.Length >= console.Profile.Width)
            {
                console.WriteLine(line.TrimEnd());
                margin = new string(' ', text.StartsWith("- ", StringComparison.Ordinal) ? spaces + 2 : spaces);
                line = margin;
            }
            line += word + " ";
        }
        console.WriteLine(line.TrimEnd());
    }
}
