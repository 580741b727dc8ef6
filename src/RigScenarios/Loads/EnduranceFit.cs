using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// How long a steady effort is held, by a published fit over many people: time against the part of the greatest effort. People
/// differ widely, and the
/// same person from day to day; the interval that comes with a time is that of the fitted curve, and no spread of people. Never a
/// reason to hold on through pain.
/// </summary>
public sealed record EnduranceFit
{
    /// <summary>Half-width of the fit's 95 % interval as a part of the time: stated as 29 to 47 %; the wider end is used. It is
    /// over means of studies, not over people.</summary>
    private const double FreyLawSpread = 0.47;

    private readonly Func<double, double> seconds;

    private EnduranceFit(string effort, double least, double greatest, double? spread, Citation source,
        Func<double, double> seconds) =>
        (Effort, Least, Greatest, Spread, Source, this.seconds) =
            (effort, Ratio.FromDecimalFractions(least), Ratio.FromDecimalFractions(greatest),
                spread is { } part ? Ratio.FromDecimalFractions(part) : null, source, seconds);

    /// <summary>What was held.</summary>
    public string Effort { get; }

    /// <summary>The least part of the greatest effort that the data cover.</summary>
    public Ratio Least { get; }

    /// <summary>The greatest part that the data cover.</summary>
    public Ratio Greatest { get; }

    /// <summary>Half-width of the fit's 95 % interval as a part of the time, over means of studies; null where the source gives
    /// none.</summary>
    public Ratio? Spread { get; }

    /// <summary>Where the fit comes from.</summary>
    public Citation Source { get; }

    /// <summary>Shoulder: 14.86 f^-1.83 s.</summary>
    public static EnduranceFit Shoulder { get; } = FreyLaw("shoulder", 14.86, -1.83);

    /// <summary>Elbow: 17.98 f^-2.21 s.</summary>
    public static EnduranceFit Elbow { get; } = FreyLaw("elbow", 17.98, -2.21);

    /// <summary>Hand and grip: 33.55 f^-1.61 s.</summary>
    public static EnduranceFit Grip { get; } = FreyLaw("hand and grip", 33.55, -1.61);

    /// <summary>Trunk: 22.69 f^-2.27 s.</summary>
    public static EnduranceFit Trunk { get; } = FreyLaw("trunk", 22.69, -2.27);

    /// <summary>Knee: 19.38 f^-1.88 s.</summary>
    public static EnduranceFit Knee { get; } = FreyLaw("knee", 19.38, -1.88);

    /// <summary>Ankle: 34.71 f^-2.06 s.</summary>
    public static EnduranceFit Ankle { get; } = FreyLaw("ankle", 34.71, -2.06);

    /// <summary>All joints together: 21.92 f^-1.98 s.</summary>
    public static EnduranceFit General { get; } = FreyLaw("all joints", 21.92, -1.98);

    /// <summary>
    /// The straight arm held level in front, 10 to 21 % of the greatest effort: 40.609 exp(-0.097 p) min, p in percent. It
    /// explains only 30 % of the differences
    /// between people.
    /// </summary>
    public static EnduranceFit ArmHeldForward { get; } = new("straight arm held forward", 0.10, 0.21, null,
        new Citation("S. E. Mathiassen and E. Åhsberg", "Prediction of shoulder flexion endurance from personal factors", 1999,
            "Int. J. Ind. Ergonomics 24(3) 315-329, abstract", Standing.ReadInSource),
        part => 60 * 40.609 * Math.Exp(-0.097 * 100 * part));

    /// <summary>The holding time at a part of the greatest effort.</summary>
    /// <param name="part">Above 0, up to 100 %. Outside the data the nearest end of the data is used and the answer says so:
    /// below it nobody has measured, and no fit says "for ever".</param>
    /// <exception cref="ArgumentOutOfRangeException">The part is not above 0, or above 100 %: that can't be held at
    /// all.</exception>
    public HoldingTime At(Ratio part)
    {
        Require.AboveUpTo(part.Percent, 0, 100, "%", nameof(part));
        var used = Math.Clamp(part.DecimalFractions, Least.DecimalFractions, Greatest.DecimalFractions);
        var time = seconds(used);
        return new(Duration.FromSeconds(time),
            Spread is { } spread ? Duration.FromSeconds(time * (1 - spread.DecimalFractions)) : null,
            Spread is { } wide ? Duration.FromSeconds(time * (1 + wide.DecimalFractions)) : null,
            used != part.DecimalFractions);
    }

    private static EnduranceFit FreyLaw(string effort, double b0, double b1) => new(effort, 0.10, 1, FreyLawSpread,
        new Citation("L. A. Frey Law and K. G. Avin",
            "Endurance time is joint-specific: a modelling and meta-analysis investigation", 2010,
            "Ergonomics 53(1) 109-129, table 2", Standing.SecondHand),
        part => b0 * Math.Pow(part, b1));
}

/// <summary>A holding time.</summary>
/// <param name="Typical">What the fit gives.</param>
/// <param name="Low">The lower end of the fit's own 95 % interval, over means of studies and not over people; null where the
/// source gives none.</param>
/// <param name="High">The upper end.</param>
/// <param name="OutsideData">Whether the effort lies outside what was measured; the time is then that of the nearest end of the
/// data.</param>
public sealed record HoldingTime(Duration Typical, Duration? Low, Duration? High, bool OutsideData);
