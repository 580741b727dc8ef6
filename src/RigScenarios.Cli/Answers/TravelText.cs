using RigScenarios.Answers;
using RigScenarios.Cells;
using RigScenarios.Scenarios;
using RigScenarios.Travel;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes a travel answer for people in a hurry: what must be asked of the airline, what stays, a list for each
/// traveller,
/// then the cautions, and the sources last.</summary>
internal static class TravelText
{
    public static void Write(
        IAnsiConsole console, Scenario scenario, IReadOnlyList<(string Name, TravelAnswer Answer)> answers,
        IReadOnlyList<PlannedJourney> planned, IReadOnlyList<RigAnswer> days)
    {
        Paragraph.Write(console, scenario.Title);
        if (planned.Count > 0)
        {
            var words = JourneySentences.Line(planned);
            AnswerText.Question(console, "Travel", JourneySentences.Verdict(planned),
                $"{char.ToUpperInvariant(words[0])}{words[1..]}.");
        }
        foreach (var (_, answer) in answers)
        {
            console.WriteLine();
            One(console, answer);
        }
        foreach (var day in days)
            AnswerText.StaysBehind(console, day);
        AnswerText.Cautions(console, answers.SelectMany(item => TravelWords.Cautions(item.Answer)));
        Paragraph.Heading(console, "Rests on (--json has each rule with its place)");
        var sources = answers.SelectMany(item => TravelWords.Sources(item.Answer)).Select(item => Short(item.Source)).Distinct();
        Paragraph.Write(console, $"{string.Join("; ", sources)}.", "  ");
    }

    private static void One(IAnsiConsole console, TravelAnswer answer)
    {
        var journey = answer.Journey;
        Paragraph.Write(console,
            $"{journey.Title}, {TravelWords.Day(journey.Date)}, {string.Join(", then ", journey.Legs.Select(TravelWords.Of))}",
            bold: true);
        if (answer.Rules.Warning is { } warning)
            Paragraph.Write(console, warning, bold: true);
        Paragraph.Write(console, TravelWords.Headline(answer), bold: true);
        var approvals = answer.Approvals.ToList();
        if (approvals.Count > 0)
        {
            Paragraph.Heading(console, "Ask the airline first: above 100 Wh it must approve, before the journey");
            foreach (var (traveller, line) in approvals)
                Paragraph.Write(console,
                    $"{line.Count} × {line.Battery.Title}, {line.Battery.Rated.Energy.WattHours:0.##} Wh each ({traveller})",
                    "  - ");
        }
        Staying(console, answer);
        Cargo(console, answer);
        Road(console, answer);
        foreach (var list in answer.Lists)
            List(console, list, answer.Rules.Rules.Passengers);
        if (answer.Lists.Count > 1 && !answer.ShareProven)
            Paragraph.Write(console, "A more even share may exist: there are too many to try all.");
        console.WriteLine();
        Paragraph.Write(console, $"By: {TravelWords.Edition(answer.Rules.Rules)}.");
    }

    private static void Staying(IAnsiConsole console, TravelAnswer answer)
    {
        if (answer.Left.Count == 0)
            return;
        Paragraph.Heading(console, "Stays behind, or goes another way");
        foreach (var left in answer.Left)
        {
            Paragraph.Write(console, $"{left.Count} × {left.Battery.Title}: {left.Margin}. {left.Remedy}", "  - ");
            Paragraph.Write(console, $"Why: {left.StoppedBy.Value}", "    ");
            if (left.AsCargo is { } cargo)
                Paragraph.Write(console, $"As air cargo: {TravelWords.Of(cargo)}.", "    ");
        }
    }

    private static void Cargo(IAnsiConsole console, TravelAnswer answer)
    {
        if (answer.Consignment.Count == 0)
            return;
        Paragraph.Heading(console, "As air cargo");
        foreach (var check in answer.Consignment)
        {
            Paragraph.Write(console, $"{check.Count} × {check.Battery.Title}: {TravelWords.Of(check)}.", "  - ");
            if (check.StoppedBy is { } rule)
                Paragraph.Write(console, $"Stops here: {rule.Value} {check.Remedy}", "    ", bold: true);
        }
    }

    private static void Road(IAnsiConsole console, TravelAnswer answer)
    {
        if (answer.Road.Count == 0)
            return;
        Paragraph.Heading(console, "By road, where ADR holds (Europe and many states besides)");
        foreach (var alike in answer.Road.GroupBy(check => (check.Entry, check.Small)))
        {
            var which = string.Join(", ", alike.Select(check => $"{check.Count} × {check.Battery.Title}"));
            Paragraph.Write(console, $"{which}: {TravelWords.Of(alike.First(), answer.Rules.Rules.Road)}.", "  - ");
        }
    }

    private static void List(IAnsiConsole console, PackingList list, PassengerRules rules)
    {
        var count = list.Lines.Sum(line => line.Count);
        Paragraph.Heading(console,
            $"{list.Traveller}: {(count == 1 ? "1 battery" : $"{count} batteries")}, {list.Energy.WattHours:0.##} Wh");
        foreach (var line in list.Lines)
        {
            var ask = line.Check.NeedsApproval ? " Ask the airline first." : "";
            Paragraph.Write(console, $"{line.Count} × {line.Battery.Title}: {TravelWords.Place(line, rules)}. "
                + $"{line.Check.MarginWords} ({line.Battery.Rated.BasisWords}).{ask}", "  - ");
        }
        foreach (var number in list.Numbers)
            Paragraph.Write(console, $"{number.Used} of {number.Limit.Value} {number.What}.", "  - ");
    }

    private static string Short(Citation source) => source.Authors.Length == 0 ? source.StandingInWords
        : source.Year is { } year ? $"{source.Authors}, {year}" : source.Authors;
}
