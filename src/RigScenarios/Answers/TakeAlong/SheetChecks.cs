using RigScenarios.Builds;
using RigScenarios.Simulation;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>What is looked at before the camera rolls: of this rig, in the order in which it is put together.</summary>
internal static class SheetChecks
{
    public static SheetSection Of(RigAnswer answer) => Section(Lines(answer));

    /// <summary>The same for whoever puts it together.</summary>
    public static SheetSection OfBuilding(RigAnswer answer) => Section(
    [
        "Everything on the list is here, whole and dry.",
        "Every screw, clamp and lock tight: pull at each part, nothing moves.", .. Together(answer),
    ]);

    private static SheetSection Section(IEnumerable<string> lines) => new("Checks before rolling", SheetForm.Checks,
        [.. lines.Select(line => new[] { line })]) { IsWide = true };

    private static IEnumerable<string> Lines(RigAnswer answer)
    {
        foreach (var line in Together(answer))
            yield return line;
        if (answer.Simulation.Swaps.Count > 0)
            yield return "The next battery at hand, warm and charged; who swaps, and who holds the rig?";
    }

    private static IEnumerable<string> Together(RigAnswer answer)
    {
        yield return Batteries(answer);
        yield return "Each plug in the outlet of the list and pushed home; no cable coiled, pinched or warm.";
        if (answer.TheBuild.Stance == Stance.Tripod && answer.Balance is { } balance)
        {
            if (balance.Best is not null)
                yield return "Camera plate and counterbalance set. A hand under the lens, let go level, nose up, nose down: "
                    + "does it "
                    + "stay?";
            yield return "Tripod spread, locked, on firm ground." + string.Concat(TripodWords.Ballast(balance))
                + " Nothing hangs where somebody walks into it.";
        }
        else
            yield return "Put on with two people, everything tight. Do the hands carry what is told here?";
        if (answer.Balance is { LocksBeforeSwap: not false } && answer.Simulation.Swaps.Count > 0)
            yield return "The tilt lock works, and everybody who swaps knows it.";
        yield return "Everything switched on and recording for five minutes: nothing restarts, nothing gets hot.";
    }

    private static string Batteries(RigAnswer answer)
    {
        var first = answer.Simulation.Days[0];
        var charged = answer.Plan.Batteries.Select(battery => $"{SheetWords.Thing(battery.Key)} "
            + SheetWords.Percent(first.ChargeAtStart[battery.Key])
            + (OnRig(answer, battery.Key) ? " (on the rig)" : "")).ToList();
        return $"Charged at call time: {string.Join(", ", charged)}.";
    }

    private static bool OnRig(RigAnswer answer, string battery) =>
        answer.Simulation.Batteries[battery].Spans is [{ Place: BatteryPlace.OnRig }, ..];
}
