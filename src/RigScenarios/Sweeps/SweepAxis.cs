using System.Globalization;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Sweeps;

/// <summary>A field of a scenario and the values that it takes in a sweep.</summary>
/// <param name="Path">The field, by the path that it has in the scenario file.</param>
/// <param name="Values">The values, as texts that the file would accept.</param>
public sealed record SweepAxis(string Path, IReadOnlyList<string> Values)
{
    /// <summary>More steps than this on one axis are refused.</summary>
    public const int MostSteps = 2000;

    private const int StandardSteps = 9;

    /// <summary>Evenly spaced values from one quantity to another, both included.</summary>
    /// <param name="path">The field.</param>
    /// <param name="from">The first value.</param>
    /// <param name="to">The last value, in the unit of the first.</param>
    /// <param name="steps">How many values; 2 to <see cref="MostSteps"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few or too many steps.</exception>
    public static SweepAxis Between(string path, IQuantity from, IQuantity to, int steps = StandardSteps)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        if (steps is < 2 or > MostSteps)
            throw new ArgumentOutOfRangeException(nameof(steps), $"steps is {steps}; accepted: 2 to {MostSteps}.");
        var (low, high) = ((double)from.Value, (double)to.As(from.Unit));
        return new SweepAxis(path, [.. Enumerable.Range(0, steps).Select(step =>
            QuantityText.Write(Quantity.From(Tidy(low, high, step, steps), from.Unit)))]);
    }

    /// <summary>Evenly spaced days from one to another, both included, to whole days: a battery growing older.</summary>
    /// <param name="path">The field.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    /// <param name="steps">How many values; 2 to <see cref="MostSteps"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Too few or too many steps.</exception>
    public static SweepAxis Dates(string path, DateOnly from, DateOnly to, int steps = StandardSteps)
    {
        if (steps is < 2 or > MostSteps)
            throw new ArgumentOutOfRangeException(nameof(steps), $"steps is {steps}; accepted: 2 to {MostSteps}.");
        return new SweepAxis(path, [.. Enumerable.Range(0, steps).Select(step => from.AddDays((int)Math.Round(
            (double)(to.DayNumber - from.DayNumber) * step / (steps - 1))).ToString(DateFormat.Pattern,
            CultureInfo.InvariantCulture))]);
    }

    /// <summary>
    /// Reads the short form of the command line: <c>PATH=FROM..TO</c> or <c>PATH=FROM..TO:STEPS</c>, such as
    /// <c>days.day-one.ambient=-10 °C..10 °C:5</c>. The scenario says what quantity the field is.
    /// </summary>
    /// <param name="scenario">The scenario that has the field.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="ScenarioProblemsException">The text is not of that form, or the field doesn't exist.</exception>
    public static SweepAxis Parse(Scenario scenario, string text)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(text);
        const string accepted = "PATH=FROM..TO or PATH=FROM..TO:STEPS, such as \"days.day-one.ambient=-10 °C..10 °C:5\"";
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var dots = text.IndexOf("..", Math.Max(equals, 0), StringComparison.Ordinal);
        if (equals <= 0 || dots < 0)
            throw Problem(text, "This is not an axis of a sweep.", accepted);
        var path = text[..equals].Trim();
        var from = WrittenDigits.Plain(text[(equals + 1)..dots]);
        var to = WrittenDigits.Plain(text[(dots + 2)..]);
        var steps = StandardSteps;
        if (to.LastIndexOf(':') is var colon and >= 0)
        {
            if (!int.TryParse(to[(colon + 1)..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out steps)
                || steps is < 2 or > MostSteps)
                throw Problem(path, $"Found \"{to[(colon + 1)..]}\" for the number of steps.", $"2 to {MostSteps}");
            to = to[..colon].Trim();
        }
        if (double.TryParse(from, NumberStyles.Float, CultureInfo.InvariantCulture, out var low)
            && double.TryParse(to, NumberStyles.Float, CultureInfo.InvariantCulture, out var high))
            return Numbers(scenario, path, low, high, steps);
        if (DateOnly.TryParseExact(from.Trim(), DateFormat.Pattern, out var firstDay)
            && DateOnly.TryParseExact(to.Trim(), DateFormat.Pattern, out var lastDay))
            return Dates(path, firstDay, lastDay, steps);
        // A field shows its quantity by its own value, or by what it accepts.
        var known = ScenarioPath.Find(scenario, path);
        foreach (var quantity in Quantity.Infos.Select(info => info.Zero)
            .Where(zero => known is null || QuantityText.TryRead(known, zero, "1 x", out _, out _)))
        {
            if (QuantityText.TryRead(from, quantity, "1 x", out var first, out _)
                && QuantityText.TryRead(to, quantity, "1 x", out var last, out _))
                return Between(path, first, last, steps);
        }
        // Setting the field to the text says best what is wrong with it.
        ScenarioPath.Set(scenario, path, from);
        ScenarioPath.Set(scenario, path, to);
        if (SameUnit(from, to) is { } unit)
        {
            var (first, last) = (double.Parse(from[..^unit.Length], CultureInfo.InvariantCulture),
                double.Parse(to[..^unit.Length], CultureInfo.InvariantCulture));
            return new SweepAxis(path,
                [.. Enumerable.Range(0, steps).Select(step => Tidy(first, last, step, steps)
                .ToString("R", CultureInfo.InvariantCulture) + " " + unit.Trim())]);
        }
        throw Problem(path, $"\"{from}\" and \"{to}\" are not two values of the same quantity.", accepted);
    }

    private static SweepAxis Numbers(Scenario scenario, string path, double low, double high, int steps)
    {
        var values = Enumerable.Range(0, steps).Select(step => Tidy(low, high, step, steps)).ToList();
        // A count takes no half: where the field refuses a value with a fraction but takes the whole one beside it, whole ones
        // are meant.
        var whole = values.Find(value => !double.IsInteger(value)) is var part and not 0
            && !Takes(scenario, path, part) && Takes(scenario, path, Math.Round(part));
        return new SweepAxis(path,
            [.. values.Select(value => (whole ? Math.Round(value) : value).ToString("R", CultureInfo.InvariantCulture))
            .Distinct()]);
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

    /// <summary>The unit of two texts that end in the same one; null if they don't. For units that the units library doesn't
    /// know.</summary>
    private static string? SameUnit(string from, string to)
    {
        static string Unit(string text) => text[(text.LastIndexOfAny([.. "0123456789."]) + 1)..];
        var unit = Unit(from);
        return unit.Length > 0 && unit.Trim() == Unit(to).Trim() && unit.Length == Unit(to).Length
            && double.TryParse(from[..^unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            && double.TryParse(to[..^unit.Length], NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? unit
            : null;
    }

    /// <summary>Twelve digits are more than any field means, and keep 0.1 + 0.2 from showing as 0.30000000000000004.</summary>
    private static double Tidy(double low, double high, int step, int steps)
    {
        var value = low + ((high - low) * step / (steps - 1));
        return double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    private static ScenarioProblemsException Problem(string path, string problem, string accepted) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, path, problem, accepted)]);
}
