using RigScenarios.Answers;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Charts.Wiring;

/// <summary>The wiring's question as parts of a page: its line of the answer, the drawing, the limits, what is not
/// known.</summary>
public static class WiringParts
{
    // More of them would hide the first.
    private const int MostLimits = 8;

    /// <summary>The parts.</summary>
    /// <param name="answer">An answer with its series.</param>
    public static IEnumerable<PagePart> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var line = AnswerSentences.Questions(answer).First(question => question.Kind == QuestionKind.Wiring);
        var view = new WiringView(answer);
        yield return new HeadingPart("Does the wiring hold?", 3);
        yield return new ProsePart(line.Words);
        if (view.Worst is not null)
            yield return new DrawingPart(WiringDrawing.Of(view, null));
        yield return new TablePart(WiringTable.Of(answer, MostLimits));
        foreach (var missing in answer.Of(QuestionKind.Wiring)!.Missing)
            yield return new ProsePart(missing);
    }
}
