using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>A scenario has one currency: nothing is converted, so amounts in two of them could not be added.</summary>
internal static class CurrencyCheck
{
    /// <summary>Checks all amounts that a scenario's kit, own parts and terms have; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        List<(string Path, string Of, Money Amount)> amounts =
        [
            .. Terms(scenario.Costs), .. Parts(scenario), .. Kit(scenario),
            .. Given(("best-rig.musts.budget", "", scenario.BestRig?.Musts.Budget),
                ("best-rig.upgrade.budget-a-year", "", Spent(scenario.BestRig?.Upgrade))),
        ];
        if (amounts.Select(one => one.Amount.Currency).Distinct().Count() < 2)
            return;
        // The terms say what is meant; without them, what most prices are in.
        var main = scenario.Costs is { } terms && Terms(terms).Select(one => one.Amount.Currency).FirstOrDefault() is { } meant
            ? meant : amounts.GroupBy(one => one.Amount.Currency).MaxBy(group => group.Count())!.Key;
        foreach (var (path, of, amount) in amounts.Where(one => one.Amount.Currency != main))
            log.Error(path, $"{of}{amount} is in another currency than the other amounts of this scenario ({main}), and nothing "
                + "is converted.", $"an amount in {main}");
    }

    private static IEnumerable<(string Path, string Of, Money Amount)> Terms(CostTerms? terms) =>
        Given(("costs.budget", "", terms?.Budget), ("costs.repairs-per-year", "", terms?.RepairsPerYear),
            ("costs.consumables-per-day", "", terms?.ConsumablesPerDay));

    // A field that is missing or wrong was told already, and is no amount.
    private static Money? Spent(UpgradeTerms? terms) =>
        terms is { BudgetAYear.Currency.Length: > 0 } ? terms.BudgetAYear : null;

    private static IEnumerable<(string Path, string Of, Money Amount)> Parts(Scenario scenario) =>
        scenario.Parts.SelectMany(part => Given([.. Amounts(part.Value)
            .Select(one => ($"parts.{part.Key}.{one.Field}", "", one.Amount))]));

    // The prices of a parts file stand elsewhere: they are told where the scenario takes the part.
    private static IEnumerable<(string Path, string Of, Money Amount)> Kit(Scenario scenario) =>
        scenario.Kit.Where(item => !scenario.Parts.ContainsKey(item.Value.Part) && scenario.PartOf(item.Key) is not null)
            .SelectMany(item => Given([.. Amounts(scenario.PartOf(item.Key)!)
                .Select(one => ($"kit.{item.Key}.part", $"\"{one.Field}\" of \"{item.Value.Part}\": ", one.Amount))]));

    private static IEnumerable<(string Field, Money? Amount)> Amounts(Part part) =>
        [("buy", part.Buy), ("rent-per-day", part.RentPerDay), ("rent-per-week", part.RentPerWeek),
            ("rent-per-month", part.RentPerMonth), ("resale", part.Resale)];

    private static IEnumerable<(string Path, string Of, Money Amount)> Given(
        params (string Path, string Of, Money? Amount)[] all) =>
        all.Where(one => one.Amount is not null).Select(one => (one.Path, one.Of, one.Amount!.Value));
}
