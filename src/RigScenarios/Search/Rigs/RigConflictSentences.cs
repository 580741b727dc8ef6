using RigScenarios.Answers;
using RigScenarios.Costs;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>The sentences of a search that found nothing: what stands in the way, and by how much the nearest rig misses
/// it.</summary>
public static class RigConflictSentences
{
    /// <summary>Which musts do not go together, what is possible without one of them, and what the nearest rig lacks; none where
    /// rigs were found.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> Of(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var lines = new List<string>();
        foreach (var set in result.Conflict?.Sets ?? [])
        {
            if (set.Musts.Count == 0 || set.Musts is [RigMust.Fits])
            {
                lines.Add("No choice of these parts goes together, whatever else is asked.");
                continue;
            }
            var musts = set.Musts.Where(must => must != RigMust.Fits).ToList();
            lines.Add(musts.Count == 1 ? $"No rig of these parts is able {RigSearchWords.Must(result.Question, musts[0])}."
                    + Nearest(result, musts[0], set.Nearest)
                : $"{RigSearchSentences.Upper(RigSearchSentences.Listed(result, musts))} do not go together"
                    + $"{(set.IsMinimal ? "; any of them can be dropped" : "")}.");
            lines.AddRange(set.Musts.Zip(set.Without).Where(one => one.First != RigMust.Fits && one.Second is not null)
                .Select(one => $"Without the wish \"{RigSearchWords.Must(result.Question, one.First)}\" the cheapest rig that "
                    + $"holds all else costs {RigSearchSentences.Money(result, one.Second!.Value)}."));
        }
        if (result.Conflict?.Sets.Any(set => set.Nearest is not null && set.Musts is not [RigMust.Budget]) is true)
            lines.Add($"Only {Places(result)} {(result.Question.Places.Count == 1 ? "is" : "are")} exchanged: where the reason "
                + "is something else, such as a cable or how high the tripod stands, change that and search again.");
        if (result.Conflict is { IsComplete: false })
            lines.Add($"There may be more such sets: {RigSearchSentences.Ended(result)}.");
        return lines;
    }

    private static string Nearest(RigSearchResult result, RigMust must, RigNearMiss? nearest) => nearest is null ? ""
        : must == RigMust.Budget ? $" The cheapest is {Rig(result, nearest.Choice)}. {nearest.Why}{NotChosen(result)}"
        : $" The nearest is {Rig(result, nearest.Choice)}. {nearest.Why}";

    private static string Places(RigSearchResult result)
    {
        List<string> names = [.. result.Question.Places.Select(place => LimitSentences.Element(place.Name))];
        return names.Count == 1 ? names[0] : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";
    }

    private static string Rig(RigSearchResult result, Choice choice)
    {
        var changed = result.Question.Places.Select((place, number) => (place.Name, Candidate: place.Candidates[choice[number]]))
            .Where(place => !place.Candidate.IsNow).ToList();
        return changed.Count == 0 ? "the rig as it is now" : "the rig with "
            + string.Join(", ", changed.Select(place => place.Candidate.IsEmpty ? $"no {LimitSentences.Element(place.Name)}"
                : place.Candidate.Title));
    }

    // Whoever owns a camera and has not said so is told that nothing within the budget can be had.
    private static string NotChosen(RigSearchResult result)
    {
        var (question, rest) = (result.Question, result.Model.Cost.Rest);
        if (rest <= 0)
            return "";
        var things = KitCost.Of(question.Scenario, question.Best.Build, question.Terms).Lines
            .Where(line => line.Total > 0 && question.Places.All(place => place.Replaces != line.Name))
            .OrderByDescending(line => line.Total).ToList();
        const int most = 3;
        var named = string.Join(", ", things.Take(most).Select(line => LimitSentences.Element(line.Name)));
        var owned = things.Exists(line => line.IsHadAssumed)
            ? " Nobody says which of these are owned, so they count as bought; what is owned costs nothing." : "";
        return $" {RigSearchSentences.Money(result, (double)rest)} of that is for what is not exchanged here: {named}"
            + $"{(things.Count > most ? $" and {things.Count - most} more" : "")}.{owned}";
    }
}
