using UnitsNet;

namespace RigScenarios.Charts;

/// <summary>How the numbers of an axis are laid out.</summary>
public enum AxisScale
{
    /// <summary>Equal steps are equal lengths.</summary>
    Linear,

    /// <summary>Equal ratios are equal lengths; every value is greater than zero.</summary>
    Logarithmic,

    /// <summary>Hours since midnight, written as clock times (6.5 is 06:30). Hours over 24 run into the next day.</summary>
    Clock,
}

/// <summary>An axis: what it shows, in which unit, from where to where.</summary>
/// <param name="Title">What is shown, in plain words ("battery voltage").</param>
/// <param name="Unit">The unit as the trade writes it ("V"), or empty for a plain number or a clock time.</param>
public sealed record ChartAxis(string Title, string Unit = "")
{
    /// <summary>Lowest value shown, in the axis's unit; null takes it from the data.</summary>
    public double? From { get; init; }

    /// <summary>Highest value shown, in the axis's unit; null takes it from the data.</summary>
    public double? To { get; init; }

    /// <summary>How the numbers are laid out.</summary>
    public AxisScale Scale { get; init; }

    /// <summary>Whether zero belongs to the axis even where no value comes near it.</summary>
    public bool FromZero { get; init; }

    /// <summary>The unit of the quantities that this axis converts, or null for an axis of plain numbers.</summary>
    public Enum? QuantityUnit { get; private init; }

    /// <summary>Title and unit as they stand at the axis: "battery voltage (V)".</summary>
    public string Label => Unit.Length == 0 ? Title : $"{Title} ({Unit})";

    /// <summary>Title and unit as they head a column of plain numbers: clock times are hours there.</summary>
    internal string ColumnTitle => Scale == AxisScale.Clock ? $"{Title} (h since midnight of the first day)" : Label;

    /// <summary>An axis that takes quantities and shows them in one unit.</summary>
    /// <param name="title">What is shown, in plain words.</param>
    /// <param name="unit">A unit of UnitsNet, such as <c>ElectricPotentialUnit.Volt</c>.</param>
    public static ChartAxis Of(string title, Enum unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return new ChartAxis(title, TradeUnits.Abbreviation(unit)) { QuantityUnit = unit };
    }

    /// <summary>An axis of clock times; its values are hours since midnight of the first day.</summary>
    public static ChartAxis ClockTime(string title = "clock time") => new(title) { Scale = AxisScale.Clock };

    /// <summary>The value of a quantity in this axis's unit.</summary>
    /// <exception cref="InvalidOperationException">The axis was not made with <see cref="Of"/>.</exception>
    public double Value(IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return QuantityUnit is null
            ? throw new InvalidOperationException(
                $"The axis \"{Title}\" has no unit to convert to; make it with ChartAxis.Of(title, unit).")
            : (double)quantity.As(QuantityUnit);
    }
}
