using RigScenarios.Builds;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>A scenario's question of the best rig, with its candidates looked up.</summary>
public sealed record BestRigQuestion
{
    /// <summary>The scenario that choices are made in: the air as the musts want it, and without the question.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The question.</summary>
    public required BestRig Best { get; init; }

    /// <summary>The days' short names.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>The places, in the order of the file.</summary>
    public required IReadOnlyList<RigPlace> Places { get; init; }

    /// <summary>The day on which it is asked: flights are meant for it, and batteries' lives go until it. Null for the first day
    /// of the edition of the travel rules, and lives without an end.</summary>
    public DateOnly? Today { get; init; }

    /// <summary>What the prices mean, with rents for the days that are asked about; also where the file says nothing of
    /// money.</summary>
    public CostTerms Terms => (Scenario.Costs ?? new()).ForDays(Days.Count);

    /// <summary>The build that choices start from.</summary>
    public Build Start => Scenario.Builds[Best.Build];

    /// <summary>How many choices there are, those that do not fit together among them; may be beyond what can be counted
    /// exactly.</summary>
    public double Choices => Places.Aggregate(1.0, (product, place) => product * place.Candidates.Count);

    /// <summary>The question of a scenario.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="today">The day on which it is asked.</param>
    /// <exception cref="ScenarioProblemsException">The scenario asks no such question.</exception>
    public static BestRigQuestion Of(Scenario scenario, DateOnly? today = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (scenario.BestRig is not { } best)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "best-rig",
                "The scenario does not say what may be chosen.",
                "a group such as \"best-rig: {build: NAME, slots: {battery: {kind: battery}}}\" (docs/best-rig.md)")]);
        IReadOnlyList<string> days = best.Days.Count > 0 ? best.Days : [.. scenario.Days.Keys];
        return new()
        {
            Scenario = InAir(scenario with { BestRig = null }, days,
                best.Musts.Lasts?.Air).AskedOn(today),
            Best = best, Days = days, Today = today,
            Places = [.. best.Slots.Keys.Select(name => RigPlace.Of(scenario, name))],
        };
    }

    /// <summary>The scenario of a choice.</summary>
    /// <param name="choice">For each place the number of its candidate, from 0.</param>
    /// <param name="places">The places that are filled, by their numbers; null for all. The others stay as they are
    /// now.</param>
    public Scenario With(IReadOnlyList<int> choice, IReadOnlySet<int>? places = null)
    {
        ArgumentNullException.ThrowIfNull(choice);
        var changed = Scenario;
        for (var place = 0; place < Places.Count; place++)
        {
            if (places is null || places.Contains(place))
                changed = ChosenRig.With(changed, Best.Build, Places[place], Places[place].Candidates[choice[place]]);
        }
        return changed;
    }

    /// <summary>The air of the days moved together, so that its coldest point is the one that is wanted.</summary>
    private static Scenario InAir(Scenario scenario, IReadOnlyList<string> days, Temperature? coldest)
    {
        if (coldest is not { } wanted)
            return scenario;
        var now = (scenario with { Days = new(scenario.Days.Where(day => days.Contains(day.Key))) }).ColdestAir;
        return now is { } air ? scenario.Warmer(wanted - air, days) : scenario;
    }
}
