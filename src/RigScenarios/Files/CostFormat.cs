using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How a scenario's terms of money stand in a file.</summary>
internal static class CostFormat
{
    private static readonly MoneyFormat Amount = new();

    private static readonly QuantityFormat<Ratio> Share = new(Ratio.FromPercent(0), Ratio.FromPercent(100), "10 %");

    private static readonly QuantityFormat<Ratio> Rate = new(Ratio.FromPercent(0), Ratio.FromPercent(50), "4 %");

    private static readonly Format<CostTerms> Terms = new RecordFormat<CostTerms>(
        () => new CostTerms(), "What is to be known of money: the budget, and over how long owning is held against renting.",
        Fields<CostTerms>.Optional("budget", Amount, terms => terms.Budget, (terms, value) => terms with { Budget = value },
            "The most that may be paid for what a build and its days need."),
        Fields<CostTerms>.Optional("contingency", Share, terms => terms.Contingency,
            (terms, value) => terms with { Contingency = value },
            "The share of the budget that is to stay; with less left the answer is \"just\". None if left out."),
        Fields<CostTerms>.Optional("vat", new ChoiceFormat<ValueAddedTax>(), terms => terms.Vat,
            (terms, value) => terms with { Vat = value }, "Whether all prices are without value added tax (net) or with it."),
        Fields<CostTerms>.Optional("others-are", new ChoiceFormat<Had>(), terms => terms.OthersAre,
            (terms, value) => terms with { OthersAre = value },
            "How things of the kit are had that do not say it themselves; bought if left out."),
        Fields<CostTerms>.Optional("rented-days", new CountFormat(1, 3660), terms => terms.RentedDays,
            (terms, value) => terms with { RentedDays = value },
            "Days in a row for which rented things are rented; as many as the shooting days that are asked about if left out."),
        Fields<CostTerms>.Optional("years", new CountFormat(1, 20), terms => terms.Years,
            (terms, value) => terms with { Years = value }, "Years over which owning is held against renting; 3 if left out."),
        Fields<CostTerms>.Optional("days-per-year", new CountFormat(1, 365), terms => terms.DaysPerYear,
            (terms, value) => terms with { DaysPerYear = value }, "Shooting days a year; not known if left out."),
        Fields<CostTerms>.Optional("days-in-a-row", new CountFormat(1, 365), terms => terms.DaysInARow,
            (terms, value) => terms with { DaysInARow = value },
            "Days of one job in a row, which are rented together; all days of a year in one go if left out."),
        Fields<CostTerms>.Optional("yearly-rate", Rate, terms => terms.YearlyRate,
            (terms, value) => terms with { YearlyRate = value },
            "Yearly rate at which later payments count less; 0 % if left out."),
        Fields<CostTerms>.Optional("first-year-loss", Share, terms => terms.FirstYearLoss,
            (terms, value) => terms with { FirstYearLoss = value },
            "What a thing loses of its value in its first year; 30 % if left out."),
        Fields<CostTerms>.Optional("later-loss", Share, terms => terms.LaterLoss,
            (terms, value) => terms with { LaterLoss = value },
            "What it loses of its value in each later year; 15 % if left out."),
        Fields<CostTerms>.Optional("repairs-per-year", Amount, terms => terms.RepairsPerYear,
            (terms, value) => terms with { RepairsPerYear = value },
            "Repairs and service of all that is bought, each year; none if left out."),
        Fields<CostTerms>.Optional("consumables-per-day", Amount, terms => terms.ConsumablesPerDay,
            (terms, value) => terms with { ConsumablesPerDay = value },
            "What a shooting day uses up of an own kit and a rented one brings along; none if left out."),
        Fields<CostTerms>.Optional("battery-years", new NumberFormat(0.1, 40), terms => terms.BatteryYears,
            (terms, value) => terms with { BatteryYears = value },
            "Years after which a battery is replaced; by its aging if left out."));

    /// <summary>The terms of a scenario.</summary>
    public static readonly Field<Scenario> Field = Fields<Scenario>.OptionalGroup(
        "costs", Terms, scenario => scenario.Costs, (scenario, value) => scenario with { Costs = value },
        "What is to be known of money; with it the answer says what the kit costs.");
}
