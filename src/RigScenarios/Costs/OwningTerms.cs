using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Costs;

/// <summary>Over how long owning is held against renting, and at what: the terms of a scenario with every default filled
/// in.</summary>
public sealed record OwningTerms
{
    /// <summary>Whole years, 1 or more.</summary>
    public required int Years { get; init; }

    /// <summary>Yearly rate at which later payments count less.</summary>
    public Ratio Rate { get; init; }

    /// <summary>What a thing loses of its value in its first year.</summary>
    public Ratio FirstYearLoss { get; init; } = CostTerms.UsualFirstYearLoss;

    /// <summary>What it loses of what is left in each later year.</summary>
    public Ratio LaterLoss { get; init; } = CostTerms.UsualLaterLoss;

    /// <summary>Repairs of all things together, each year.</summary>
    public decimal RepairsPerYear { get; init; }

    /// <summary>What a shooting day uses up of an own kit.</summary>
    public decimal ConsumablesPerDay { get; init; }

    /// <summary>Days of one job, rented together; null for all days of a year in one go.</summary>
    public int? DaysInARow { get; init; }

    /// <summary>When in a year its rents, repairs and consumables are paid, 0…1; its middle unless given.</summary>
    public double PaidAt { get; init; } = PresentValue.MidYear;

    /// <summary>The terms of a scenario.</summary>
    /// <param name="terms">The terms; what they leave open is taken as usual.</param>
    public static OwningTerms Of(CostTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return new OwningTerms
        {
            Years = terms.Years ?? CostTerms.UsualYears, Rate = terms.YearlyRate ?? Ratio.Zero,
            FirstYearLoss = terms.FirstYearLoss ?? CostTerms.UsualFirstYearLoss,
            LaterLoss = terms.LaterLoss ?? CostTerms.UsualLaterLoss, RepairsPerYear = terms.RepairsPerYear?.Amount ?? 0,
            ConsumablesPerDay = terms.ConsumablesPerDay?.Amount ?? 0, DaysInARow = terms.DaysInARow,
        };
    }

    /// <summary>What is left of a price after the years: p·(1 - d1)·(1 - d)^(Y - 1).</summary>
    /// <param name="price">The price.</param>
    public decimal Resale(decimal price)
    {
        var left = price * (1 - (decimal)FirstYearLoss.DecimalFractions);
        for (var year = 1; year < Years; year++)
            left *= 1 - (decimal)LaterLoss.DecimalFractions;
        return left;
    }

    /// <summary>What a payment of 1 in each of the years is worth today.</summary>
    internal decimal EachYear => PresentValue.EachYear(Rate, Years, PaidAt);
}
