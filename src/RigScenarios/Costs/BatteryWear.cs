using RigScenarios.Cells.Aging;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Costs;

/// <summary>
/// After how many years a new battery of a kit is worn out: what the scenario states, else the time until 80 % of its capacity is
/// left, by the published aging laws of its chemistry, kept as its life in words says.
/// </summary>
public static class BatteryWear
{
    /// <summary>Months of a year.</summary>
    private const double Months = 12;

    /// <summary>The years, by the shooting days a year; each of them is a shoot with this battery.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="name">The battery's name in the kit.</param>
    /// <param name="terms">The terms; they may state the years.</param>
    /// <returns>Null for what is no battery.</returns>
    public static Func<int, double?>? Of(Scenario scenario, string name, CostTerms terms)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(terms);
        if (scenario.PartOf(name)?.Battery is not { } battery)
            return null;
        if (terms.BatteryYears is { } stated)
            return _ => stated;
        var life = LifeOf(scenario, name) ?? LifeInWords.Usual;
        return days => Years(battery, life, days);
    }

    private static double? Years(Battery battery, LifeInWords life, int daysPerYear)
    {
        var (set, assumed) = AgingSets.For(battery.Chemistry);
        var use = (life with { ShootsPerMonth = daysPerYear / Months }).Use(Duration.FromDays(LifeInWords.DaysOfMonth));
        return BatteryLife.After(set, assumed, [], use).TimeTo(LifeResult.Replaced)?.Days / (Months * LifeInWords.DaysOfMonth);
    }

    private static LifeInWords? LifeOf(Scenario scenario, string name) =>
        scenario.Batteries.Values.Where(battery => battery.Item == name).Select(battery => battery.Life)
            .Concat(scenario.Builds.Values.Where(build => build.Battery.Item == name).Select(build => build.Battery.Life))
            .OfType<LifeInWords>().FirstOrDefault();
}
