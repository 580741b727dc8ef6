using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>
/// What label, age and data sheets say of a battery and its loads before a note or a log speaks. The figures and why they are so:
/// docs/calibration.md.
/// </summary>
public sealed record FitPriors
{
    /// <summary>Deviation of a new battery's capacity from its label, as a share: cells miss their label by some per
    /// cent. Common practice, no source.</summary>
    public const double CapacityDeviation = 0.05;

    /// <summary>Deviation of the resistance of one cell from that of its chemistry, as a share. Common practice, no
    /// source.</summary>
    public const double ResistanceDeviation = 0.25;

    /// <summary>What aging took is known to this part of itself: a factor of two either way is two deviations.</summary>
    public const double AgingDeviation = 0.5;

    /// <summary>Deviation of a load from its data sheet, as a share.</summary>
    public const double SheetDeviation = 0.15;

    /// <summary>Deviation of a load that a meter on the cable has shown, as a share.</summary>
    public const double MeteredDeviation = 0.02;

    /// <summary>ln aQ, the natural logarithm of the capacity over that of the label.</summary>
    public required NormalPrior Capacity { get; init; }

    /// <summary>ln aR, the natural logarithm of the resistance over that of the pack as new.</summary>
    public required NormalPrior Resistance { get; init; }

    /// <summary>ℓ, the natural logarithm of one scale for all devices that aren't known; null if there is none.</summary>
    public NormalPrior? Load { get; init; } = new(0, SheetDeviation);

    /// <summary>ℓ of single devices by their names, instead of <see cref="Load"/>. A device that isn't named doesn't
    /// scale.</summary>
    public OrderedMap<NormalPrior> Devices { get; init; } = OrderedMap<NormalPrior>.Empty;

    /// <summary>Devices whose draw is known: the one scale for all leaves them alone.</summary>
    public IReadOnlyList<string> KnownDevices { get; init; } = [];

    /// <summary>One deviation of what the air at the battery was warmer than stated, K, the same in all notes and logs; null if
    /// the air is taken as stated. Above 0.</summary>
    public TemperatureDelta? AmbientDeviation
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>One deviation of the error of the open-circuit table, of one group: 0.02 V for a table of another cell, 0.005 V
    /// for one from a bench test of this battery. Above 0.</summary>
    public ElectricPotential OpenCircuitDeviation
    {
        get;
        init
        {
            Require.Positive(value.Volts, "V");
            field = value;
        }
    } = ElectricPotential.FromVolts(0.02);

    /// <summary>The priors of a battery of the age that an aging model gives; one scale for all loads, from data
    /// sheets.</summary>
    /// <param name="age">Its age; <see cref="Age.New"/> for a new one.</param>
    public static FitPriors Of(Age age)
    {
        ArgumentNullException.ThrowIfNull(age);
        return new FitPriors
        {
            Capacity = Aged(age.CapacityLeft.DecimalFractions, CapacityDeviation),
            Resistance = Aged(age.ResistanceFactor, ResistanceDeviation),
        };
    }

    private static NormalPrior Aged(double factor, double newDeviation)
    {
        var mean = Math.Log(factor);
        var aging = AgingDeviation * mean;
        return new NormalPrior(mean, Math.Sqrt((newDeviation * newDeviation) + (aging * aging)));
    }
}
