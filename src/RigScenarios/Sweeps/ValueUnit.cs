using System.Globalization;
using RigScenarios.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Sweeps;

/// <summary>How the numbers of an axis or a spread stand in a scenario file: with a unit, as a plain or a whole number, as a
/// day or a time of day.</summary>
public abstract record ValueUnit
{
    private protected ValueUnit()
    {
    }

    /// <summary>A plain number without a unit, such as 1.3.</summary>
    public static ValueUnit Plain { get; } = new PlainUnit();

    /// <summary>A whole number: a count. Numbers between are rounded.</summary>
    public static ValueUnit Whole { get; } = new WholeUnit();

    /// <summary>A day of the calendar; the number counts days, as <see cref="DateOnly.DayNumber"/> does.</summary>
    public static ValueUnit Day { get; } = new DayUnit();

    /// <summary>A time of day on the 24-hour clock; the number is in minutes from midnight, 0 to 1439.</summary>
    public static ValueUnit Clock { get; } = new ClockUnit();

    /// <summary>The unit's sign, as tables show it: <c>Wh</c>; empty for a plain number.</summary>
    public abstract string Sign { get; }

    /// <summary>Whether only whole numbers stand in the file.</summary>
    public virtual bool IsWhole => false;

    /// <summary>A unit of the units library.</summary>
    /// <param name="unit">The unit, such as <see cref="EnergyUnit.WattHour"/>.</param>
    public static ValueUnit Of(Enum unit) => new QuantityUnit(unit);

    /// <summary>The text that a file would accept for a number in this unit; reading it again gives exactly the same number,
    /// whole units aside.</summary>
    /// <param name="number">The number in this unit.</param>
    public abstract string Text(double number);

    /// <summary>A unit that the units library doesn't know, by the sign that files write.</summary>
    internal static ValueUnit OfSign(string sign) => new SignUnit(sign);

    /// <summary>The text of a difference of two such numbers: 2 of it on a Celsius axis are 2 °C, 2 of it on a calendar
    /// 2 d.</summary>
    internal virtual string DifferenceText(double number) => Text(number);

    /// <summary>Whether a number twice as large is twice as much: of no day, no time of day, and no temperature but those
    /// from absolute zero.</summary>
    internal virtual bool HasZero => true;

    /// <summary>A difference of two such numbers, as somebody wrote it; null where it can't be read.</summary>
    /// <param name="text">Such as "8 Wh", "2 °C" for temperatures, "3 d" for days, "15 min" for times of day.</param>
    internal abstract double? Difference(string text);

    /// <summary>A quantity as a number in this unit; null where it is another quantity.</summary>
    internal virtual double? NumberOf(IQuantity value) => null;

    private static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static double? In(string text, IQuantity zero, Enum unit) =>
        QuantityText.TryRead(text, zero, "1 x", out var value, out _) ? (double)value.As(unit) : null;

    private static string Digits(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    private sealed record PlainUnit : ValueUnit
    {
        public override string Sign => "";

        public override string Text(double number) => Digits(number);

        internal override double? Difference(string text) => Number(text);
    }

    private sealed record WholeUnit : ValueUnit
    {
        public override string Sign => "";

        public override bool IsWhole => true;

        public override string Text(double number) => Digits(Math.Round(number));

        internal override string DifferenceText(double number) => Digits(number);

        internal override double? Difference(string text) => Number(text);
    }

    private sealed record QuantityUnit(Enum Unit) : ValueUnit
    {
        private readonly string ending = QuantityText.Write(Quantity.From(0, Unit))[1..];

        public override string Sign => ending.Trim();

        internal override bool HasZero =>
            Unit is not TemperatureUnit || Unit is TemperatureUnit.Kelvin or TemperatureUnit.DegreeRankine;

        public override string Text(double number) => Digits(number) + ending;

        internal override double? Difference(string text) =>
            !QuantityText.TryRead(text, Quantity.From(0, Unit), "1 x", out var value, out _) ? null
            : value is Temperature ? (double)value.Value * TemperatureSteps.Kelvins(value.Unit) / TemperatureSteps.Kelvins(Unit)
            : (double)value.As(Unit);

        internal override double? NumberOf(IQuantity value) =>
            value.Unit.GetType() == Unit.GetType() ? (double)value.As(Unit) : null;
    }

    private sealed record SignUnit(string Unit) : ValueUnit
    {
        public override string Sign => Unit;

        public override string Text(double number) => $"{Digits(number)} {Unit}";

        internal override double? Difference(string text) =>
            text.EndsWith(Unit, StringComparison.OrdinalIgnoreCase) ? Number(text[..^Unit.Length].TrimEnd()) : null;
    }

    private sealed record DayUnit : ValueUnit
    {
        public override string Sign => "";

        public override bool IsWhole => true;

        public override string Text(double number) => DateOnly.FromDayNumber((int)Math.Clamp(Math.Round(number), 0,
            DateOnly.MaxValue.DayNumber)).ToString(DateFormat.Pattern, CultureInfo.InvariantCulture);

        internal override bool HasZero => false;

        internal override string DifferenceText(double number) => $"{Digits(number)} d";

        internal override double? Difference(string text) => In(text, Duration.Zero, DurationUnit.Day);
    }

    private sealed record ClockUnit : ValueUnit
    {
        private const int LastMinute = (24 * 60) - 1;

        public override string Sign => "";

        public override bool IsWhole => true;

        public override string Text(double number) => TimeOnly.FromTimeSpan(TimeSpan.FromMinutes(
            Math.Clamp(Math.Round(number), 0, LastMinute))).ToString("HH:mm", CultureInfo.InvariantCulture);

        internal override bool HasZero => false;

        internal override string DifferenceText(double number) => $"{Digits(number)} min";

        internal override double? Difference(string text) => In(text, Duration.Zero, DurationUnit.Minute);
    }
}
