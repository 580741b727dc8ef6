using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The chargers of a plan in words: where each stands, and what it asks of its outlet.</summary>
public static class ChargerWords
{
    /// <summary>Each charger that has a bay, in a sentence or two.</summary>
    /// <param name="plan">The plan.</param>
    public static IReadOnlyList<string> Of(DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Chargers.Where(charger => charger.Value.Bays > 0)
            .Select(charger => Of(charger.Key, charger.Value, plan))];
    }

    /// <summary>Bays, current and hours of power of each charger, without what it then draws.</summary>
    /// <param name="plan">The plan.</param>
    internal static IEnumerable<string> Given(DayPlan plan) => plan.Chargers.Where(charger => charger.Value.Bays > 0)
        .Select(charger => $"{charger.Key}: {Bays(charger.Value)}{PowerOf(charger.Value)}.");

    /// <summary>Where a charger stands that is counted in air of its own, as an assumption; none where the file says
    /// it.</summary>
    /// <param name="chargers">The chargers by name.</param>
    public static IEnumerable<string> Unplaced(IEnumerable<KeyValuePair<string, DayCharger>> chargers)
    {
        ArgumentNullException.ThrowIfNull(chargers);
        return chargers.Where(charger => charger.Value is { Bays: > 0, Ambient: not null, Stands: null })
            .Select(charger => $"The file does not say where the charger \"{charger.Key}\" stands "
                + $"(chargers.{charger.Key}.stands): it is counted in air of "
                    + $"{charger.Value.Ambient!.Value.DegreesCelsius:0.#} °C.");
    }

    /// <summary>The most that a charger draws from its outlet, W: all bays at once, as far as its limits let it.</summary>
    /// <param name="charger">The charger.</param>
    /// <param name="plan">The plan, for its batteries.</param>
    public static Power Draw(DayCharger charger, DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(charger);
        ArgumentNullException.ThrowIfNull(plan);
        var together = charger.Order == BayOrder.InTurn ? 1 : charger.Bays;
        var watts = plan.Batteries.Values.Select(battery => Math.Min(charger.Current.Amperes,
                battery.MaximumChargeCurrent?.Amperes ?? double.PositiveInfinity) * battery.ChargeVoltage.Volts)
            .OrderDescending().Take(together).Sum() / charger.Efficiency.DecimalFractions;
        return charger.LargestFromWall is { } most && (double)most.Watts < watts ? most : Power.FromWatts(watts);
    }

    private static string Of(string name, DayCharger charger, DayPlan plan)
    {
        var stands = charger.Stands is { } place ? $", {place}" : "";
        var air = charger.Ambient is { } own ? $", in air of {own.DegreesCelsius:0.#} °C" : "";
        var watts = (double)Draw(charger, plan).Watts;
        if (watts <= 0)
            return $"{name}: {Bays(charger)}{stands}{air}{PowerOf(charger)}. It gets no power.";
        var factor = (charger.PowerFactor ?? DayCharger.UsualPowerFactor).DecimalFractions;
        var assumed = charger.PowerFactor is null ? ", assumed" : "";
        var outlet = charger.SupplyRating is { } rating ? $"the outlet is rated for {(double)rating.Voltamperes:0} VA"
            : "compare that with the outlet's label";
        return $"{name}: {Bays(charger)}{stands}{air}{PowerOf(charger)}. It draws up to {watts:0} W, which is "
            + $"{watts / factor:0} VA at a power factor of {factor:0.##}{assumed}; {outlet}.";
    }

    private static string Bays(DayCharger charger) =>
        $"{(charger.Bays == 1 ? "one bay" : $"{charger.Bays} bays")} of {charger.Current.Amperes:0.##} A";

    private static string PowerOf(DayCharger charger)
    {
        var from = charger.PowerFrom switch
        {
            PowerSource.Generator => "a generator",
            PowerSource.Vehicle => "a vehicle",
            PowerSource.Mains => "the mains",
            _ => null,
        };
        var hours = charger.PowerHours.Count == 0 ? "" : string.Join(" and ",
            charger.PowerHours.Select(range => $" {range.From:HH:mm} to {range.To:HH:mm}"));
        return from is not null ? $"; power from {from}{hours}" : hours.Length > 0 ? $"; power{hours}" : "";
    }
}
