using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Answers;

/// <summary>A battery that does not get to the days.</summary>
/// <param name="Name">Its short name among the batteries that take turns; that of the kit where the build's own is the only
/// one.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Journey">The title of the journey that it stays behind on.</param>
public sealed record StayingBattery(string Name, string Title, string Journey);

/// <summary>
/// Flight and days joined: what the journeys before the days leave behind takes no part in the days. It is what the question of
/// travel counts, by the same rule.
/// </summary>
/// <param name="Scenario">The scenario with the batteries that arrive; the whole one where nothing would be left.</param>
/// <param name="Staying">What does not arrive.</param>
/// <param name="IsNothingLeft">Whether no battery arrives, so that the days can't be run on what does.</param>
internal sealed record ArrivingBatteries(Scenario Scenario, IReadOnlyList<StayingBattery> Staying, bool IsNothingLeft)
{
    /// <summary>What arrives for one build.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="journeys">All of its journeys.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build.</exception>
    public static ArrivingBatteries Of(Scenario scenario, string build, IReadOnlyList<PlannedJourney> journeys)
    {
        var own = Chosen.From(scenario.Builds, build, "build", "builds").Battery.Item;
        var staying = new List<StayingBattery>();
        foreach (var (item, most) in MostLeft(journeys))
        {
            var here = scenario.Kit[item].Count - most.Count;
            IEnumerable<string> names = scenario.Batteries.Count == 0
                ? item == own && here < 1 ? [own] : []
                // Of equal ones those with the most life left are packed first.
                : scenario.Batteries.Where(battery => battery.Value.Item == item)
                    .OrderByDescending(battery => scenario.AgeOf(battery.Value).Age.CapacityLeft.Percent)
                    .Skip(here).Select(battery => battery.Key);
            staying.AddRange(names.Select(name => new StayingBattery(name, scenario.PartOf(item)!.Name, most.Journey)));
        }
        var nothing = staying.Count > 0 && staying.Count >= scenario.Batteries.Count;
        return new(nothing ? scenario : scenario with
        {
            Batteries = staying.Aggregate(scenario.Batteries, (all, battery) => all.Without(battery.Name)),
        }, staying, nothing);
    }

    /// <summary>Of each thing of the kit the most that one journey before the days leaves behind.</summary>
    private static Dictionary<string, (int Count, string Journey)> MostLeft(IReadOnlyList<PlannedJourney> journeys)
    {
        var most = new Dictionary<string, (int Count, string Journey)>();
        foreach (var answer in journeys.Where(journey => !journey.AfterDays).Select(journey => journey.Answer)
            .OfType<TravelAnswer>())
        {
            var left = QuestionRules.StaysBehind(answer, journeys).Select(line => (line.Battery.Name, line.Count))
                .Concat(QuestionRules.Stopped(answer).Select(line => (line.Battery.Name, line.Count)))
                .GroupBy(line => line.Name, line => line.Count);
            foreach (var line in left.Where(line => !most.TryGetValue(line.Key, out var other) || other.Count < line.Sum()))
                most[line.Key] = (line.Sum(), answer.Journey.Title);
        }
        return most;
    }
}
