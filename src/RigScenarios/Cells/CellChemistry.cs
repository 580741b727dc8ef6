using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// What the discharge model assumes of a cell chemistry where a battery's data sheet says nothing. Each value carries its source.
/// </summary>
public sealed record CellChemistry
{
    /// <summary>Short name as it stands in files: "nmc", "lfp".</summary>
    public required string Name { get; init; }

    /// <summary>What it is, in words.</summary>
    public required string Description { get; init; }

    /// <summary>Nominal voltage of one group: the label's voltage over this is the number of groups.</summary>
    public required Sourced<ElectricPotential> NominalVoltage { get; init; }

    /// <summary>Voltage of one group at which a pack's protection ends the discharge.</summary>
    public required Sourced<ElectricPotential> CutoffVoltage { get; init; }

    /// <summary>Open-circuit voltage of one group.</summary>
    public required Sourced<OpenCircuitVoltage> OpenCircuitVoltage { get; init; }

    /// <summary>Voltage at which chargers hold one group; null where it is that of the full group at rest.</summary>
    public Sourced<ElectricPotential>? ChargeVoltage { get; init; }

    /// <summary>Usable part of the capacity over cell temperature.</summary>
    public required Sourced<UsableCapacity> UsableCapacity { get; init; }

    /// <summary>
    /// Sustained resistance of one group times its capacity at 25 °C, in Ω·Ah: R0 + R1 + R2 = this / Q. It is the resistance
    /// under a
    /// steady load of an hour or more, not that of a ten-second pulse.
    /// </summary>
    public required Sourced<double> SustainedResistanceOhmAmpereHours { get; init; }

    /// <summary>How the sustained resistance divides, and how fast its slower parts build up.</summary>
    public required Sourced<ResistanceSplit> ResistanceSplit { get; init; }

    /// <summary>Activation energy of the sustained resistance.</summary>
    public required Sourced<MolarEnergy> ActivationEnergy { get; init; }

    /// <summary>Least resistance factor in the warm.</summary>
    public required Sourced<double> ResistanceFloor { get; init; }

    /// <summary>Share of the charge in the near well; 1 for one well.</summary>
    public required Sourced<double> NearShare { get; init; }

    /// <summary>Time constant of the exchange between the two wells at 25 °C.</summary>
    public required Sourced<Duration> ExchangeTime { get; init; }

    /// <summary>Activation energy of the exchange.</summary>
    public required Sourced<MolarEnergy> ExchangeActivationEnergy { get; init; }

    /// <summary>
    /// The same with the values that belong to a single well: the usable capacity, resistance and activation energy of a model
    /// without an exchange. The two sets must not be mixed.
    /// </summary>
    public CellChemistry OneWell => this with
    {
        NearShare = ValuesOfOneWell.NearShare,
        UsableCapacity = ValuesOfOneWell.UsableCapacity,
        SustainedResistanceOhmAmpereHours = ValuesOfOneWell.SustainedResistanceOhmAmpereHours,
        ActivationEnergy = ValuesOfOneWell.ActivationEnergy,
    };

    /// <summary>What takes the place of the values for two wells.</summary>
    public required OneWellValues ValuesOfOneWell { get; init; }

    /// <summary>
    /// Growth of the resistance, as a share of the new one, over the loss of capacity, as a share of the new one: k of
    /// <see cref="Wear"/>.
    /// </summary>
    public required Sourced<double> GrowthPerLoss { get; init; }

    /// <summary>Specific heat of a pack.</summary>
    public required Sourced<SpecificEntropy> SpecificHeat { get; init; }

    /// <summary>Energy of a pack over its mass, for a battery whose mass is not known.</summary>
    public required Sourced<SpecificEnergy> SpecificEnergy { get; init; }

    /// <summary>Pack temperature at which the protection ends the discharge.</summary>
    public required Sourced<Temperature> MaximumTemperature { get; init; }

    /// <summary>Largest current over the capacity in Ah, 1/h (the C-rate), at which the protection ends the discharge.</summary>
    public required Sourced<double> MaximumRatePerHour { get; init; }
}

/// <summary>Shares of the sustained resistance, which add up to 1, and the time constants of the two slower ones.</summary>
/// <param name="Share0">Part that acts at once.</param>
/// <param name="Share1">Part that builds up with the first time constant.</param>
/// <param name="Share2">Part that builds up with the second time constant.</param>
/// <param name="TimeConstant1">First time constant.</param>
/// <param name="TimeConstant2">Second time constant.</param>
public sealed record ResistanceSplit(double Share0, double Share1, double Share2, Duration TimeConstant1, Duration TimeConstant2);

/// <summary>The values of a chemistry that belong to a single well, fitted without an exchange.</summary>
/// <param name="NearShare">Share of the charge in the near well: 1.</param>
/// <param name="UsableCapacity">Usable part of the capacity over cell temperature, which holds all that the cold does.</param>
/// <param name="SustainedResistanceOhmAmpereHours">Sustained resistance of one group times its capacity at 25 °C, Ω·Ah.</param>
/// <param name="ActivationEnergy">Activation energy of the sustained resistance.</param>
public sealed record OneWellValues(
    Sourced<double> NearShare, Sourced<UsableCapacity> UsableCapacity, Sourced<double> SustainedResistanceOhmAmpereHours,
    Sourced<MolarEnergy> ActivationEnergy);
