using System.Globalization;
using RigScenarios.Drafts;
using RigScenarios.Scenarios;
using Spectre.Console;

namespace RigScenarios.Cli.Asking;

/// <summary>Asks for figures and words. Each answer is put at its path and read as a file is, and asked again with what is
/// wrong.</summary>
internal sealed class FigureQuestions(IAnsiConsole console)
{
    /// <summary>Asks for the state of the battery, the start of the day and the cold.</summary>
    public async Task<GivenRig> CircumstancesAsync(GivenRig given, CancellationToken cancellation)
    {
        foreach (var key in (string[])["ambient", "starts", "charge"])
            given = await FieldAsync(given, RigFields.Of(key), cancellation);
        given = await AgeAsync(given, cancellation);
        return await FieldAsync(given, RigFields.Of("start-temperature"), cancellation);
    }

    /// <summary>Asks how old the battery is: what it went through only where somebody knows when it was bought.</summary>
    private async Task<GivenRig> AgeAsync(GivenRig given, CancellationToken cancellation)
    {
        string PathOf(string key) => RigFields.Of(key).PathIn(given.Frame);
        given = await FieldAsync(given, RigFields.Of("age-bought"), cancellation);
        if (given.TextAt(PathOf("age-bought")) is not null)
        {
            foreach (var key in (string[])["age-second-hand", "age-kept", "age-place", "age-shoots", "age-emptied"])
                given = await FieldAsync(given, RigFields.Of(key), cancellation);
            given = given.With(PathOf("age-until"), given.Frame.Today?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        }
        return await FieldAsync(given, RigFields.Of("capacity-left"), cancellation);
    }

    /// <summary>Asks for one field; what stands there already is taken where nothing is written.</summary>
    public Task<GivenRig> FieldAsync(GivenRig given, RigField field, CancellationToken cancellation)
    {
        console.WriteLine();
        var example = field.Choices.Count == 0 ? field.Example : string.Join(", ", field.Choices.Select(choice => choice.Text));
        return TextAsync(given, field.PathIn(given.Frame), field.Label, field.Help, example, cancellation);
    }

    /// <summary>Asks for the figures on the label of a thing that is not listed, until those that are needed are there.</summary>
    public async Task<GivenRig> OwnAsync(GivenRig given, ThingInView thing, CancellationToken cancellation)
    {
        var questions = LabelQuestions.Of(thing.Question).ToList();
        console.MarkupLine("[grey]From its label. Enter alone leaves a figure open; it is then assumed, and the answer says "
            + "so.[/]");
        while (true)
        {
            foreach (var question in questions)
                given = await TextAsync(given, $"parts.{thing.Own}.{question.Path}", question.Label, question.Help,
                    question.Example, cancellation);
            var missing = RigSoFar.MissingOf(given).Where(field => field.Path.StartsWith($"parts.{thing.Own}.",
                StringComparison.Ordinal)).ToList();
            if (missing.Count == 0)
                return given;
            foreach (var field in missing)
                console.MarkupLineInterpolated($"[yellow]{field.Label}: still needed.[/]");
            // Only what could fill the gap is asked again.
            questions = [.. questions.Where(question => question.Path.StartsWith("label.", StringComparison.Ordinal)
                || missing.Exists(field => field.Path == $"parts.{thing.Own}.{question.Path}"))];
        }
    }

    private async Task<GivenRig> TextAsync(GivenRig given, string path, string label, string help, string example,
        CancellationToken cancellation)
    {
        console.MarkupLineInterpolated($"[grey]{help}[/]");
        var standard = given.TextAt(path);
        var hint = standard is null && example.Length > 0 ? $" [grey](such as {Markup.Escape(example)})[/]" : "";
        var prompt = new TextPrompt<string>($"{Markup.Escape(label)}{hint}:") { AllowEmpty = true };
        if (standard is not null)
            prompt.DefaultValue(standard);
        prompt.Validate(text => text.Trim().Length > 0 && Problem(given.With(path, text), path) is { } wrong
            ? ValidationResult.Error($"[yellow]{Markup.Escape(wrong)}[/]") : ValidationResult.Success());
        return given.With(path, await prompt.ShowAsync(console, cancellation));
    }

    private static string? Problem(GivenRig given, string path) =>
        given.Problems.FirstOrDefault(problem => problem.Severity == Severity.Error && problem.Path == path) is { } found
            ? $"{found.Problem}{(found.Accepted is null ? "" : $" Accepted: {found.Accepted}.")}" : null;
}
