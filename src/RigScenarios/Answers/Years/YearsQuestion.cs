using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>What the years ahead are asked with.</summary>
public sealed record YearsQuestion
{
    /// <summary>The furthest that the tables go, years.</summary>
    public const int MostYears = 40;

    /// <summary>How many years the tables go, 1 to <see cref="MostYears"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside its range.</exception>
    public int Years
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostYears);
            field = value;
        }
    } = 5;

    /// <summary>The battery that the ways of keeping are compared for, by its short name in the plan; the first if
    /// null.</summary>
    public string? Battery { get; init; }

    /// <summary>Air of the days in the cold. Where the planned days are as cold already, no others are run.</summary>
    public Temperature Cold { get; init; } = Temperature.FromDegreesCelsius(-10);

    /// <summary>The day from which on it is asked, where no battery's life says until when it goes.</summary>
    public DateOnly? From { get; init; }
}
