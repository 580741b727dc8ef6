using RigScenarios.Drafts;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Shows what feeds what and lets it be changed, until the rig adds up.</summary>
internal sealed class WiringQuestions(IAnsiConsole console, OrderedMap<Part> library)
{
    private const string TakeOff = "(take it off the rig)";

    /// <summary>The scenario of a draft whose wiring the user agrees to.</summary>
    public async Task<Scenario> SettleAsync(RigDraft draft, CancellationToken cancellation)
    {
        while (true)
        {
            var answer = DraftAnswer.Of(draft, null, library, RigDialogue.BuildName, RigDialogue.DayName, cancellation);
            Show(answer);
            var errors = answer.Problems.Where(problem => problem.Severity == Severity.Error).ToList();
            foreach (var problem in errors)
                console.MarkupLineInterpolated($"[yellow]{problem.Problem}[/]");
            if (answer.Scenario is { } scenario)
            {
                if (answer.Wiring.Count == 0
                    || await new ConfirmationPrompt("Is that how it is wired?") { DefaultValue = true }.ShowAsync(console,
                    cancellation))
                    return scenario;
                draft = await ChangeAsync(draft, answer.Wiring, cancellation);
                continue;
            }
            var wrong = answer.Wiring.Where(line => errors.Exists(problem => problem.Path == $"things.{line.Thing}"
                || problem.Path.StartsWith($"things.{line.Thing}.", StringComparison.Ordinal))).ToList();
            if (wrong.Count == 0)
                throw new ScenarioProblemsException(errors.Count > 0 ? errors
                    : throw new InvalidOperationException("The answers make no scenario, and nothing says why."));
            draft = await ChangeAsync(draft, wrong, cancellation);
        }
    }

    private void Show(DraftAnswer answer)
    {
        if (answer.Wiring.Count == 0)
            return;
        console.WriteLine();
        console.MarkupLine("[bold]What feeds what[/]");
        foreach (var line in answer.Wiring)
        {
            console.MarkupLineInterpolated($"  {line.Title} <- [bold]{line.FedByTitle}[/]{(line.Proposed ? " (proposed)" : "")}");
            console.Write(new Padder(new Text(line.Why, new Style(Color.Grey)), new Padding(6, 0, 0, 0)));
        }
        console.WriteLine();
    }

    private async Task<RigDraft> ChangeAsync(RigDraft draft, IReadOnlyList<WiringLine> lines, CancellationToken cancellation)
    {
        foreach (var line in lines)
        {
            var own = draft.Things.ContainsKey(line.Thing);
            var choices = line.Choices.OrderByDescending(choice => choice.Value == line.FedBy).ToList();
            if (own)
                choices.Add(new WiringChoice(TakeOff, TakeOff));
            var prompt = new SelectionPrompt<WiringChoice> { Converter = choice => Markup.Escape(choice.Title) }
                .Title(Markup.Escape($"What feeds {line.Title}?")).AddChoices(choices);
            var chosen = await prompt.ShowAsync(console, cancellation);
            if (chosen.Value == TakeOff)
                draft = draft with { Things = draft.Things.Without(line.Thing) };
            else if (own)
                draft = draft with { Things = draft.Things.With(line.Thing,
                    draft.Things[line.Thing] with { FedBy = chosen.Value }) };
            else if (line.FedBy != chosen.Value && library.ContainsKey(line.Thing))
                draft = draft with { Things = draft.Things.With(line.Thing,
                    new DraftThing { Role = RigRole.Regulator, Part = line.Thing, FedBy = chosen.Value }) };
        }
        return draft;
    }
}
