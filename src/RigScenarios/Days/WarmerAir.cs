using UnitsNet;

namespace RigScenarios.Days;

/// <summary>A day that is warmer or colder than planned: all of its air moved by the same difference.</summary>
public static class WarmerAir
{
    /// <summary>The coldest air that is reached, as cold as a scenario file may say.</summary>
    public static Temperature Coldest { get; } = Temperature.FromDegreesCelsius(-50);

    /// <summary>The warmest air that is reached, as warm as a scenario file may say.</summary>
    public static Temperature Warmest { get; } = Temperature.FromDegreesCelsius(60);

    /// <summary>
    /// The day with its air moved: each point of its course, or its one temperature. Clock times stay, and so does the shape of
    /// the course wherever it stays between <see cref="Coldest"/> and <see cref="Warmest"/>.
    /// </summary>
    /// <param name="day">The day.</param>
    /// <param name="by">How much warmer; below 0 for colder; 0 gives the day as it is.</param>
    /// <param name="otherwise">The air on a day that gives none of its own; null leaves such a day without one.</param>
    public static ShootingDay Warmer(this ShootingDay day, TemperatureDelta by, Temperature? otherwise = null)
    {
        ArgumentNullException.ThrowIfNull(day);
        if (by.Kelvins == 0)
            return day;
        // A course hides the day's one temperature, which is then left as it was.
        return day.AmbientPoints.Count > 0
            ? day with
            {
                AmbientPoints = [.. day.AmbientPoints.Select(point => point with { Temperature = Of(point.Temperature, by) })],
            }
            : day with { Ambient = (day.Ambient ?? otherwise) is { } air ? Of(air, by) : null };
    }

    /// <summary>An air temperature moved by a difference, in °C to a thousandth, within what a file may say.</summary>
    /// <param name="air">The temperature.</param>
    /// <param name="by">How much warmer; below 0 for colder.</param>
    public static Temperature Of(Temperature air, TemperatureDelta by) => by.Kelvins == 0 ? air
        : Temperature.FromDegreesCelsius(Math.Round(
            Math.Clamp(air.DegreesCelsius + by.Kelvins, Coldest.DegreesCelsius, Warmest.DegreesCelsius), 3));
}
