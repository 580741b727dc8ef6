using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Asks the questions about one's own rig in a terminal. Nothing is kept until all are answered.</summary>
/// <param name="console">The terminal.</param>
/// <param name="library">The parts to choose from.</param>
internal sealed class RigDialogue(IAnsiConsole console, OrderedMap<Part> library)
{
    /// <summary>The names that the build and the day get in the file.</summary>
    public const string BuildName = "rig";

    public const string DayName = "day";

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
        var draft = RigDraft.Blank with { Title = await figures.FieldAsync("title", RigDraft.Blank.Title, cancellation) };
        foreach (var question in RigQuestions.Things.Where(question => question.Role is not RigRole.Regulator))
            draft = await ThingsAsync(draft, question, cancellation);
        draft = draft with { Stance = await ChooseAsync(RigQuestions.Circumstances.First(question => question.Key == "stance"),
            Enum.GetValues<Builds.Stance>(), stance => ChoiceFormat<Builds.Stance>.Word(stance), cancellation) };
        var day = await ChooseAsync(RigQuestions.Circumstances.First(question => question.Key == "blocks"), [.. TypicalDays.All],
            day => $"{day.Title}: {day.Sentence}", cancellation);
        draft = await figures.CircumstancesAsync(draft.With(day), cancellation);
        return await new WiringQuestions(console, library).SettleAsync(draft, cancellation);
    }

    private async Task<RigDraft> ThingsAsync(RigDraft draft, RigQuestion question, CancellationToken cancellation)
    {
        var listed = library.Where(item => question.PartKinds.Contains(item.Value.Kind))
            .OrderBy(item => question.PartKinds.Index().First(kind => kind.Item == item.Value.Kind).Index)
                .Select(item => item.Key).ToList();
        Say(question);
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
            var thing = id == NotListed
                ? new DraftThing { Role = question.Role!.Value, Own = await figures.OwnAsync(question.Role.Value, cancellation) }
                : new DraftThing { Role = question.Role!.Value, Part = id };
            draft = draft.With(thing with { Essential = question.Role == RigRole.Camera });
            console.MarkupLineInterpolated($"  [green]+[/] {thing.Own?.Name ?? parts[id].Name}");
        }
        return draft;
    }

    private Task<T> ChooseAsync<T>(RigQuestion question, IReadOnlyList<T> choices, Func<T, string> text,
        CancellationToken cancellation)
        where T : notnull
    {
        Say(question);
        return new SelectionPrompt<T> { WrapAround = true,
            Converter = choice => Markup.Escape(text(choice)) }.Title(Markup.Escape(question.Label)).AddChoices(choices)
            .ShowAsync(console, cancellation);
    }

    private void Say(RigQuestion question)
    {
        console.WriteLine();
        console.MarkupLineInterpolated($"[bold]{question.Label}[/]");
        console.MarkupLineInterpolated($"[grey]{question.Help}[/]");
    }

    private string Row(string id) => parts.TryGetValue(id, out var part)
        ? Markup.Escape($"{part.Name}  {PartInWords.Of(part)}") : Markup.Escape(id);
}
