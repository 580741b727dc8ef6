using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>What the simulation takes for what a file does not plan: told as an assumption.</summary>
public static class NotPlanned
{
    /// <summary>Each in a sentence; none if the file plans batteries, chargers and swaps.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">How many days are asked for; all of the scenario if null.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build.</exception>
    public static IReadOnlyList<string> Of(Scenario scenario, string build, int? days = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        var sentences = new List<string>();
        if (scenario.Batteries.Count == 0)
            sentences.Add($"The file names no batteries to swap: the build's own \"{chosen.Battery.Item}\" is the only one.");
        if (scenario.Chargers.Values.All(charger => charger.Bays == 0))
        {
            sentences.Add("The file names no charger: nothing is charged by day"
                + ((days ?? scenario.Days.Count) > 1
                    ? ", and every day begins as the first (assumed: charged overnight elsewhere)."
                    : "."));
        }

        sentences.AddRange(ChargerWords.Unplaced(scenario.Chargers));
        if (scenario.Batteries.Count > 1 && scenario.Swaps is { WarningVoltage: null, Reserve: null, AtBlockEnds: false })
            sentences.Add("The file does not say when a swap is wanted: a battery stays on until the rig stops, and the next "
                + "one goes on then.");
        return sentences;
    }
}
