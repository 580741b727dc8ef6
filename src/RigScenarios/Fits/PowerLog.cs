using RigScenarios.Fits.Logs;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>A power log of one discharge of the battery, with what is known of it.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record PowerLog
{
    /// <summary>Its name, of its own among the logs.</summary>
    public required string Id { get; init; }

    /// <summary>Time, voltage and current, in order and without a charge.</summary>
    public required LogRows Rows { get; init; }

    /// <summary>Temperature of the air at the battery; above 0 K. The battery has it at the start.</summary>
    public required Temperature Ambient
    {
        get;
        init
        {
            Require.Positive(value.Kelvins, "K");
            field = value;
        }
    }

    /// <summary>State of charge at its first row; above 0, up to 1. Full if not given.</summary>
    public Ratio InitialCharge
    {
        get;
        init
        {
            Require.AboveUpTo(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(1);

    /// <summary>Mean power of each device that ran, by what is assumed of it; none if it isn't known what ran.</summary>
    public OrderedMap<Power> Devices { get; init; } = OrderedMap<Power>.Empty;
}
