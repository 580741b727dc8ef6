using RigScenarios.Costs;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What a build costs over the years to come: had as the scenario says, shared over what it does, and bought held
/// against rented.</summary>
/// <param name="Years">The cost over the years; null where nobody says how many shooting days a year has.</param>
/// <param name="Each">The same over days, energy and reserve; null where <paramref name="Years"/> is.</param>
/// <param name="BuyOrRent">Buying held against renting.</param>
public sealed record CostAhead(YearsCost? Years, CostQuotients? Each, BuyOrRent BuyOrRent)
{
    /// <summary>Works it out for an answer.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Null where it does not ask what the build costs.</returns>
    public static CostAhead? Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer is not { Cost: { } kit, Scenario.Costs: { } terms })
            return null;
        var years = YearsCost.Of(answer.Scenario, kit, terms);
        var energy = answer.Simulation.Batteries.Values.Sum(battery => battery.Delivered.WattHours) / answer.Plan.Days.Count;
        return new CostAhead(years, years is null ? null
            : CostQuotients.Of(years, Energy.FromWattHours(energy), answer.Tightest.Reserve.Time),
            BuyOrRent.Of(answer.Scenario, kit, terms));
    }
}
