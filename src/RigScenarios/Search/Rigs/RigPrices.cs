using RigScenarios.Costs;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>What the things of a build cost, as the parts of a sum: the same figures as in the answer's costs.</summary>
internal static class RigPrices
{
    /// <summary>What a thing costs; 0 where it is owned, null where no price is known.</summary>
    /// <param name="scenario">The scenario, with the thing in its kit.</param>
    /// <param name="thing">Its name in the kit.</param>
    /// <param name="terms">The terms of the question.</param>
    public static decimal? Of(Scenario scenario, string thing, CostTerms terms) =>
        KitCost.Of(scenario, [thing], terms).Lines[0].Total;

    /// <summary>The things of a build and its days that cost something, by their names in the kit.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    public static IReadOnlyList<string> Things(Scenario scenario, string build) =>
        [.. KitCost.Of(scenario, build).Lines.Select(line => line.Name)];

    /// <summary>The currency of all prices that a question can come upon; null where there is none.</summary>
    /// <param name="question">The question.</param>
    /// <exception cref="ScenarioProblemsException">There are several.</exception>
    public static string? Currency(BestRigQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        var rig = KitCost.Of(question.Scenario, question.Best.Build).Currency;
        var all = question.Places.SelectMany(place => place.Candidates.Where(candidate => !candidate.IsEmpty)
                .Select(candidate => KitCost.Of(ChosenRig.With(question.Scenario, question.Best.Build, place, candidate),
                    [place.Replaces]).Currency))
            .Append(rig).Append(question.Best.Musts.Budget?.Currency).Append(question.Best.Upgrade?.BudgetAYear.Currency)
            .OfType<string>().Distinct().ToList();
        return all.Count <= 1 ? all.FirstOrDefault() : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "",
            TextPlace.None, "best-rig.slots", $"The prices are in several currencies ({string.Join(", ", all)}), and nothing is "
                + "converted.", "candidates with prices in one currency")]);
    }
}
