using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>One stretch of a shooting day's course of charge; the charge goes evenly from one value to the other.</summary>
/// <param name="Length">How long it lasts.</param>
/// <param name="From">Charge at its beginning, 0…1.</param>
/// <param name="To">Charge at its end, 0…1.</param>
/// <param name="Temperature">Mean temperature of the battery.</param>
public sealed record CourseStretch(Duration Length, Ratio From, Ratio To, Temperature Temperature);

/// <summary>It is used on some days and lies on a shelf the rest of the time.</summary>
public sealed record Shooting : LifePhase
{
    /// <summary>Time off the shelf on a shooting day where nobody says.</summary>
    public static Duration UsualDay { get; } = Duration.FromHours(10);

    /// <summary>Temperature of the battery on a shooting day where nobody says.</summary>
    public static Temperature UsualTemperature { get; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Shooting days by how far each empties the battery, from full.</summary>
    /// <param name="length">All the days of the phase; 0 or more.</param>
    /// <param name="shelf">Temperature of the battery in between.</param>
    /// <param name="charge">Its charge in between, 0…1.</param>
    /// <param name="days">Shooting days among them, 0 or more; need not be a whole number.</param>
    /// <param name="depth">How far each empties it, 0…1; its mean charge is 1 - depth/2.</param>
    /// <param name="hours">Time off the shelf on each; <see cref="UsualDay"/> if null.</param>
    /// <param name="temperature">Temperature on each; <see cref="UsualTemperature"/> if null.</param>
    /// <param name="ratePerHour">Current over the capacity, 1/h; depth over hours if null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    /// <exception cref="ArgumentException">The shooting days are longer than the phase.</exception>
    public Shooting(Duration length, Temperature shelf, Ratio charge, double days, Ratio depth, Duration? hours = null,
        Temperature? temperature = null, double? ratePerHour = null)
        : this(length, shelf, charge, days, hours ?? UsualDay)
    {
        Require.Within(depth.DecimalFractions, 0, 1, "", nameof(depth));
        Depth = depth;
        ShootTemperature = temperature ?? UsualTemperature;
        var rate = ratePerHour ?? (depth.DecimalFractions / HoursOfDay.Hours);
        Require.NotNegative(rate, "1/h", nameof(ratePerHour));
        RatePerHour = rate;
    }

    /// <summary>Shooting days by the course of one of them, from leaving the shelf to lying there again.</summary>
    /// <param name="length">All the days of the phase; 0 or more.</param>
    /// <param name="shelf">Temperature of the battery in between.</param>
    /// <param name="charge">Its charge in between, 0…1.</param>
    /// <param name="days">Shooting days among them, 0 or more; need not be a whole number.</param>
    /// <param name="course">One shooting day, cut at each turn of the charge and each change of place; one stretch or
    /// more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside its range.</exception>
    /// <exception cref="ArgumentException">The shooting days are longer than the phase.</exception>
    public Shooting(Duration length, Temperature shelf, Ratio charge, double days, IReadOnlyList<CourseStretch> course)
        : this(length, shelf, charge, days, Duration.FromHours(course.Sum(one => one.Length.Hours)))
    {
        foreach (var stretch in course)
        {
            Require.NotNegative(stretch.Length.Hours, "h", nameof(course));
            Require.Within(stretch.From.DecimalFractions, 0, 1, "", nameof(course));
            Require.Within(stretch.To.DecimalFractions, 0, 1, "", nameof(course));
            Require.Positive(stretch.Temperature.Kelvins, "K", nameof(course));
        }

        Course = course;
    }

    private Shooting(Duration length, Temperature shelf, Ratio charge, double days, Duration hours)
    {
        Require.NotNegative(length.Days, "days", nameof(length));
        Require.Positive(shelf.Kelvins, "K", nameof(shelf));
        Require.Within(charge.DecimalFractions, 0, 1, "", nameof(charge));
        Require.NotNegative(days, "days", nameof(days));
        Require.Positive(hours.Hours, "h", nameof(hours));
        if (days * hours.Days > length.Days * (1 + 1e-9))
            throw new ArgumentException(
                $"{days:G6} shooting days of {hours.Hours:G6} h do not fit into {length.Days:G6} days.", nameof(days));
        (Length, ShelfTemperature, Charge, Days, HoursOfDay) = (length, shelf, charge, days, hours);
    }

    /// <inheritdoc/>
    public override Duration Length { get; }

    /// <summary>Temperature of the battery between the shooting days.</summary>
    public Temperature ShelfTemperature { get; }

    /// <summary>Its charge between them, 0…1.</summary>
    public Ratio Charge { get; }

    /// <summary>Shooting days in the phase.</summary>
    public double Days { get; }

    /// <summary>Time off the shelf on each.</summary>
    public Duration HoursOfDay { get; }

    /// <summary>How far each empties it from full; null where the course is given.</summary>
    public Ratio? Depth { get; }

    /// <summary>Temperature on each, the charging included; null where the course is given.</summary>
    public Temperature? ShootTemperature { get; }

    /// <summary>Current over the capacity, 1/h; null where the course is given.</summary>
    public double? RatePerHour { get; }

    /// <summary>One shooting day; null where only its depth is given.</summary>
    public IReadOnlyList<CourseStretch>? Course { get; }
}
