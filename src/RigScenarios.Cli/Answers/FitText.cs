using RigScenarios.Answers.Fitted;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people what notes and logs say of a battery. All sentences are those of the core.</summary>
internal static class FitText
{
    /// <param name="console">The console.</param>
    /// <param name="answer">The answer.</param>
    /// <param name="written">The file that the scenario was written to, ready to be typed; null for none.</param>
    public static void Write(IAnsiConsole console, FittedAnswer answer, string? written)
    {
        Paragraph.Write(console, string.Join(" ", FitSentences.Battery(answer)), bold: true);
        foreach (var day in answer.Days)
            Paragraph.Write(console, FitSentences.Day(day), bold: true);
        Paragraph.Write(console, FitSentences.RestsOn(answer));
        Part(console, "To look at", FitSentences.Misses(answer));
        Part(console, "What the data leave open", [.. FitSentences.Open(answer), FitSentences.Next(answer)]);
        Part(console, "Measured against predicted", [.. FitSentences.Notes(answer), .. FitSentences.Logs(answer)]);
        Part(console, "Assumed", answer.Input.Assumed.Select(NoteWords.Of));
        AnswerText.Cautions(console, FitSentences.Cautions(answer));
        if (written is null)
            return;
        console.WriteLine();
        // In one line: a command that is broken over two can't be copied.
        console.Profile.Out.Writer.WriteLine(
            $"Written: the scenario with these figures. What it means: rigscenarios run {written}");
    }

    private static void Part(IAnsiConsole console, string heading, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0)
            return;
        Paragraph.Heading(console, heading);
        foreach (var line in all)
            Paragraph.Write(console, line, "  - ");
    }
}
