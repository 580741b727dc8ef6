using RigScenarios.Files.Formats;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The limits of a rig at rest in words, figure by figure.</summary>
public static class BalanceLimitWords
{
    /// <summary>What is limited: "rated load of head", "gust, tripod".</summary>
    /// <param name="limit">A limit of a build's balance, tripod or joints.</param>
    public static string Name(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.Kind switch
        {
            LimitKind.Travel => "reach of the camera plate",
            LimitKind.TiltAtRest => $"{limit.Element}: friction at rest",
            LimitKind.Creep => $"{limit.Element}: falls when let go",
            LimitKind.TiltLock => $"{limit.Element}: tilt lock, {limit.Situation}",
            LimitKind.Load => $"rated load of {limit.Element}",
            LimitKind.TipAngle when limit.Situation.Length > 0 => "tripod: tips by itself",
            LimitKind.TipAngle => "tripod: tips over",
            LimitKind.Gust => "tripod: gust that tips it",
            LimitKind.Lifting => "lifting",
            LimitKind.Holding => limit.Element,
            LimitKind.Clamping => $"screw of {limit.Element}, {limit.Situation}",
            _ => $"{limit.Element}, {limit.Situation}",
        };
    }

    /// <summary>What there is.</summary>
    /// <param name="limit">The limit.</param>
    public static string Worst(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        var worst = Figure(limit, limit.Worst);
        return limit.Kind switch
        {
            LimitKind.Travel => $"centre of gravity {worst} from the middle",
            LimitKind.TipAngle => $"at {worst} lean",
            LimitKind.Moment or LimitKind.Stress or LimitKind.Clamping => $"{worst} ({Loads.JointLimits.Handled})",
            _ => worst,
        };
    }

    /// <summary>What is allowed; "not known" where no rating is known.</summary>
    /// <param name="limit">The limit.</param>
    public static string Allowed(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.Allowed is not { } allowed ? "not known" : limit.Kind switch
        {
            LimitKind.TipAngle when limit.Situation.Length > 0 =>
                allowed.Value == 0 ? "level ground" : $"slope of {Figure(limit, allowed)}",
            LimitKind.TipAngle => $"{Figure(limit, allowed)} to compare with",
            LimitKind.Gust => $"gusts of {Figure(limit, allowed)} expected",
            _ => Figure(limit, allowed),
        };
    }

    /// <summary>What is left, with its unit; empty where no rating is known.</summary>
    /// <param name="limit">The limit.</param>
    public static string Left(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.Left is { } left ? Figure(limit, UsualUnits.From(left, limit.Allowed!.Unit)) : "";
    }

    private static string Figure(Limit limit, IQuantity quantity) => LimitSentences.Quantity(quantity, limit.Kind);
}
