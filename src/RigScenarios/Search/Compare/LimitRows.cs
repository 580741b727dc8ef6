using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Search.Compare;

/// <summary>The limits of several answers side by side: those that are passed in one of them, or near.</summary>
internal static class LimitRows
{
    /// <summary>The rows, the least left in any answer first; each limit of an element once, where least of it is left.</summary>
    /// <param name="answers">The answers.</param>
    public static IReadOnlyList<LimitRow> Of(IReadOnlyList<RigAnswer> answers)
    {
        var sides = answers.Select(answer => answer.Questions
            .SelectMany(question => NearestLimit.Counted(answer, question).Select(limit => (question.Kind, Limit: limit)))
            .GroupBy(item => (item.Kind, item.Limit.Element, Limit: item.Limit.Kind))
            .ToDictionary(group => group.Key, group => group.MinBy(item => item.Limit.Share)!.Limit)).ToList();
        return [.. sides.SelectMany(side => side.Keys).Distinct()
            .Select(key => new LimitRow(key.Kind, [.. sides.Select(side => side.GetValueOrDefault(key))]))
            .Where(row => row.Limits.OfType<Limit>().Any(limit => limit.IsPassed || !AnswerDetails.HoldsWithEase(limit)))
            .OrderBy(row => row.Limits.OfType<Limit>().Min(limit => limit.Share))];
    }
}
