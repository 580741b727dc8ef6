using RigScenarios.Sweeps.Sensitivity;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people how sure an answer is, what makes it unsure, and what to measure first.</summary>
internal static class UncertaintyText
{
    public static void Write(IAnsiConsole console, SensitivityAnswer answer)
    {
        var given = answer.AsGiven;
        Paragraph.Write(console, $"{given.Scenario.Title}. {AnswerText.Title(given)}. {AnswerText.Days(given)}.");
        Paragraph.Write(console, MattersSentences.Headline(answer), bold: true);
        foreach (var line in MattersSentences.Chances(answer))
            Paragraph.Write(console, line, "  - ");
        Paragraph.List(console, "What to measure first", MattersSentences.First(answer));
        Paragraph.List(console, "What it hangs on", MattersSentences.Shares(answer));
        Paragraph.List(console, "One thing at a time", MattersSentences.Alone(answer));
        Paragraph.List(console, "What this rests on", MattersSentences.Basis(answer));
        Paragraph.List(console, "Taken as uncertain", MattersSentences.Uncertain(answer));
    }
}
