using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>
/// How little left is "close": what labels, kitchen scales and tape measures leave open. Each is our choice and common practice,
/// no source; the error
/// of a runtime comes with the run itself (<see cref="Batteries.ExpectedError"/>).
/// </summary>
public static class StatedErrors
{
    /// <summary>Share of a rating: draws and masses are read from labels, which are good to some 5 %.</summary>
    public const double Share = 0.05;

    /// <summary>Volts: some 1 % of a 12 V inlet, and what a worn contact more or less takes.</summary>
    public const double Volts = 0.1;

    /// <summary>Kelvin: a share of a figure in °C means nothing.</summary>
    public const double Kelvin = 2;

    /// <summary>Millimetres of travel: a tape measure on a rig.</summary>
    public const double Millimetres = 3;

    /// <summary>Whether a limit that holds is nearer than the stated error of what was held against it; false where it is passed
    /// or has no rating.</summary>
    /// <param name="limit">The limit.</param>
    public static bool IsClose(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        if (limit.Left is not { } left || left < 0)
            return false;
        return InUnits(limit.Kind) is { } units ? left < units : limit.Share < OfRating(limit.Kind);
    }

    /// <summary>The stated error of what is held against a limit, as a share of what is allowed; null where no rating is known,
    /// or
    /// a share of it says nothing (temperatures, a rating of 0).</summary>
    /// <param name="limit">The limit.</param>
    public static double? ShareWithin(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        if (limit.Allowed is not { } allowed || (double)allowed.Value == 0 || limit.Kind == LimitKind.Temperature)
            return null;
        return InUnits(limit.Kind) is { } units ? units / Math.Abs((double)allowed.Value) : OfRating(limit.Kind);
    }

    private static double? InUnits(LimitKind kind) => kind switch
    {
        LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff => Volts,
        LimitKind.Temperature => Kelvin,
        LimitKind.Travel => Millimetres,
        _ => null,
    };

    private static double OfRating(LimitKind kind) => kind switch
    {
        LimitKind.Gust => Balance.StandLimits.GustWithin.DecimalFractions,
        // Of what a screw clamps, nobody who tightens it by feel knows more.
        LimitKind.Clamping => Loads.JointFinding.ByFeel.DecimalFractions,
        _ => Share,
    };
}
