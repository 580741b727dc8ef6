using System.Globalization;
using System.Text;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>The result of a search as comma-separated values (RFC 4180), the same columns in every row; docs/best-rig.md says
/// what they are. Columns are added, none is renamed.</summary>
public static class RigSearchTable
{
    /// <summary>The table: a row for each rig, then one for each year of an order of purchases, where one is asked for.</summary>
    /// <param name="result">The result.</param>
    public static string ToCsv(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        List<IReadOnlyList<string>> rows =
        [
            ["rig", .. result.Question.Places.Select(place => place.Name), "cost", "currency", "mass_g", "reserve_h",
                "reserve_is_lower_bound", "least_share_left", "verdict", "equals", "year", "bought", "paid", "sold", "brought",
                "money_left"],
            .. result.Picks.Select((pick, number) => (IReadOnlyList<string>)
            [
                $"{number + 1}", .. Titles(result, pick.Choice), Number(pick.Cost), result.Model.Currency ?? "",
                Number(pick.Grams), .. Figures(pick.Figures), $"{pick.JustAsGood.Count}", "", "", "", "", "", "",
            ]),
            .. (result.Upgrades?.Years ?? []).Select(year => Year(result, year)),
        ];
        var text = new StringBuilder();
        foreach (var row in rows)
            text.AppendJoin(',', row.Select(CsvField.Of)).Append("\r\n");
        return text.ToString();
    }

    // What a rig of these years costs stands in what is paid: its price today would count what is sold and owned otherwise.
    private static IReadOnlyList<string> Year(RigSearchResult result, RigUpgradeYear year) =>
    [
        "", .. Titles(result, year.Choice), "", result.Upgrades!.Terms.BudgetAYear.Currency,
        Number(year.Choice is { } choice ? result.Model.Mass.Of(choice) : null),
        .. year.Figures is { } figures ? Figures(figures) : ["", "", "", ""], "", $"{year.Year}", .. Trades(year.Bought),
        .. Trades(year.Sold), Number(year.MoneyLeft),
    ];

    private static IEnumerable<string> Titles(RigSearchResult result, Choice? choice) => result.Question.Places
        .Select((place, number) => choice is null ? "" : place.Candidates[choice[number]].Title);

    private static IEnumerable<string> Figures(RigFigures figures) =>
    [
        string.Create(CultureInfo.InvariantCulture, $"{figures.Reserve?.Hours:F4}"), figures.IsReserveLowerBound ? "yes" : "no",
        string.Create(CultureInfo.InvariantCulture, $"{figures.Least?.Share:F4}"), figures.Verdict.InWords(),
    ];

    private static IEnumerable<string> Trades(IReadOnlyList<RigTrade> trades) =>
        [string.Join("; ", trades.Select(trade => trade.Thing.Title)), Number(trades.Sum(trade => trade.Amount))];

    private static string Number(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
