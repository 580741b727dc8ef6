using RigScenarios.Drafts;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Asks for figures and words. Each answer is read by the same reader as the form's, and asked again with what is
/// wrong.</summary>
internal sealed class FigureQuestions(IAnsiConsole console)
{
    /// <summary>Asks for the state of the battery, the start of the day and the cold.</summary>
    public async Task<RigDraft> CircumstancesAsync(RigDraft draft, CancellationToken cancellation)
    {
        var fields = ((MapNode)RigDraftFormat.Write(draft)).Entries.ToList();
        foreach (var key in (string[])["ambient", "starts", "charge", "capacity-left", "start-temperature"])
        {
            var standard = (fields.Find(field => field.Key == key)?.Value as TextNode)?.Text;
            var text = await FieldAsync(key, standard, cancellation);
            fields.RemoveAll(field => field.Key == key);
            if (text is not null)
                fields.Add(Entry(key, new TextNode(text, TextPlace.None)));
        }
        return RigDraftFormat.TryRead(new MapNode(fields, TextPlace.None)).Draft!;
    }

    /// <summary>Asks for one field of the draft as text that can be read; null if it is left open.</summary>
    public async Task<string?> FieldAsync(string key, string? standard, CancellationToken cancellation)
    {
        var question = RigQuestions.Circumstances.First(question => question.Key == key);
        console.WriteLine();
        return await TextAsync(question.Label, question.Help, question.Example, standard,
            text => Problem(new MapNode([Entry(key, new TextNode(text, TextPlace.None))], TextPlace.None)), cancellation);
    }

    /// <summary>Asks for the figures on the label of a thing that is not listed, until those that are needed are there.</summary>
    public async Task<OwnFigures> OwnAsync(RigRole role, CancellationToken cancellation)
    {
        var texts = new List<MapEntry>();
        var questions = RigQuestions.Label.Where(question => question.Roles.Contains(role)).ToList();
        console.MarkupLine("[grey]From its label. Enter alone leaves a figure open; it is then assumed, and the answer says "
            + "so.[/]");
        while (true)
        {
            foreach (var question in questions)
            {
                if (await TextAsync(question.Label, question.Help, question.Example, null,
                    text => Problem(Thing(role, [Entry(question.Key, new TextNode(text, TextPlace.None))])),
                    cancellation) is not { } text)
                    continue;
                texts.RemoveAll(entry => entry.Key == question.Key);
                texts.Add(Entry(question.Key, new TextNode(text, TextPlace.None)));
            }
            var own = RigDraftFormat.TryRead(Thing(role, texts)).Draft!.Things["thing"].Own!;
            var missing = RigQuestions.StillNeeded(role, own);
            if (missing.Count == 0)
                return own;
            foreach (var problem in missing)
                console.MarkupLineInterpolated($"[yellow]{problem.Problem}[/]");
            // Only what could fill the gap is asked again.
            questions =
                [.. questions
                .Where(question => missing.Any(problem => problem.Path.EndsWith("." + question.Key, StringComparison.Ordinal))
                || question.Key is "voltage" or "current" or "minimum-voltage" or "maximum-voltage")];
        }
    }

    private async Task<string?> TextAsync(string label, string help, string example, string? standard,
        Func<string, string?> problem, CancellationToken cancellation)
    {
        console.MarkupLineInterpolated($"[grey]{help}[/]");
        var hint = standard is null && example.Length > 0 ? $" [grey](such as {Markup.Escape(example)})[/]" : "";
        var prompt = new TextPrompt<string>($"{Markup.Escape(label)}{hint}:") { AllowEmpty = true };
        if (standard is not null)
            prompt.DefaultValue(standard);
        prompt.Validate(text => text.Trim().Length > 0 && problem(text.Trim()) is { } wrong
            ? ValidationResult.Error($"[yellow]{Markup.Escape(wrong)}[/]") : ValidationResult.Success());
        var answer = (await prompt.ShowAsync(console, cancellation)).Trim();
        return answer.Length == 0 ? null : answer;
    }

    private static string? Problem(MapNode draft) =>
        RigDraftFormat.TryRead(draft).Problems.FirstOrDefault(problem => problem.Severity == Severity.Error) is { } found
        ? $"{found.Problem}{(found.Accepted is null ? "" : $" Accepted: {found.Accepted}.")}"
        : null;

    private static MapNode Thing(RigRole role, IReadOnlyList<MapEntry> own) => new(
        [Entry("things",
            new MapNode(
            [Entry("thing",
            new MapNode([Entry("role", new TextNode(ChoiceFormat<RigRole>.Word(role), TextPlace.None)),
            Entry("own", new MapNode(own, TextPlace.None))], TextPlace.None))], TextPlace.None))], TextPlace.None);

    private static MapEntry Entry(string key, FileNode value) => new(key, TextPlace.None, value);
}
