using System.Globalization;
using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What a battery is to the passenger rules: which limits on number it counts against.</summary>
public enum BaggageKind
{
    /// <summary>In a device.</summary>
    Installed,

    /// <summary>Spare, without approval.</summary>
    SmallSpare,

    /// <summary>Spare, with approval.</summary>
    LargeSpare,

    /// <summary>Power bank, without approval, where the edition counts power banks apart.</summary>
    SmallPowerBank,

    /// <summary>Power bank, with approval; counted among power banks and among large spares.</summary>
    LargePowerBank,
}

/// <summary>One battery held against the passenger rules, without regard to how many there are.</summary>
/// <param name="Kind">What it counts as.</param>
/// <param name="Margin">How far it is below the limit that it is measured by; negative above the highest.</param>
/// <param name="Limit">That limit.</param>
/// <param name="NeedsApproval">Whether the airline must approve it before the journey.</param>
/// <param name="StoppedBy">The rule that keeps it out of all baggage; null if none does.</param>
/// <param name="Remedy">What would change that; null if nothing stops it.</param>
public sealed record FlightCheck(BaggageKind Kind, Energy Margin,
    Sourced<Energy> Limit, bool NeedsApproval, Sourced<string>? StoppedBy, string? Remedy)
{
    /// <summary>A share by which a figure may exceed a limit through rounding inside the computer alone.</summary>
    private const double Rounding = 1e-9;

    /// <summary>The margin in words: "2 Wh under 100 Wh", "30 Wh over 160 Wh".</summary>
    public string MarginWords => Margin.WattHours >= 0
        ? $"{Number(Margin.WattHours)} Wh under {Number(Limit.Value.WattHours)} Wh"
        : $"{Number(-Margin.WattHours)} Wh over {Number(Limit.Value.WattHours)} Wh";

    /// <summary>Holds one battery against the passenger rules of an edition.</summary>
    public static FlightCheck Of(PackedBattery battery, PassengerRules rules)
    {
        ArgumentNullException.ThrowIfNull(battery);
        ArgumentNullException.ThrowIfNull(rules);
        var energy = battery.Rated.Energy;
        var small = AtMost(energy, rules.WithoutApproval.Value);
        var limit = small ? rules.WithoutApproval : rules.WithApproval;
        var kind = battery.Installed ? BaggageKind.Installed
            : battery.PowerBank && rules.PowerBanks is not null
                ? (small ? BaggageKind.SmallPowerBank : BaggageKind.LargePowerBank)
            : small ? BaggageKind.SmallSpare : BaggageKind.LargeSpare;
        var check = new FlightCheck(kind, AtMost(energy, limit.Value)
            ? Energy.FromWattHours(Math.Max(0, (limit.Value - energy).WattHours)) : limit.Value - energy, limit,
            !small, null, null);
        if (!AtMost(energy, rules.WithApproval.Value))
            return check with { NeedsApproval = false, StoppedBy = new(rules.WithApproval.Why, "", rules.WithApproval.Source),
                Remedy = "It must go another way: by road, or as air cargo." };
        if (!battery.Installed && !battery.ContactsCovered)
            return check with { StoppedBy = rules.Contacts,
                Remedy = "Cover the contacts (cap, tape, or a bag each), then ask again." };
        return check;
    }

    /// <summary>Whether a figure does not exceed a limit.</summary>
    internal static bool AtMost(Energy energy, Energy limit) => energy.WattHours <= limit.WattHours * (1 + Rounding);

    /// <summary>A number with at most two digits behind the point; below that, as many as it takes not to read 0.</summary>
    internal static string Number(double value) =>
        value is not 0 && Math.Abs(value) < 0.005
            ? value.ToString("G1", CultureInfo.InvariantCulture) : value.ToString("0.##", CultureInfo.InvariantCulture);
}
