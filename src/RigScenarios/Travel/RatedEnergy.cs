using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>Where a battery's watt-hours come from.</summary>
public enum WattHourBasis
{
    /// <summary>Printed on the label; what an inspector reads.</summary>
    Label,

    /// <summary>Nominal voltage times rated capacity, because the label gives none.</summary>
    VoltageTimesCapacity,

    /// <summary>Nobody read it: an assumed figure.</summary>
    Assumed,
}

/// <summary>The watt-hours that transport rules go by, and where they come from.</summary>
/// <param name="Energy">Rated energy; above 0.</param>
/// <param name="Basis">Where it comes from.</param>
/// <remarks>
/// Wh = nominal V × rated Ah; the marked figure goes before a computed one (Federal Aviation Administration, "Airline passengers
/// and
/// batteries"; read). The same cells named 3.6 V or 3.7 V differ by 2.8 %, which is enough to cross a limit.
/// </remarks>
public sealed record RatedEnergy(Energy Energy, WattHourBasis Basis)
{
    /// <summary>How far label and V × Ah may differ before it is said, as a share: above what 3.6 V or 3.7 V a cell
    /// explains.</summary>
    private const double Disagreement = 0.03;

    /// <summary>Nominal voltage times rated capacity where a label says something else beside it; null where it does
    /// not.</summary>
    public Energy? Computed { get; init; }

    /// <summary>Where the figure comes from, in words: "label", "V × Ah", "assumed".</summary>
    public string BasisWords => Basis switch
    {
        WattHourBasis.Label => "label",
        WattHourBasis.VoltageTimesCapacity => "V × Ah",
        _ => "assumed",
    };

    /// <summary>Nominal voltage times rated capacity.</summary>
    /// <param name="nominal">Nominal voltage; above 0.</param>
    /// <param name="capacity">Rated capacity; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0.</exception>
    public static RatedEnergy Of(ElectricPotential nominal, ElectricCharge capacity)
    {
        Require.Positive(nominal.Volts, "V", nameof(nominal));
        Require.Positive(capacity.AmpereHours, "Ah", nameof(capacity));
        return new RatedEnergy(Energy.FromWattHours(nominal.Volts * capacity.AmpereHours), WattHourBasis.VoltageTimesCapacity);
    }

    /// <summary>
    /// The watt-hours of a battery: those of its label; V × Ah if nobody read a label's energy but capacity is known; else the
    /// assumed figure.
    /// </summary>
    /// <param name="battery">What is known of the battery.</param>
    /// <param name="assumed">The fields of the part that nobody read, by their keys: <c>battery.energy</c>,
    /// <c>battery.voltage</c>, <c>battery.capacity</c>.</param>
    public static RatedEnergy Of(Battery battery, IReadOnlyCollection<string> assumed)
    {
        ArgumentNullException.ThrowIfNull(battery);
        ArgumentNullException.ThrowIfNull(assumed);
        var computed = battery.Capacity is { } capacity && !assumed.Contains("battery.capacity")
            && !assumed.Contains("battery.voltage")
            ? Of(battery.Voltage, capacity) : null;
        if (assumed.Contains("battery.energy"))
            return computed ?? new RatedEnergy(battery.Energy, WattHourBasis.Assumed);
        Require.Positive(battery.Energy.WattHours, "Wh", nameof(battery));
        return new RatedEnergy(battery.Energy, WattHourBasis.Label) { Computed = computed?.Energy };
    }

    /// <summary>Whether label and V × Ah differ by more than the two usual nominal voltages of a cell explain.</summary>
    public bool Disagrees => Computed is { } computed && Math.Abs((computed / Energy) - 1) > Disagreement;

    /// <summary>The limit that label and V × Ah stand on two sides of, however near they are; null if there is none.</summary>
    /// <param name="rules">The edition's passenger rules, which have the limits.</param>
    public Energy? Between(PassengerRules rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (Computed is not { } computed)
            return null;
        Energy[] limits = [rules.WithoutApproval.Value, rules.WithApproval.Value];
        return limits.Where(limit => FlightCheck.AtMost(Energy, limit) != FlightCheck.AtMost(computed, limit))
            .Select(limit => (Energy?)limit).FirstOrDefault();
    }
}
