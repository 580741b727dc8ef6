using RigScenarios.Limits;
using RigScenarios.Travel;

namespace RigScenarios.Answers;

/// <summary>The journeys of a plan in one line; each alone is told by <see cref="TravelWords"/>.</summary>
public static class JourneySentences
{
    /// <summary>The verdict on all journeys together, as the question of travel has it in every answer.</summary>
    /// <param name="journeys">The journeys of the scenario.</param>
    public static Verdict Verdict(IReadOnlyList<PlannedJourney> journeys)
    {
        ArgumentNullException.ThrowIfNull(journeys);
        return QuestionRules.Travel(journeys).Verdict;
    }

    /// <summary>What stays behind, what must be approved, or that everything goes.</summary>
    /// <param name="journeys">The journeys of the scenario.</param>
    public static string Line(IReadOnlyList<PlannedJourney> journeys)
    {
        ArgumentNullException.ThrowIfNull(journeys);
        var clauses = new List<string>();
        foreach (var (name, answer) in journeys)
        {
            if (answer is null)
            {
                clauses.Add($"\"{name}\" has no date, and rules change");
                continue;
            }
            var title = answer.Journey.Title;
            var staying = QuestionRules.StaysBehind(answer, journeys).ToList();
            var stopped = QuestionRules.Stopped(answer).ToList();
            if (staying.Count > 0)
                clauses.Add($"on \"{title}\" {Batteries(staying.Select(left => (left.Count, left.Battery.Title)))} can't fly "
                    + $"({staying[0].Margin})");
            else if (answer.Left.Count > 0)
                clauses.Add($"on \"{title}\" {Batteries(answer.Left.Select(left => (left.Count, left.Battery.Title)))} can't "
                    + $"fly and {(answer.Left.Sum(left => left.Count) == 1 ? "goes" : "go")} {OtherWay(answer, journeys)}");
            if (stopped.Count > 0)
                clauses.Add(
                    $"on \"{title}\" {Batteries(stopped.Select(line => (line.Count, line.Battery.Title)))} can't be handed over "
                    + $"as freight: {(stopped[0].Remedy ?? stopped[0].StoppedBy!.Why).TrimEnd('.')}");
            var approvals = answer.Approvals.Sum(item => item.Line.Count);
            if (approvals > 0)
                clauses.Add($"for \"{title}\" ask the airline first: {approvals} "
                    + $"{(approvals == 1 ? "battery needs" : "batteries need")} its approval");
        }
        return clauses.Count > 0 ? string.Join("; ", clauses) : "nothing in the rules held here keeps a battery behind";
    }

    private static string OtherWay(TravelAnswer answer, IReadOnlyList<PlannedJourney> journeys)
    {
        var freight = journeys.Any(other => other.Answer?.Consignment.Any(line =>
            answer.Left.Any(left => left.Battery.Name == line.Battery.Name)) == true);
        return freight ? "as freight" : "by road";
    }

    private static string Batteries(IEnumerable<(int Count, string Title)> batteries) =>
        string.Join(", ", batteries.Select(item => $"{item.Count} × {item.Title}"));
}
