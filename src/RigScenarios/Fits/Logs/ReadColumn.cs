namespace RigScenarios.Fits.Logs;

/// <summary>How a column of a power log was read.</summary>
/// <param name="Quantity">What it holds.</param>
/// <param name="Name">What stands above it; its number where nothing does.</param>
/// <param name="Number">Its number from the left, from 1.</param>
/// <param name="Factor">What its numbers were multiplied with to get s, V or A.</param>
/// <param name="Guessed">Whether the column was found by its name alone, without being told.</param>
/// <param name="UnitFrom">Where the factor comes from.</param>
public sealed record ReadColumn(
    LogQuantity Quantity, string Name, int Number, double Factor, bool Guessed, UnitFrom UnitFrom);

/// <summary>Where the unit of a column comes from.</summary>
public enum UnitFrom
{
    /// <summary>The factor was given.</summary>
    Told,

    /// <summary>A unit stands in the column's name, or in the line below it.</summary>
    Header,

    /// <summary>Nothing says it; s, V and A are taken.</summary>
    Usual,

    /// <summary>Nothing says it, and the numbers are far too large for s, V or A: taken as thousandths.</summary>
    Size,

    /// <summary>The times are written as clock times.</summary>
    Clock,
}
