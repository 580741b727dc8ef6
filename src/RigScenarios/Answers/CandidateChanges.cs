namespace RigScenarios.Answers;

/// <summary>The changes that are worth a try, from every model; each is told apart from what it brings, which only a run can
/// say.</summary>
internal static class CandidateChanges
{
    /// <summary>All candidates for an answer, the least effort first.</summary>
    public static IReadOnlyList<RigChange> Of(RigAnswer now)
    {
        IEnumerable<RigChange> all =
        [
            .. DeviceChanges.Of(now), .. BatteryChanges.Of(now), .. SwapChanges.Of(now), .. WiringChanges.Of(now),
            .. PlacementChanges.Of(now), .. TravelChanges.Of(now), .. CostChanges.Of(now),
        ];
        return [.. all.Select(change => CostChanges.AsBought(now.Scenario, change))
            .OrderBy(change => change.Effort).ThenBy(change => change.PriceInOrder)];
    }
}
