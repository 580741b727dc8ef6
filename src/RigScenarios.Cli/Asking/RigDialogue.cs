using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Asks the questions about one's own rig in a terminal. Nothing is kept until all are answered.</summary>
/// <param name="console">The terminal.</param>
/// <param name="library">The parts to choose from.</param>
/// <param name="today">The day on which it is asked.</param>
internal sealed class RigDialogue(IAnsiConsole console, OrderedMap<Part> library, DateOnly today)
{
    private const string NotListed = "Mine is not listed";
    private const string None = "None";
    private const int RowsShown = 12;

    private readonly Dictionary<string, Part> parts = library.ToDictionary(item => item.Key, item => item.Value,
        StringComparer.Ordinal);
    private readonly FigureQuestions figures = new(console);

    /// <summary>Asks everything and gives the scenario that the answers make.</summary>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public async Task<Scenario> AskAsync(CancellationToken cancellation)
    {
        var given = await figures.FieldAsync(GivenRig.Blank(library, today), RigFields.Of("title"), cancellation);
        foreach (var question in RigQuestions.All.Where(question => question.Key != "regulator"))
            given = await ThingsAsync(given, question, cancellation);
        var stance = RigFields.Of("stance");
        given = given.With(stance.PathIn(given.Frame), (await ChooseAsync(stance, stance.Choices, choice => choice.Title,
            cancellation)).Text);
        var day = await ChooseAsync(RigFields.Of("blocks"), [.. TypicalDays.All], day => $"{day.Title}: {day.Sentence}",
            cancellation);
        given = await figures.CircumstancesAsync(given.With(day), cancellation);
        return await new WiringQuestions(console).SettleAsync(given, cancellation);
    }

    private async Task<GivenRig> ThingsAsync(GivenRig given, RigQuestion question, CancellationToken cancellation)
    {
        var listed = library.Where(item => question.PartKinds.Contains(item.Value.Kind))
            .OrderBy(item => question.PartKinds.Index().First(kind => kind.Item == item.Value.Kind).Index)
                .Select(item => item.Key).ToList();
        Say(question.Label, question.Help);
        List<string> chosen;
        if (question.Many)
        {
            var prompt = new MultiSelectionPrompt<string> { PageSize = RowsShown, WrapAround = true, Required = false,
                Converter = Row, InstructionsText = "[grey](space ticks one, enter goes on; nothing ticked means none)[/]" }
                .Title(Markup.Escape(question.Label)).AddChoices(listed).AddChoices(NotListed);
            chosen = await prompt.ShowAsync(console, cancellation);
        }
        else
        {
            var prompt = new SelectionPrompt<string> { PageSize = RowsShown, WrapAround = true, SearchEnabled = true,
                Converter = Row, SearchPlaceholderText = "[grey](type a few letters to search)[/]" }
                .Title(Markup.Escape(question.Label));
            // First, so that who only presses Enter has none of it and not the first of the list.
            if (!question.Required)
                prompt.AddChoice(None);
            prompt.AddChoices(listed).AddChoices(NotListed);
            chosen = [await prompt.ShowAsync(console, cancellation)];
        }
        foreach (var id in chosen.Where(id => id != None))
        {
            var edited = id == NotListed ? Adding.Own(given, question.Key) : Adding.Listed(given, question.Key, id);
            given = edited.Given;
            if (id == NotListed)
                given = await figures.OwnAsync(given, RigView.Of(given).Things.First(thing => thing.Name == edited.Thing),
                    cancellation);
            console.MarkupLineInterpolated(
                $"  [green]+[/] {RigView.Of(given).Things.First(thing => thing.Name == edited.Thing).Title}");
        }
        return given;
    }

    private Task<T> ChooseAsync<T>(RigField field, IReadOnlyList<T> choices, Func<T, string> text,
        CancellationToken cancellation)
        where T : notnull
    {
        Say(field.Label, field.Help);
        return new SelectionPrompt<T> { WrapAround = true,
            Converter = choice => Markup.Escape(text(choice)) }.Title(Markup.Escape(field.Label)).AddChoices(choices)
            .ShowAsync(console, cancellation);
    }

    private void Say(string label, string help)
    {
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{label}[/]");
        console.MarkupLineInterpolated($"[grey]{help}[/]");
    }

    private string Row(string id) => parts.TryGetValue(id, out var part)
        ? Markup.Escape($"{part.Name}  {PartInWords.Of(part)}") : Markup.Escape(id);
}
