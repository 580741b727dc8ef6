using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>
/// What a scenario says of money: the budget, how long things are rented, over how many years and days owning is held against
/// renting. What is null nobody said; the defaults that then stand in for it are the constants here, and an answer says so.
/// </summary>
public sealed record CostTerms
{
    /// <summary>3 years (assumed, from memory: about as long as a generation of bodies).</summary>
    public const int UsualYears = 3;

    /// <summary>What a thing loses in its first year: 30 % (assumed, from memory).</summary>
    public static Ratio UsualFirstYearLoss { get; } = Ratio.FromPercent(30);

    /// <summary>What it loses of its value in each later year: 15 % (assumed, from memory).</summary>
    public static Ratio UsualLaterLoss { get; } = Ratio.FromPercent(15);

    /// <summary>The most that may be paid now; null for no budget.</summary>
    public Money? Budget { get; init; }

    /// <summary>The share of the budget that is to stay; with less of it left the verdict is "close". Null for none.</summary>
    public Ratio? Contingency { get; init; }

    /// <summary>Whether the prices have value added tax in them; null where nobody says.</summary>
    public ValueAddedTax? Vat { get; init; }

    /// <summary>How a thing of the kit is had that does not say it itself; null is taken as bought.</summary>
    public Had? OthersAre { get; init; }

    /// <summary>Days for which rented things are rented, one after the other; null for as many as there are shooting
    /// days.</summary>
    public int? RentedDays { get; init; }

    /// <summary>The terms for an answer about so many shooting days: things are rented for as many, where nobody says for how
    /// many.</summary>
    /// <param name="days">The shooting days that are asked about, 1 or more; null for all that the scenario has.</param>
    public CostTerms ForDays(int? days) => this with { RentedDays = RentedDays ?? days };

    /// <summary>Whole years over which owning is held against renting, 1 or more; null for <see cref="UsualYears"/>.</summary>
    public int? Years { get; init; }

    /// <summary>Shooting days a year; null where nobody says: what rests on them is then not known.</summary>
    public int? DaysPerYear { get; init; }

    /// <summary>Days of one job in a row, which are rented together; null where all days of a year are taken in one go, the
    /// least that renting can cost.</summary>
    public int? DaysInARow { get; init; }

    /// <summary>Yearly rate at which later payments count less; null for 0.</summary>
    public Ratio? YearlyRate { get; init; }

    /// <summary>What a thing loses of its value in its first year; null for <see cref="UsualFirstYearLoss"/>.</summary>
    public Ratio? FirstYearLoss { get; init; }

    /// <summary>What it loses of what is left in each later year; null for <see cref="UsualLaterLoss"/>.</summary>
    public Ratio? LaterLoss { get; init; }

    /// <summary>Repairs and service of what is bought, each year; null for none.</summary>
    public Money? RepairsPerYear { get; init; }

    /// <summary>What a shooting day uses up of the own kit and a rented one brings along; null for none.</summary>
    public Money? ConsumablesPerDay { get; init; }

    /// <summary>Years after which a battery is replaced; null to take the time until 80 % of its capacity is left, by its
    /// aging.</summary>
    public double? BatteryYears { get; init; }
}
