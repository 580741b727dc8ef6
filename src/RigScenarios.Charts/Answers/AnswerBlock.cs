using RigScenarios.Answers;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Charts.Answers;

/// <summary>The one answer as parts of a page, for notebooks and pages alike. All words are those of the core.</summary>
public static class AnswerBlock
{
    /// <summary>The first screenful: the verdict in a sentence, a line for each question, the cautions.</summary>
    /// <param name="answer">The answer.</param>
    public static AnswerPart Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return new AnswerPart(AnswerSentences.Headline(answer), AnswerCautions.Of(answer))
        {
            Verdict = answer.Verdict, Whole = answer, Lines = AnswerSentences.Questions(answer),
            Line = AnswerLine.Of(answer),
        };
    }

    /// <summary>What would make it work, or what was tried and what stays in the way; nothing where everything holds.</summary>
    /// <param name="sets">What was found.</param>
    public static IEnumerable<PagePart> WouldWork(WorkingSets sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        if (WouldWorkSentences.Heading(sets) is { } heading)
        {
            yield return sets.Sets.Count > 0
                ? new ListPart(heading, [.. sets.Sets.Select(WouldWorkSentences.Of)]) { IsNumbered = true }
                : new ListPart(heading, WouldWorkSentences.InTheWay(sets));
        }
    }

    /// <summary>The details: each question with what is left to its limits, the least first.</summary>
    /// <param name="answer">The answer.</param>
    public static IEnumerable<PagePart> Details(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return AnswerDetails.Of(answer).Select(section => new ListPart(section.Title,
            section.Folded is { } folded ? [.. section.Lines, folded] : section.Lines));
    }

    /// <summary>The assumptions that move the answer most.</summary>
    /// <param name="effects">What was found by trying, in its order.</param>
    /// <param name="most">The number that is shown at most.</param>
    public static ListPart Assumed(IReadOnlyList<AssumptionEffect> effects, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(effects);
        return new ListPart(effects.Count == 0 ? "Nothing that is assumed moves the answer by a minute."
            : "Rests on:", [.. effects.Take(most).Select(effect => effect.Words)]);
    }
}
