using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Sweeps;

/// <summary>Values of one field as numbers in one unit, so that there can be others between them.</summary>
/// <param name="Unit">The unit, that of the first value.</param>
/// <param name="Numbers">The values in it.</param>
internal sealed record FieldNumbers(ValueUnit Unit, IReadOnlyList<double> Numbers)
{
    private static readonly string[] ClockPatterns = ["H:mm", "HH:mm"];
    private static readonly DurationFormat Times =
        new(Duration.FromDays(-100_000), Duration.FromDays(100_000), "1 h");

    /// <summary>Reads values of a field. The scenario says what quantity it is.</summary>
    /// <param name="scenario">The scenario that has the field.</param>
    /// <param name="path">The field.</param>
    /// <param name="texts">The values, one or more.</param>
    /// <returns>Null where they are not values of one kind with others between.</returns>
    /// <exception cref="ScenarioProblemsException">The field doesn't exist, or doesn't take one of the values; carries what is
    /// wrong with each.</exception>
    public static FieldNumbers? Of(Scenario scenario, string path, IReadOnlyList<string> texts)
    {
        string[] plain = [.. texts.Select(WrittenDigits.Plain)];
        if (All(plain, PlainNumber) is { } numbers)
            return new(PlainOrWhole(scenario, path, plain, numbers[0]), numbers);
        if (All(plain, Day) is { } days)
            return new(ValueUnit.Day, days);
        if (All(plain, Clock) is { } minutes)
            return new(ValueUnit.Clock, minutes);
        if (Quantities(scenario, path, plain) is { } quantities)
            return quantities;
        // Setting the field to the text says best what is wrong with it.
        Try(scenario, path, plain);
        return Signed(plain);
    }

    /// <summary>Whether a text is a time of day, whose colon is no other one.</summary>
    public static bool IsClock(string text) => Clock(text) is not null;

    private static List<double>? All(string[] texts, Func<string, double?> read)
    {
        var numbers = new List<double>();
        foreach (var text in texts)
        {
            if (read(text) is not { } number)
                return null;
            numbers.Add(number);
        }
        return numbers;
    }

    private static double? PlainNumber(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number)
            ? number : null;

    private static double? Day(string text) =>
        DateOnly.TryParseExact(text, DateFormat.Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? day.DayNumber : null;

    private static double? Clock(string text) =>
        TimeOnly.TryParseExact(text, ClockPatterns, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? time.ToTimeSpan().TotalMinutes : null;

    /// <summary>Values with a unit. A field shows its quantity by its own value, or by what it accepts.</summary>
    private static FieldNumbers? Quantities(Scenario scenario, string path, string[] texts)
    {
        var known = ScenarioPath.Find(scenario, path);
        string[] all = known is null ? texts : [known, .. texts];
        bool Are(IQuantity zero, Func<string, IQuantity, bool> read) => Array.TrueForAll(all, text => read(text, zero));
        // The tables of the units library take so long to build that they are asked last.
        var quantity = UsualUnits.Zeros.FirstOrDefault(zero => Are(zero, QuantityText.HasUsualUnit) && Are(zero, IsRead));
        if (quantity is null && known is not null && Signed(all) is { } signed)
            return signed with { Numbers = [.. signed.Numbers.Skip(1)] };
        quantity ??= Are(Duration.Zero, IsRead) ? Duration.Zero
            : Quantity.Infos.Select(info => info.Zero).FirstOrDefault(zero => Are(zero, IsRead));
        if (quantity is null)
            return null;
        IQuantity[] values = [.. texts.Select(text => Read(text, quantity)!)];
        return new(ValueUnit.Of(values[0].Unit), [.. values.Select(value => (double)value.As(values[0].Unit))]);
    }

    private static bool IsRead(string text, IQuantity zero) => Read(text, zero) is not null;

    // A length of time is also written in parts: 1 h 30 min.
    private static IQuantity? Read(string text, IQuantity zero) =>
        zero is Duration ? Times.TryRead(new TextNode(text, TextPlace.None), "", new ReadLog(""), out var time) ? time : null
        : QuantityText.TryRead(text, zero, "1 x", out var value, out _) ? value : null;

    /// <summary>Values that end in the same unit, which need not be known: such as one that the units library hasn't.</summary>
    private static FieldNumbers? Signed(string[] texts)
    {
        static string Sign(string text) => text[(text.LastIndexOfAny([.. "0123456789."]) + 1)..].Trim();
        var sign = Sign(texts[0]);
        return sign.Length > 0 && texts.All(text => Sign(text) == sign)
            && All([.. texts.Select(text => text[..^sign.Length].TrimEnd())], PlainNumber) is { } numbers
            ? new(ValueUnit.OfSign(sign), numbers) : null;
    }

    private static void Try(Scenario scenario, string path, string[] texts)
    {
        var problems = new List<Diagnostic>();
        foreach (var text in texts)
        {
            try
            {
                ScenarioPath.Set(scenario, path, text);
            }
            catch (ScenarioProblemsException exception)
            {
                problems.AddRange(exception.Problems.Except(problems));
            }
        }
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
    }

    /// <summary>A count takes no half: where the field takes a whole number but neither of the halves beside it, whole ones are
    /// meant.</summary>
    private static ValueUnit PlainOrWhole(Scenario scenario, string path, string[] texts, double number)
    {
        foreach (var whole in new[] { Math.Floor(number), Math.Floor(number) + 1 })
        {
            if (Takes(scenario, path, whole))
            {
                return Takes(scenario, path, whole - 0.5) || Takes(scenario, path, whole + 0.5)
                    ? ValueUnit.Plain : ValueUnit.Whole;
            }
        }
        Try(scenario, path, texts);
        return ValueUnit.Plain;
    }

    private static bool Takes(Scenario scenario, string path, double value)
    {
        try
        {
            ScenarioPath.Set(scenario, path, value.ToString("R", CultureInfo.InvariantCulture));
            return true;
        }
        catch (ScenarioProblemsException)
        {
            return false;
        }
    }
}
