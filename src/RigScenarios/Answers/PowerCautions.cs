using RigScenarios.Days;

namespace RigScenarios.Answers;

/// <summary>What goes with a plan that has a generator, and with batteries that are kept and charged over days. Sources:
/// docs/cautions.md.</summary>
public static class PowerCautions
{
    /// <summary>For the time between jobs.</summary>
    internal const string Keeping = "Between jobs keep batteries at 40 to 60 % charge, cool and dry, apart from what burns.";

    /// <summary>What goes with a generator: exhaust first, then electric shock; nothing where none can be meant.</summary>
    /// <param name="plan">The plan.</param>
    /// <remarks>Power at hours that nobody says the source of may be a generator's, and is told so.</remarks>
    public static IEnumerable<string> Generators(DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var chargers = plan.Chargers.Values.Where(charger => charger.Bays > 0).ToList();
        var planned = chargers.Exists(charger => charger.PowerFrom == PowerSource.Generator);
        if (!planned && !chargers.Exists(charger => charger.PowerFrom is null && charger.PowerHours.Count > 0))
            yield break;
        yield return (planned ? "Generator: its" : "If the charger's power is a generator's: its")
            + " exhaust kills without a smell. Run it in the open only, never in a room, van or tent, doors open or not, and 6 m "
                + "or more from doors, windows and vents.";
        yield return (planned ? "Generator: keep" : "Then also: keep")
            + " it, its plugs and your hands dry, with a residual-current device (30 mA) before all it feeds and cables made for "
                + "outdoors. Let it cool before you refuel.";
    }

    /// <summary>How to keep batteries between days, and what to do when one smokes; nothing for one day without a
    /// charger.</summary>
    /// <param name="plan">The plan.</param>
    public static IEnumerable<string> Batteries(DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var several = plan.Days.Count > 1;
        if (several)
            yield return Keeping;
        if (several || plan.Chargers.Values.Any(charger => charger.Bays > 0))
            yield return "If a battery smokes, hisses, swells or gets hot by itself: don't touch it, get everybody out and away "
                + "from the smoke, which is poisonous, and call the fire service.";
    }
}
