using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>One phase of a battery's life: what it was exposed to, or what was measured between two phases.</summary>
public abstract record LifePhase
{
    private protected LifePhase()
    {
    }

    /// <summary>How long the phase lasts; zero for a measurement.</summary>
    public abstract Duration Length { get; }
}

/// <summary>It lies on a shelf.</summary>
public sealed record Storage : LifePhase
{
    /// <param name="length">How long; 0 or more.</param>
    /// <param name="temperature">Temperature of the battery.</param>
    /// <param name="charge">Its charge, 0…1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public Storage(Duration length, Temperature temperature, Ratio charge)
    {
        Require.NotNegative(length.Days, "days", nameof(length));
        Require.Positive(temperature.Kelvins, "K", nameof(temperature));
        Require.Within(charge.DecimalFractions, 0, 1, "", nameof(charge));
        (Length, Temperature, Charge) = (length, temperature, charge);
    }

    /// <inheritdoc/>
    public override Duration Length { get; }

    /// <summary>Temperature of the battery.</summary>
    public Temperature Temperature { get; }

    /// <summary>Its charge, 0…1.</summary>
    public Ratio Charge { get; }
}

/// <summary>It is cycled without a break, as on a test bench.</summary>
public sealed record Cycling : LifePhase
{
    /// <param name="length">How long; 0 or more (0: the cycles alone).</param>
    /// <param name="temperature">Temperature of the battery.</param>
    /// <param name="fullCycles">Full equivalent cycles (one full discharge and one full charge); 0 or more.</param>
    /// <param name="depth">Depth of each, 0…1.</param>
    /// <param name="ratePerHour">Current over the capacity, 1/h; 0 or more.</param>
    /// <param name="meanCharge">Mean charge of a cycle, 0…1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public Cycling(Duration length, Temperature temperature, double fullCycles, Ratio depth, double ratePerHour, Ratio meanCharge)
        : this(length, temperature, fullCycles, depth, ratePerHour)
    {
        Require.Within(meanCharge.DecimalFractions, 0, 1, "", nameof(meanCharge));
        MeanCharge = meanCharge;
    }

    private Cycling(Duration length, Temperature temperature, double fullCycles, Ratio depth, double ratePerHour)
    {
        Require.NotNegative(length.Days, "days", nameof(length));
        Require.Positive(temperature.Kelvins, "K", nameof(temperature));
        Require.NotNegative(fullCycles, "cycles", nameof(fullCycles));
        Require.Within(depth.DecimalFractions, 0, 1, "", nameof(depth));
        Require.NotNegative(ratePerHour, "1/h", nameof(ratePerHour));
        (Length, Temperature, FullCycles, Depth, RatePerHour) = (length, temperature, fullCycles, depth, ratePerHour);
    }

    /// <inheritdoc/>
    public override Duration Length { get; }

    /// <summary>Temperature of the battery.</summary>
    public Temperature Temperature { get; }

    /// <summary>Full equivalent cycles.</summary>
    public double FullCycles { get; }

    /// <summary>Depth of each cycle, 0…1.</summary>
    public Ratio Depth { get; }

    /// <summary>Current over the capacity, 1/h.</summary>
    public double RatePerHour { get; }

    /// <summary>Mean charge of a cycle; null where <see cref="MeanVoltage"/> is given.</summary>
    public Ratio? MeanCharge { get; private init; }

    /// <summary>Mean voltage of the set's own cell over a cycle, taken as it is; null where <see cref="MeanCharge"/> is
    /// given.</summary>
    public ElectricPotential? MeanVoltage { get; private init; }

    /// <summary>Charge at which it ages by standing meanwhile, 0…1; that of the cycles where null.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside 0…1.</exception>
    public Ratio? StandsAt
    {
        get;
        init
        {
            if (value is { } charge)
                Require.Within(charge.DecimalFractions, 0, 1, "");
            field = value;
        }
    }

    /// <summary>Cycles about a mean voltage of the set's own cell instead of a mean charge.</summary>
    /// <inheritdoc cref="Cycling(Duration, Temperature, double, Ratio, double, Ratio)"/>
    public static Cycling AboutVoltage(Duration length, Temperature temperature, double fullCycles, Ratio depth,
        double ratePerHour, ElectricPotential meanVoltage)
    {
        Require.Positive(meanVoltage.Volts, "V", nameof(meanVoltage));
        return new Cycling(length, temperature, fullCycles, depth, ratePerHour) { MeanVoltage = meanVoltage };
    }
}

/// <summary>
/// What was measured, between two phases: it outweighs what the laws say, and sets the battery's own pace where its history is
/// known.
/// </summary>
public sealed record Measured : LifePhase
{
    /// <param name="capacityLeft">Capacity over that of the new battery, else over the label; above 0, up to 1.5.</param>
    /// <param name="resistanceFactor">Resistance over that of the new battery; above 0; null: not measured.</param>
    /// <param name="historyKnown">Whether the phases before are what the battery went through.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    public Measured(Ratio capacityLeft, double? resistanceFactor = null, bool historyKnown = true)
    {
        Require.AboveUpTo(capacityLeft.DecimalFractions, 0, 1.5, "", nameof(capacityLeft));
        if (resistanceFactor is { } factor)
            Require.Positive(factor, "", nameof(resistanceFactor));
        (CapacityLeft, ResistanceFactor, HistoryKnown) = (capacityLeft, resistanceFactor, historyKnown);
    }

    /// <inheritdoc/>
    public override Duration Length => Duration.Zero;

    /// <summary>Capacity over that of the new battery.</summary>
    public Ratio CapacityLeft { get; }

    /// <summary>Resistance over that of the new battery; null: not measured.</summary>
    public double? ResistanceFactor { get; }

    /// <summary>Whether the phases before are what the battery went through.</summary>
    public bool HistoryKnown { get; }
}
