using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>How finely the shares of a variance are estimated.</summary>
public sealed record VarianceOptions
{
    /// <summary>Fewer rows than this say nothing.</summary>
    public const int FewestRows = 16;

    /// <summary>More rows than this are refused: their results are kept in memory for the intervals.</summary>
    public const int MostRows = 1 << 20;

    /// <summary>Rows of the design, <see cref="FewestRows"/> to <see cref="MostRows"/>. The figure is asked for rows·(things + 2)
    /// times.</summary>
    public int Rows
    {
        get;
        init => field = value is >= FewestRows and <= MostRows ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"rows is {value}; accepted: {FewestRows} to {MostRows}.");
    } = 1024;

    /// <summary>How many times the rows are drawn anew for the intervals, 0 to 100,000; 0 makes intervals without
    /// width.</summary>
    public int Redraws
    {
        get;
        init => field = value is >= 0 and <= 100_000 ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"redraws is {value}; accepted: 0 to 100000.");
    } = 1000;

    /// <summary>The level of the intervals, above 0 and below 100 %.</summary>
    public Ratio Level
    {
        get;
        init => field = value.DecimalFractions is > 0 and < 1 ? value
            : throw new ArgumentOutOfRangeException(nameof(value), $"level is {value}; accepted: above 0 % and below 100 %.");
    } = Ratio.FromPercent(95);

    /// <summary>The seed of what is drawn.</summary>
    public long Seed { get; init; } = 1;
}
