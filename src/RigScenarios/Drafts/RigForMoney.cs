using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Drafts;

/// <summary>The question of the best rig for the money, asked of a rig that somebody described.</summary>
public static class RigForMoney
{
    private const string BudgetPath = "costs.budget";

    /// <summary>
    /// The question: the usual one (<see cref="UsualBestRig"/>) for the build and the day that are described, within their
    /// budget, with all parts of the scenario and all that could be chosen from as candidates.
    /// </summary>
    /// <param name="given">What is given.</param>
    /// <exception cref="ScenarioProblemsException">It is incomplete, does not add up, or says no budget; the paths are those of
    /// the file.</exception>
    public static BestRigQuestion Of(GivenRig given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var (whole, frame) = (RigSoFar.WholeOf(given), given.Frame);
        if (whole.Costs?.Budget is null)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, BudgetPath,
                "Say first what it may cost: no budget is given yet.", "an amount with its currency, such as 2500 EUR")]);
        // Of the library the rig has only what is on it.
        var scenario = whole with
        {
            Library = new(whole.Library.Concat(frame.Library.Where(part => !whole.Library.ContainsKey(part.Key)))),
        };
        return BestRigQuestion.Of(scenario with { BestRig = UsualBestRig.Of(scenario, frame.Build) with { Days = [frame.Day] } },
            frame.Today);
    }
}
