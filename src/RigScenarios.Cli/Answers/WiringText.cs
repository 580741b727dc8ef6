using RigScenarios.Answers;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes for people the part of the answer that is between battery and devices.</summary>
internal static class WiringText
{
    public static void Write(IAnsiConsole console, IReadOnlyList<RigAnswer> answers, string file)
    {
        foreach (var answer in answers)
        {
            if (answer != answers[0])
                console.WriteLine();
            AnswerText.Headline(console, answer);
            console.WriteLine();
            AnswerText.Questions(console, answer, QuestionKind.Wiring);
            DropOuts(console, answer);
            AnswerText.Details(console, answer, QuestionKind.Wiring);
            AnswerText.WayOut(console, answer, file);
        }
        AnswerText.Cautions(console, answers.SelectMany(AnswerCautions.Of));
    }

    private static void DropOuts(IAnsiConsole console, RigAnswer answer)
    {
        if (answer.Simulation.DropOuts.Count == 0)
            return;
        var times = new AnswerTimes(answer.Plan.Days);
        Paragraph.Heading(console, "Stops for want of voltage");
        foreach (var drop in answer.Simulation.DropOuts)
            Paragraph.Write(console, $"{times.At(drop.At)}: {LimitSentences.Element(drop.Element)}.", "  - ");
    }
}
