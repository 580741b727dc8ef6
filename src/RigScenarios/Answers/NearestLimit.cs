using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The limit that a question is nearest to, or passes most, where what is left of it can be told as a share: the one
/// figure of a margin for every table.</summary>
internal static class NearestLimit
{
    /// <summary>That limit: the one that the answer names, or where a share of that says nothing, as of a temperature, the next
    /// one; null where the question is not asked or no limit of it has a rating of which a share could be told.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="kind">The question.</param>
    public static Limit? Of(RigAnswer answer, QuestionKind kind) => answer.Of(kind) is not { } asked ? null
        : Of(asked, Counted(answer, asked));

    /// <summary>The same of a question that rests on the rig alone, without its days.</summary>
    /// <param name="atRest">The question; not that of the wiring.</param>
    public static Limit? Of(AnswerQuestion atRest) => Of(atRest, atRest.Limits.Where(limit => limit.HasForce));

    /// <summary>The limits that can decide a verdict, as the answer itself counts them.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="question">One of its questions.</param>
    public static IEnumerable<Limit> Counted(RigAnswer answer, AnswerQuestion question)
    {
        var counts = QuestionRules.CountsIn(answer.Simulation);
        return question.Limits.Where(limit => limit.HasForce && (question.Kind != QuestionKind.Wiring
            || (counts(limit) && (limit.IsPassed || !QuestionRules.IsHeld(answer.Powered, limit)))));
    }

    private static Limit? Of(AnswerQuestion asked, IEnumerable<Limit> counted) =>
        new[] { asked.Least }.Concat(counted.OrderBy(limit => limit.Share)).OfType<Limit>()
            .FirstOrDefault(limit => StatedErrors.ShareWithin(limit) is not null && limit.Share is { } share
                && double.IsFinite(share));
}
