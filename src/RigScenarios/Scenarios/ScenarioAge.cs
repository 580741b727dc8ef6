using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Scenarios;

/// <summary>How old the batteries of a scenario are.</summary>
public static class ScenarioAge
{
    /// <summary>What is known of the age of a build's own battery.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="battery">The battery.</param>
    public static KnownAge AgeOf(this Scenario scenario, BatteryInUse battery)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(battery);
        return new(scenario.PartOf(battery.Item)?.Battery?.Chemistry, battery.Life, battery.CapacityLeft,
            battery.ResistanceGrowth);
    }

    /// <summary>What is known of the age of a battery that takes turns, or that is inside a device.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="battery">The battery.</param>
    public static KnownAge AgeOf(this Scenario scenario, BatteryAtStart battery)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(battery);
        return new(scenario.PartOf(battery.Item)?.Battery?.Chemistry, battery.Life, battery.CapacityLeft,
            battery.ResistanceGrowth);
    }

    /// <summary>
    /// The scenario as it is asked on a day: a life that names no day of its own goes until then. Everything that gives an answer
    /// begins with it, for the same file is asked again years later.
    /// </summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="today">The day; null leaves such a life without an end, so that nothing follows from it.</param>
    /// <exception cref="ScenarioProblemsException">A battery was bought after that day.</exception>
    public static Scenario AskedOn(this Scenario scenario, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        if (today is not { } day || !Lives(scenario).Any(life => life.Life is { Until: null }))
            return scenario;
        LifeInWords? Until(LifeInWords? life) => life is { Until: null } ? life with { Until = day } : life;
        BatteryAtStart At(BatteryAtStart battery) => battery with { Life = Until(battery.Life) };
        var asked = scenario with
        {
            Builds = new(scenario.Builds.Select(build => KeyValuePair.Create(build.Key, build.Value with
            {
                Battery = build.Value.Battery with { Life = Until(build.Value.Battery.Life) },
            }))),
            Batteries = new(scenario.Batteries.Select(one => KeyValuePair.Create(one.Key, At(one.Value)))),
            HotSwap = scenario.HotSwap is { } reserve ? reserve with { Pack = At(reserve.Pack) } : null,
            InternalBatteries = new(scenario.InternalBatteries.Select(one => KeyValuePair.Create(one.Key, At(one.Value)))),
        };
        var problems = Lives(asked).Select(life => (life.Path, Problem: Problem(life.Life)))
            .Where(life => life.Problem is not null)
            .Select(life => new Diagnostic(Severity.Error, "", TextPlace.None, $"{life.Path}.bought", life.Problem!.Value.Found,
                life.Problem.Value.Accepted)).ToList();
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : asked;
    }

    /// <summary>What is wrong between the dates of a life; null where nothing is.</summary>
    internal static (string Found, string Accepted)? Problem(LifeInWords life)
    {
        if (life is not { Bought: { } bought, Until: { } until } || bought.Date <= until)
            return null;
        var asked = until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        return bought.OnlyMonth && bought.Date.Year == until.Year && bought.Date.Month == until.Month
            ? ($"\"{bought}\" means the 15th, which is after the day for which the age is asked ({asked}).",
                $"the day itself, such as \"{bought}-01\"")
            : ($"It was bought on {bought}, after the day for which its age is asked ({asked}).",
                $"a month or a day before {asked}");
    }

    private static IEnumerable<(string Path, LifeInWords Life)> Lives(Scenario scenario) =>
        ((IEnumerable<(string Path, LifeInWords? Life)>)
        [
            .. scenario.Builds.Select(build => ($"builds.{build.Key}.battery.age", build.Value.Battery.Life)),
            .. scenario.Batteries.Select(battery => ($"batteries.{battery.Key}.age", battery.Value.Life)),
            ("hot-swap.pack.age", scenario.HotSwap?.Pack.Life),
            .. scenario.InternalBatteries.Select(battery => ($"internal-batteries.{battery.Key}.age", battery.Value.Life)),
        ]).Where(life => life.Life is not null).Select(life => (life.Path, life.Life!));
}
