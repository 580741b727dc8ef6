using System.Globalization;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>Batteries that can't fly: as freight, at home, or with one more traveller.</summary>
internal static class TravelChanges
{
    /// <summary>A charge under the 30 % that the rules held here allow as freight.</summary>
    private const string FreightCharge = "28 %";

    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        foreach (var (name, answer) in now.Journeys)
        {
            if (answer is null)
                continue;
            var plan = now.Scenario.Journeys[name];
            var staying = QuestionRules.StaysBehind(answer, now.Journeys).ToList();
            if (staying.Count > 0)
            {
                var items = staying.Select(left => left.Battery.Name).Distinct().ToList();
                var title = string.Join(", ", staying.Select(left => left.Battery.Title).Distinct());
                var date = answer.Journey.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
                var after = plan.AfterDays ? "yes" : null;
                var packed = BatteryChanges.Group(("with-equipment", "yes"), ("charge", FreightCharge));
                yield return new($"Send the {title} as freight, in one package with the equipment, at {FreightCharge} charge",
                    [new($"journeys.{FreeName(now.Scenario, $"{name}-freight")}", BatteryChanges.Group(
                        ("title", "As freight"), ("date", date), ("by", "cargo"), ("after-days", after),
                        ("batteries", $"[{string.Join(", ", items)}]"),
                        ("packed", BatteryChanges.Group(items.Select(item => (item, (string?)packed))))))],
                    ChangeEffort.Buy, $"freight of {name}");
                yield return new($"Take the {title} by road",
                    [new($"journeys.{FreeName(now.Scenario, $"{name}-by-road")}", BatteryChanges.Group(
                        ("title", "By road"), ("date", date), ("by", "road"), ("after-days", after),
                        ("batteries", $"[{string.Join(", ", items)}]")))],
                    ChangeEffort.Nothing, $"road of {name}") { Provided = "somebody drives there in time" };
                foreach (var bare in staying.Where(left => left.AsCargo is null).Select(left => left.Battery)
                    .DistinctBy(battery => battery.Name))
                    yield return new($"Cover the contacts of the {bare.Title}",
                        [new($"journeys.{name}.packed.{bare.Name}.contacts-covered", "yes")], ChangeEffort.Nothing,
                        $"contacts of {bare.Name}");
                var used = now.Scenario.Builds.Values.Select(build => build.Battery.Item)
                    .Concat(now.Scenario.Batteries.Values.Select(battery => battery.Item)).ToHashSet();
                var rest = now.Scenario.BatteriesOn(plan).Except(items).ToList();
                if (items.TrueForAll(item => !used.Contains(item)) && rest.Count > 0)
                    yield return new($"Leave the {title} at home: no build uses it",
                        [new($"journeys.{name}.batteries", $"[{string.Join(", ", rest)}]")], ChangeEffort.Nothing,
                        $"batteries of {name}");
                if (staying.TrueForAll(left => left.AsCargo is not null
                    && left.Margin.Contains("number", StringComparison.Ordinal)) && !plan.Travellers.Named)
                    yield return new("Have one more traveller carry batteries",
                        [new($"journeys.{name}.travellers", (plan.Travellers.Count + 1).ToString(CultureInfo.InvariantCulture))],
                        ChangeEffort.Nothing, $"travellers of {name}");
            }
            foreach (var line in QuestionRules.Stopped(answer))
            {
                yield return line.ChargeMargin is { Percent: < 0 }
                    ? new($"Hand the {line.Battery.Title} over at {FreightCharge} charge",
                        [new($"journeys.{name}.packed.{line.Battery.Name}.charge", FreightCharge)], ChangeEffort.Nothing,
                        $"freight charge of {line.Battery.Name}")
                    : new($"Cover the contacts of the {line.Battery.Title}",
                        [new($"journeys.{name}.packed.{line.Battery.Name}.contacts-covered", "yes")], ChangeEffort.Nothing,
                        $"contacts of {line.Battery.Name}");
            }
        }
    }

    private static string FreeName(Scenario scenario, string name) =>
        Enumerable.Range(1, 100).Select(number => number == 1 ? name : $"{name}-{number}")
        .First(free => !scenario.Journeys.ContainsKey(free));
}
