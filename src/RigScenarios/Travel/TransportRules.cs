namespace RigScenarios.Travel;

/// <summary>One edition of the transport rules, with the days on which it is held to be in force.</summary>
/// <param name="Name">Its name for people.</param>
/// <param name="From">First day.</param>
/// <param name="Until">Last day.</param>
/// <param name="News">What is new in it, in one sentence.</param>
/// <param name="Passengers">What passengers and crew may carry.</param>
/// <param name="Cargo">What holds for air cargo.</param>
/// <param name="Road">What holds by road.</param>
public sealed record TransportRules(string Name, DateOnly From, DateOnly Until, string News, PassengerRules Passengers,
    CargoRules Cargo, RoadRules Road);

/// <summary>The edition for a day.</summary>
/// <param name="Rules">The edition, or the nearest one that is held.</param>
/// <param name="Warning">Why the edition may not be the right one; null where the day lies in it.</param>
public sealed record RulesInForce(TransportRules Rules, string? Warning)
{
    /// <summary>Whether the day lies in an edition that is held.</summary>
    public bool Covered => Warning is null;
}
