using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using RigScenarios.Travel;

namespace RigScenarios.Files;

/// <summary>What must hold between a journey and the kit.</summary>
internal static class JourneyCheck
{
    /// <summary>Checks all journeys; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        foreach (var (name, journey) in scenario.Journeys)
            Check(scenario, journey, $"journeys.{name}", log);
    }

    private static void Check(Scenario scenario, JourneyPlan journey, string at, ReadLog log)
    {
        for (var index = 0; index < journey.Batteries.Count; index++)
        {
            var path = $"{at}.batteries.{index + 1}";
            ScenarioCheck.KitName(scenario, journey.Batteries[index], path, part => part.Battery is not null, "a battery", log);
            if (journey.Batteries.Take(index).Contains(journey.Batteries[index]))
                log.Error(path, $"\"{journey.Batteries[index]}\" stands in the list twice. How many there are says \"count\" "
                    + "in the kit.");
        }
        var along = scenario.BatteriesOn(journey).ToList();
        if (along.Count == 0 && !log.HasErrorIn($"{at}.batteries") && !log.HasErrorIn("kit"))
            log.Error(at, "No battery travels: the kit has none.");
        foreach (var (battery, packing) in journey.Packed)
        {
            var path = $"{at}.packed.{battery}";
            ScenarioCheck.KitName(scenario, battery, path, part => part.Battery is not null, "a battery", log);
            if (scenario.PartOf(battery)?.Battery is not null && !along.Contains(battery))
                log.Error(path, $"\"{battery}\" is not among the batteries of this journey.",
                    along.Count == 0 ? null : string.Join(", ", along.Take(30)));
            if (scenario.Kit.TryGetValue(battery, out var item) && packing.Installed > item.Count)
                log.Error($"{path}.installed",
                    $"{packing.Installed} are in equipment, but the kit has only {item.Count} of \"{battery}\".");
        }
        foreach (var twice in journey.Travellers.Names.GroupBy(name => name, StringComparer.Ordinal)
            .Where(group => group.Count() > 1))
            log.Error($"{at}.travellers",
                $"Two travellers are named \"{twice.Key}\". Give each a name of their own, so that the lists can be told apart.");
    }
}
