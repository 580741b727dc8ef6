using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>What interrupts the current.</summary>
public enum FuseKind
{
    /// <summary>A wire or strip that melts, and is replaced: glass, ceramic and blade fuses, fast or slow.</summary>
    Melting,

    /// <summary>A polymer limiter: it gets hot, lets little through, and comes back when it has cooled.</summary>
    Resettable,
}

/// <summary>A fuse, or a limiter that acts like one.</summary>
/// <param name="Rating">The rated current that is printed on it, at 25 °C; of a resettable one its hold current, at 20
/// °C.</param>
/// <param name="SteadyShare">
/// The part of the rating that it is meant to carry for hours. Null for 75 % of one that melts: what makers of UL 248-14 fuses
/// recommend at 25 °C [second-hand]; fuses of IEC 60127 are rated for 100 %. Null for 100 % of a resettable one: the hold current
/// is what it carries without tripping.
/// </param>
/// <param name="LessPerKelvin">
/// How much of the rating each kelvin above the rated temperature takes. Null for 0.5 %/K of one that melts [a rule of thumb,
/// read], fast or slow: no source tells the two apart. Null for 1 %/K of a resettable one, which is a little more than the
/// 0.7 to 0.85 %/K of published tables, so that none of them carries less than this says.
/// </param>
/// <param name="Kind">Which it is; null if not known, which counts as one that melts.</param>
public sealed record FuseData(ElectricCurrent Rating, Ratio? SteadyShare = null, Ratio? LessPerKelvin = null,
    FuseKind? Kind = null)
{
    private const double RatedCelsius = 25;

    // Makers' tables of resettable limiters begin at 20 °C, some at 23 or 25 °C: the coolest leaves least when it is warm.
    private const double HoldCelsius = 20;

    /// <summary>What it carries for hours in air of a temperature. Cold air is not counted in its favour.</summary>
    public ElectricCurrent SteadyAt(Temperature air)
    {
        var (usualShare, usualLess, rated) = Kind == FuseKind.Resettable ? (1, 0.01, HoldCelsius) : (0.75, 0.005, RatedCelsius);
        var share = SteadyShare?.DecimalFractions ?? usualShare;
        var lost = (LessPerKelvin?.DecimalFractions ?? usualLess) * Math.Max(0, air.DegreesCelsius - rated);
        return Rating * share * Math.Max(0, 1 - lost);
    }

    /// <summary>
    /// The longest that it takes to open at a steady current in air of about 25 °C; null where no standard says that it must.
    /// By UL 248-14 [second-hand]: at 135 % of the rating within an hour, at 200 % within 2 minutes up to 30 A and 4 minutes up
    /// to 60 A. One that is meant to carry all of its rating, as those of IEC 60127 [second-hand]: at 210 % within half an
    /// hour. Of a resettable one only its own curve tells.
    /// </summary>
    public Duration? OpensWithin(ElectricCurrent current)
    {
        const double rounding = 1e-9;
        var share = (current.Amperes / Rating.Amperes) + rounding;
        if (Kind == FuseKind.Resettable)
            return null;
        if (SteadyShare?.DecimalFractions >= 1)
            return share >= 2.1 ? Duration.FromMinutes(30) : null;
        return Rating.Amperes switch
        {
            > 60 => null,
            <= 30 when share >= 2 => Duration.FromMinutes(2),
            > 30 when share >= 2 => Duration.FromMinutes(4),
            _ => share >= 1.35 ? Duration.FromHours(1) : null,
        };
    }
}
