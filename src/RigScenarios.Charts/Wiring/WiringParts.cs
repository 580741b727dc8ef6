using RigScenarios.Answers;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Charts.Wiring;

/// <summary>What in the wiring has the least left, as parts of a page: the answer, the drawing, the limits, what is not known.</summary>
public static class WiringParts
{
    // More of them would hide the first.
    private const int MostLimits = 8;

    /// <summary>The parts, from the answer to what is not known.</summary>
    /// <param name="wiring">A day's wiring.</param>
    public static IEnumerable<PagePart> Of(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        yield return new HeadingPart("Does the wiring hold?", 3);
        yield return new AnswerPart(WiringWords.Answer(wiring), WiringWords.Cautions(wiring));
        if (wiring.Worst is not null)
            yield return new DrawingPart(WiringDrawing.Of(wiring));
        if (wiring.Findings.Count > 0)
            yield return new TablePart(WiringTable.Of(wiring, MostLimits));
        foreach (var unknown in WiringWords.NotKnown(wiring))
            yield return new ProsePart(unknown);
    }
}
