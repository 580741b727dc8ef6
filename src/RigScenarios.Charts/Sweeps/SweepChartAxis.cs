using System.Globalization;
using RigScenarios.Files.Formats;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Charts.Sweeps;

/// <summary>An axis of a sweep as a chart shows it: its title in plain words, its unit, its values as numbers.</summary>
/// <param name="Axis">Title and unit.</param>
/// <param name="Values">The values in that unit, in the order of the sweep.</param>
public sealed record SweepChartAxis(ChartAxis Axis, IReadOnlyList<double> Values)
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["ambient"] = "air temperature",
        ["energy"] = "battery energy",
        ["charge"] = "charge at the start",
        ["capacity-left"] = "capacity left",
        ["resistance-growth"] = "resistance against a new battery",
        ["load-scale"] = "draws against what the parts say",
        ["start-temperature"] = "battery temperature at the start",
    };

    // The quantities of scenario files. Their order decides where two share a sign.
    private static readonly IQuantity[] Quantities =
    [
        Energy.Zero, Temperature.Zero, Ratio.Zero, Power.Zero, ElectricPotential.Zero, ElectricCurrent.Zero, Duration.Zero,
        ElectricCharge.Zero, ElectricResistance.Zero, Mass.Zero, Length.Zero, Angle.Zero, Force.Zero, Torque.Zero,
    ];

    /// <summary>Reads an axis.</summary>
    /// <param name="axis">An axis of quantities ("150 Wh") or of plain numbers ("1.3").</param>
    /// <param name="title">The title; null makes one from the field's path.</param>
    /// <exception cref="ArgumentException">The values are neither numbers nor quantities of one kind.</exception>
    public static SweepChartAxis Of(SweepAxis axis, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(axis);
        title ??= TitleOf(axis.Path);
        if (axis.Values.All(value => TryNumber(value, out _)))
            return new SweepChartAxis(new ChartAxis(title),
                [.. axis.Values.Select(value => TryNumber(value, out var number) ? number : double.NaN)]);
        foreach (var quantity in Quantities)
        {
            if (ReadAll(axis.Values, quantity) is { } read)
            {
                var chartAxis = ChartAxis.Of(title, read[0].Unit);
                return new SweepChartAxis(chartAxis, [.. read.Select(chartAxis.Value)]);
            }
        }

        throw new ArgumentException(
            $"The values of {axis.Path} ({string.Join(", ", axis.Values.Take(3))}, …) cannot be drawn: accepted are plain "
                + "numbers, or quantities of one kind such as \"98 Wh\", \"150 Wh\".",
            nameof(axis));
    }

    /// <summary>One more value of this axis, in its unit: the present one, to be marked.</summary>
    /// <exception cref="ArgumentException">The text is no such quantity.</exception>
    internal double Read(string text)
    {
        if (Axis.QuantityUnit is null)
            return TryNumber(text, out var number) ? number
                : throw new ArgumentException($"\"{text}\" is no number for the axis \"{Axis.Title}\".", nameof(text));
        var like = Quantities.First(quantity => quantity.Unit.GetType() == Axis.QuantityUnit.GetType());
        return QuantityText.TryRead(text, like, "1 x", out var value, out var problem)
            ? Axis.Value(value) : throw new ArgumentException(problem, nameof(text));
    }

    private static List<IQuantity>? ReadAll(IReadOnlyList<string> texts, IQuantity like)
    {
        var read = new List<IQuantity>();
        foreach (var text in texts)
        {
            if (!QuantityText.TryRead(text, like, "1 x", out var value, out _))
                return null;
            read.Add(value);
        }

        return read.Count == 0 ? null : read;
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out number);

    /// <summary>A field in plain words, from its path.</summary>
    internal static string TitleOf(string path)
    {
        var step = path[(path.LastIndexOf('.') + 1)..];
        return Words.GetValueOrDefault(step, step.Replace('-', ' '));
    }
}
