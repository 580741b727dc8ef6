using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Words for limits, whichever model found them: one line for each kind, read the right way round.</summary>
public static class LimitSentences
{
    private const double MostShare = 99;

    /// <summary>A limit in one line: "cable of the camera: 5.2 A of 3.0 A rated, 74 % over, at 11:24 in Interview one".</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="times">Writes its moment; null leaves it out.</param>
    public static string Of(Limit limit, AnswerTimes? times)
    {
        ArgumentNullException.ThrowIfNull(limit);
        // The kit may call it legs; people say tripod.
        var name = limit.Kind is LimitKind.TipAngle or LimitKind.Gust ? "tripod" : Element(limit.Element);
        var line = $"{name}: {Figures(limit)}{Case(limit)}";
        return times is null || limit.At is not { } at
            ? line : $"{line}, {times.When(at.Time)} in {times.Title(at.Day, at.Block)}";
    }

    /// <summary>What is left in a few words: "0.06 V left", "31 % left", "74 % over", "12 K left", "no rating is
    /// known".</summary>
    /// <param name="limit">The limit.</param>
    public static string Left(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        if (limit.Left is not { } left)
            return "no rating is known";
        // Of a rating of 0, or one next to it, a share says nothing.
        if (InUnits(limit) || Math.Abs(limit.Share!.Value) > MostShare)
        {
            var text = Away(limit);
            return limit.Side == LimitSide.StaysOver ? left < 0 ? $"{text} under" : $"{text} left" : left < 0
                ? $"{text} over" : $"{text} left";
        }
        var percent = Math.Round(100 * Math.Abs(limit.Share.Value));
        return left >= 0 ? $"{percent:0} % left"
            : $"{Math.Max(1, percent):0} % {(limit.Side == LimitSide.StaysOver ? "under" : "over")}";
    }

    /// <summary>The name of an element for people: "outlet a of the plate", "cable of the camera".</summary>
    /// <param name="element">Its name in the network or the kit.</param>
    public static string Element(string element)
    {
        ArgumentNullException.ThrowIfNull(element);
        var words = element.Replace('-', ' ');
        return words.StartsWith("cable of ", StringComparison.Ordinal) || words.StartsWith("outlet ", StringComparison.Ordinal)
            ? words.Replace(" of ", " of the ", StringComparison.Ordinal) : words;
    }

