using RigScenarios.Cells.Aging;

namespace RigScenarios.Benchmarks.Cases.Aging;

/// <summary>A history of a case file, and what is asked of it.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Set">The laws.</param>
/// <param name="Assumed">Whether they stand in for an unknown chemistry.</param>
/// <param name="Phases">What the battery goes through.</param>
/// <param name="InWords">Whether the case says it in words, so that the result has the phases.</param>
/// <param name="TimeTo80">Whether the time to 80 % is asked.</param>
/// <param name="Band">Whether the band is asked.</param>
internal sealed record AgingCase(string Id, AgingSet Set, bool Assumed, IReadOnlyList<LifePhase> Phases, bool InWords,
    bool TimeTo80, bool Band);
