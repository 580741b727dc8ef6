using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Costs;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>Words for the figures that stand side by side: names, values, differences. All numbers are written here.</summary>
public static class FigureWords
{
    /// <summary>A figure's name for people.</summary>
    /// <param name="kind">The figure.</param>
    public static string Name(FigureKind kind) => kind switch
    {
        FigureKind.Reserve => "time left after wrap",
        FigureKind.WiringLeft => "wiring, least left",
        FigureKind.BalanceLeft => "balance, least left",
        FigureKind.StandLeft => "tripod and joints, least left",
        FigureKind.Mass => "mass of the rig",
        FigureKind.Draw => "draw while recording",
        FigureKind.Moment => "moment, nose down",
        FigureKind.CentreForward => "centre of gravity, forward",
        FigureKind.CentreUp => "centre of gravity, up",
        _ => "still to pay",
    };

    /// <summary>What a figure is, where its name leaves that open; empty where it does not.</summary>
    /// <param name="kind">The figure.</param>
    public static string Meaning(FigureKind kind) => kind switch
    {
        FigureKind.Reserve => "how long the essential devices would run on, below zero how much of the day is missing",
        FigureKind.WiringLeft or FigureKind.BalanceLeft or FigureKind.StandLeft =>
            "what is left to the nearest limit, of what is allowed",
        FigureKind.Mass => "without head and tripod",
        FigureKind.Draw => "at the devices' inlets, with the own draws of plate, regulators and splitters",
        FigureKind.Moment => "about the zero point of the rig's frame",
        FigureKind.Cost => "bought and rented; what is owned costs nothing more",
        _ => "from the zero point of the rig's frame",
    };

    /// <summary>A value: "1 h 27 min", "4.21 kg", "at least 4.2 kg", "not known".</summary>
    /// <param name="value">The value.</param>
    public static string Value(FigureValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Amount is not { } amount ? "not known"
            : value.IsAtLeast ? $"at least {Text(amount, "")}" : Text(amount, "");
    }

    /// <summary>A difference with its sign: "+310 g", "-1 h 20 min"; "0 g" where there is none.</summary>
    /// <param name="amount">The difference.</param>
    public static string WithSign(FigureAmount amount)
    {
        ArgumentNullException.ThrowIfNull(amount);
        return Text(amount, "+");
    }

    /// <summary>A difference against the base in a few words: "+310 g", "no difference to tell", "not known".</summary>
    /// <param name="difference">The difference.</param>
    public static string Of(FigureDifference difference)
    {
        ArgumentNullException.ThrowIfNull(difference);
        return difference.Standing switch
        {
            Standing.NotKnown => "not known",
            Standing.NoneToTell => "no difference to tell",
            _ when difference.IsAtLeast => $"{WithSign(difference.Amount!)} or more",
            _ => WithSign(difference.Amount!),
        };
    }

    /// <summary>Whether a part of a difference is nothing as it would be written.</summary>
    internal static bool IsNothing(FigureAmount amount) => !WithSign(amount).Any(letter => letter is >= '1' and <= '9');

    /// <summary>How far off a difference may be, without a sign.</summary>
    /// <param name="within">The error.</param>
    public static string Within(FigureAmount within)
    {
        ArgumentNullException.ThrowIfNull(within);
        return Text(within, "");
    }

    /// <summary>The unit in which programs are told a figure, as field names write it.</summary>
    /// <param name="kind">The figure; of money the unit is its currency, which stands with the amount.</param>
    public static string Unit(FigureKind kind) => kind switch
    {
        FigureKind.Cost => "",
        FigureKind.Reserve => "min",
        FigureKind.Mass => "g",
        FigureKind.Draw => "W",
        FigureKind.Moment => "N·m",
        FigureKind.CentreForward or FigureKind.CentreUp => "mm",
        _ => "%",
    };

    private static string Text(FigureAmount amount, string plus) => amount.Money is { } money
        ? $"{(MoneyText.Rounded(money).Amount > 0 ? plus : "")}{MoneyText.Of(money)}" : Text(amount.Quantity!, plus);

    private static string Text(IQuantity quantity, string plus) => quantity switch
    {
        Duration time => Math.Round(time.Minutes) > 0 ? plus + AnswerTimes.Length(time) : AnswerTimes.Length(time),
        // A whole rig in kilograms, what one part makes of it in grams.
        Mass mass => Math.Abs(mass.Grams) >= 1000 ? Number(mass.Kilograms, 2, "kg", plus) : Number(mass.Grams, 0, "g", plus),
        Power power => Number((double)power.Watts, 1, "W", plus),
        Torque moment => Number(moment.NewtonMeters, 2, "N·m", plus),
        Length length => Number(length.Millimeters, 0, "mm", plus),
        // A difference of shares is no share of anything.
        Ratio ratio when plus.Length > 0 => Number(ratio.Percent, Math.Abs(ratio.Percent) < 10 ? 1 : 0, "points", plus),
        Ratio ratio => Number(ratio.Percent, 0, "%", plus),
        _ => throw new ArgumentException($"No words for {quantity.QuantityInfo.Name}.", nameof(quantity)),
    };

    private static string Number(double value, int digits, string unit, string plus)
    {
        // No "-0", and no "+0".
        var rounded = Math.Round(value, digits, MidpointRounding.AwayFromZero) + 0.0;
        var text = rounded.ToString($"F{digits}", CultureInfo.InvariantCulture);
        return $"{(rounded > 0 ? plus : "")}{text} {unit}";
    }
}
