using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>Some equal batteries held against the rules for air cargo.</summary>
/// <param name="Battery">The batteries.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Form">How they lie in the consignment.</param>
/// <param name="Entry">Their entry in the list of dangerous goods.</param>
/// <param name="Rule">The rule of that form.</param>
/// <param name="Small">Whether they count as small batteries.</param>
/// <param name="ChargeLimit">The limit on charge that binds them, or that is advised; null if the edition sets none for
/// them.</param>
/// <param name="ChargeMargin">Limit less charge; null where either is not known.</param>
/// <param name="StoppedBy">The rule that stops them as they are; null if none does.</param>
/// <param name="Remedy">What would change that.</param>
public sealed record CargoCheck(
    PackedBattery Battery, int Count, CargoForm Form, UnEntry Entry, CargoFormRule Rule, bool Small,
    Sourced<Ratio>? ChargeLimit, Ratio? ChargeMargin, Sourced<string>? StoppedBy, string? Remedy)
{
    /// <summary>The limit on charge with its margin, in words.</summary>
    public string ChargeWords
    {
        get
        {
            if (ChargeLimit is not { } limit)
                return "no limit on charge in this edition";
            var words = $"{(Rule.ChargeBinds ? "at most" : "advice, no duty: at most")} {limit.Value.Percent:0.##} % charge";
            return ChargeMargin is not { } margin ? $"{words}; its charge is not given"
                : margin.Percent >= 0 ? $"{words}; {FlightCheck.Number(margin.Percent)} points under it"
                : $"{words}; {FlightCheck.Number(-margin.Percent)} points over it";
        }
    }

    /// <summary>What all of them weigh; null where nobody says.</summary>
    public Mass? NetMass => Battery.Mass is { } mass ? mass * Count : null;

    /// <summary>How batteries lie in a consignment.</summary>
    /// <param name="battery">The batteries.</param>
    public static CargoForm FormOf(PackedBattery battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        return battery.Installed ? CargoForm.InEquipment
            : battery.WithEquipment ? CargoForm.PackedWithEquipment : CargoForm.Loose;
    }

    /// <summary>Holds batteries against the cargo rules of an edition.</summary>
    /// <param name="battery">The batteries.</param>
    /// <param name="count">How many of them; 1 or more.</param>
    /// <param name="rules">The edition's cargo rules.</param>
    public static CargoCheck Of(PackedBattery battery, int count, CargoRules rules)
    {
        ArgumentNullException.ThrowIfNull(battery);
        ArgumentNullException.ThrowIfNull(rules);
        var form = FormOf(battery);
        var rule = rules.Of(form);
        var limit = rule.ChargeFrom is { } from && FlightCheck.AtMost(battery.Rated.Energy, from.Value) ? null : rule.Charge;
        Ratio? margin = limit is not null && battery.Charge is { } charge
            ? Ratio.FromPercent(Math.Round((limit.Value - charge).Percent, 9)) : null;
        var check = new CargoCheck(
            battery, count, form, UnEntry.Of(LithiumKind.Ion, form), rule,
            FlightCheck.AtMost(battery.Rated.Energy, rules.SmallBattery.Value), limit, margin, null, null);
        if (rule.ChargeBinds && margin is { Percent: < 0 })
            return check with { StoppedBy = new(limit!.Why, "", limit.Source),
                Remedy = $"Run it down to {limit.Value.Percent:0.##} % or less before it is handed over." };
        if (!battery.Installed && !battery.ContactsCovered)
            return check with { StoppedBy = rules.Duties[^1], Remedy = "Cover the contacts." };
        return check;
    }
}