    /// <summary>A quantity with the digits that its kind deserves.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="kind">The kind of limit.</param>
    public static string Quantity(IQuantity quantity, LimitKind kind)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return Number(Value(quantity, kind), kind, difference: false);
    }

    // "5.2 A of 3.0 A rated, 74 % over"; a lower limit the other way: "11.04 V, 0.06 V under its least 11.10 V".
    private static string Figures(Limit limit)
    {
        var worst = Quantity(limit.Worst, limit.Kind);
        if (limit.Allowed is not { } allowed)
            return $"{worst} {Worst(limit.Kind)}, no rating is known".Replace("  ", " ", StringComparison.Ordinal);
        var most = Quantity(allowed, limit.Kind);
        if (limit.Kind == LimitKind.Travel)
            return limit.IsPassed ? $"the centre of gravity is {Away(limit)} beyond its reach"
                : $"{Away(limit)} of its travel left";
        if (limit is { Kind: LimitKind.TipAngle, HasForce: true })
            return $"tips over by itself at a lean of {worst}, on a slope of {most}, {Away(limit)} "
                + (limit.IsPassed ? "too steep" : "left");
        if (limit.Kind == LimitKind.Gust)
            return $"a gust of {worst} tips it over, {most} are expected, {Left(limit)}";
        if (InUnits(limit) && limit.Left is { } left)
        {
            // What is just met is neither over nor under: "11.60 V, nothing over its switch-off at 11.60 V".
            var away = left == 0 ? "nothing" : Away(limit);
            return limit.Side == LimitSide.StaysOver
                ? $"{worst}, {away} {(left < 0 ? "under" : "over")} {Allowed(limit.Kind)} {most}"
                : $"{worst}, {away} {(left < 0 ? "over" : "under")} {Allowed(limit.Kind)} {most}";
        }
        return limit.Side == LimitSide.StaysOver
            ? $"{worst}{Space(Worst(limit.Kind))} where {most} {Allowed(limit.Kind)}, {Left(limit)}"
            : $"{worst}{Space(Worst(limit.Kind))} of {most} {Allowed(limit.Kind)}, {Left(limit)}";
    }

    /// <summary>How far the worst is from what is allowed: "2.9 m/s", "0.06 V".</summary>
    internal static string Away(Limit limit)
    {
        var (allowed, worst) = (Value(limit.Allowed!, limit.Kind), Value(limit.Worst, limit.Kind));
        // Beside both figures in one sentence: the difference of these as they are written.
        if (limit.Kind is LimitKind.TipAngle or LimitKind.Gust)
            (allowed, worst) = (Math.Round(allowed, 1), Math.Round(worst, 1));
        return Number(Math.Abs(allowed - worst), limit.Kind, difference: true);
    }

    private static string Space(string words) => words.Length == 0 ? "" : $" {words}";

    /// <summary>What the worst value is, where the element alone does not say it.</summary>
    private static string Worst(LimitKind kind) => kind switch
    {
        LimitKind.OutputCurrent => "out of it",
        LimitKind.Moment => "to hold",
        LimitKind.Load => "carried",
        LimitKind.TiltAtRest or LimitKind.Creep => "left over at the worst tilt",
        LimitKind.TiltLock => "on the tilt lock",
        LimitKind.TipAngle => "of lean until it tips",
        LimitKind.Lifting => "to lift",
        LimitKind.Holding => "to hold",
        LimitKind.Clamping => "of pull",
        _ => "",
    };

    /// <summary>What the allowed value is.</summary>
    private static string Allowed(LimitKind kind) => kind switch
    {
        LimitKind.RatedCurrent => "rated",
        LimitKind.Fuse => "that its fuse carries for hours",
        LimitKind.LowestVoltage => "its least",
        LimitKind.Input => "its least input of",
        LimitKind.SwitchOff => "its switch-off at",
        LimitKind.CutOff => "its cut-off at",
        LimitKind.Temperature => "its highest",
        LimitKind.Load or LimitKind.Moment => "rated",
        LimitKind.TiltAtRest => "that friction holds at rest",
        LimitKind.Creep => "under which it falls when let go",
        LimitKind.TipAngle => "is wanted",
        LimitKind.Clamping => "of clamping",
        LimitKind.Lifting => "recommended for one person",
        LimitKind.Holding => "of greatest effort",
        _ => "allowed",
    };

    private static string Case(Limit limit) => limit.Case switch
    {
        LoadCase.Peak => $", for a moment{Situated(limit, "with everything at its peak", "at the peak of the")}",
        LoadCase.StartUp => $", for a moment{Situated(limit, "at the start", "when these start:")}",
        // The figures of a slope that tips it say so already.
        _ when limit is { Kind: LimitKind.TipAngle, HasForce: true } => "",
        _ => limit.Situation.Length == 0 ? "" : $", {limit.Situation.Replace('-', ' ')}",
    };

    private static string Situated(Limit limit, string alone, string with) =>
        limit.Situation.Length == 0 ? $" {alone}" : $" {with} {limit.Situation.Replace('-', ' ')}";

    /// <summary>Kinds of which a share says nothing, or less than the units.</summary>
    private static bool InUnits(Limit limit) =>
        limit.Kind is LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff
        or LimitKind.Temperature or LimitKind.Travel;

    private static double Value(IQuantity quantity, LimitKind kind) => quantity switch
    {
        ElectricCurrent current => current.Amperes,
        ElectricPotential potential => potential.Volts,
        Temperature temperature => temperature.DegreesCelsius,
        Mass mass => mass.Kilograms,
        Torque torque => torque.NewtonMeters,
        Pressure pressure => pressure.Megapascals,
        Force force => force.Newtons,
        Length length => length.Millimeters,
        Angle angle => angle.Degrees,
        Speed speed => speed.MetersPerSecond,
        Power power => (double)power.Watts,
        Ratio ratio => ratio.Percent,
        _ => throw new ArgumentException($"No words for {quantity.QuantityInfo.Name} of {kind}.", nameof(quantity)),
    };

    private static string Number(double value, LimitKind kind, bool difference) => kind switch
    {
        LimitKind.RatedCurrent or LimitKind.Current or LimitKind.OutputCurrent or LimitKind.Fuse => $"{value:0.0} A",
        LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff => $"{value:0.00} V",
        LimitKind.Temperature => difference ? $"{value:0.#} K" : $"{value:0.#} °C",
        LimitKind.Load or LimitKind.Lifting => $"{value:0.0#} kg",
        LimitKind.Moment or LimitKind.TiltAtRest or LimitKind.Creep or LimitKind.TiltLock or LimitKind.Holding =>
            $"{value:0.0#} N·m",
        LimitKind.Stress => $"{value:0} MPa",
        LimitKind.Clamping => $"{value:0} N",
        LimitKind.Travel => $"{value:0} mm",
        LimitKind.TipAngle => $"{value:0.0}°",
        _ => $"{value:0.0} m/s",
    };

    /// <summary>The unit in which a kind of limit is told, as the names of JSON fields write it.</summary>
    /// <param name="quantity">The quantity.</param>
    public static (double Value, string Unit) Plain(IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return (Value(quantity, default), quantity switch
        {
            ElectricCurrent => "A", ElectricPotential => "V", Temperature => "°C", Mass => "kg", Torque => "N·m", Pressure =>
                "MPa", Force => "N",
            Length => "mm", Angle => "°", Speed => "m/s", Power => "W", _ => "%",
        });
    }
}
