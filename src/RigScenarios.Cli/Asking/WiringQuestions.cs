using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Shows what feeds what and lets it be changed, until the rig adds up.</summary>
internal sealed class WiringQuestions(IAnsiConsole console)
{
    private const string TakeOff = "(take it off the rig)";

    /// <summary>The scenario of a rig whose wiring the user agrees to.</summary>
    public async Task<Scenario> SettleAsync(GivenRig given, CancellationToken cancellation)
    {
        while (true)
        {
            var answer = RigSoFar.Of(given, null, cancellation);
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
                given = await ChangeAsync(given, answer.Wiring, cancellation);
                continue;
            }
            var wrong = answer.Wiring.Where(line => errors.Exists(problem => problem.Path.Split('.').Contains(line.Thing)))
                .ToList();
            if (wrong.Count == 0)
                throw new ScenarioProblemsException(errors.Count > 0 ? errors
                    : throw new InvalidOperationException("The answers make no scenario, and nothing says why."));
            given = await ChangeAsync(given, wrong, cancellation);
        }
    }

    private void Show(RigSoFar answer)
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

    private async Task<GivenRig> ChangeAsync(GivenRig given, IReadOnlyList<WiringLine> lines, CancellationToken cancellation)
    {
        foreach (var line in lines)
        {
            var choices = line.Choices.OrderByDescending(choice => choice.Value == line.FedBy).ToList();
            if (RigView.Of(given).Things.Any(thing => thing.Name == line.Thing))
                choices.Add(new WiringChoice(TakeOff, TakeOff));
            var prompt = new SelectionPrompt<WiringChoice> { Converter = choice => Markup.Escape(choice.Title) }
                .Title(Markup.Escape($"What feeds {line.Title}?")).AddChoices(choices);
            var chosen = await prompt.ShowAsync(console, cancellation);
            if (chosen.Value == TakeOff)
                given = TakingAway.From(given, line.Thing).Given;
            else if (chosen.Value != line.FedBy)
                given = Feeding.By(given, line.Thing, chosen.Value).Given;
        }
        return given;
    }
}
