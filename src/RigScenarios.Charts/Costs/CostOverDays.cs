using RigScenarios.Charts.Lines;
using RigScenarios.Costs;
using RigScenarios.Parts;

namespace RigScenarios.Charts.Costs;

/// <summary>What buying and renting the same things cost over the shooting days of a year, with the stretches in which buying
/// costs no more.</summary>
public static class CostOverDays
{
    private const int FewestDays = 20;

    /// <summary>The figure, from 1 shooting day a year to well beyond the last stretch's begin and the days that are
    /// planned.</summary>
    /// <param name="costs">Buying held against renting; it must know both for something.</param>
    /// <param name="currency">The currency's three letters.</param>
    /// <param name="daysPerYear">The shooting days a year that are planned; null for none.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">Nothing has both a price to buy and one to rent.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="daysPerYear"/> is below 1 or beyond what was looked
    /// at.</exception>
    public static Figure Of(BuyOrRent costs, string currency, int? daysPerYear = null,
        string title = "From how many shooting days a year does buying pay?")
    {
        ArgumentNullException.ThrowIfNull(costs);
        if (costs.Together is not { } both)
            throw new ArgumentException("Nothing has both a price to buy and one to rent, so there is nothing to compare.",
                nameof(costs));
        ArgumentOutOfRangeException.ThrowIfLessThan(daysPerYear ?? 1, 1, nameof(daysPerYear));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(daysPerYear ?? 1, both.Owning.Count - 1, nameof(daysPerYear));
        var last = Last(both, daysPerYear);
        var years = costs.Terms.Years == 1 ? "1 year" : $"{costs.Terms.Years} years";
        double[] days = [.. Enumerable.Range(1, last).Select(day => (double)day)];
        ChartLine Line(string name, IReadOnlyList<decimal> costs) =>
            new(name, days, [.. costs.Skip(1).Take(last).Select(cost => (double)cost)]) { Kind = LineKind.Steps };
        return new LineChart
        {
            Slug = "cost-over-days",
            Title = title,
            Caption = Caption(costs, years),
            AlternativeText = Describe(both, currency, years, last),
            X = new ChartAxis("shooting days a year"),
            Panels =
            [
                new ChartPanel(new ChartAxis($"cost over {years}, as it is worth today", currency) { FromZero = true },
                    [Line("buying", both.Owning), Line("renting", both.Renting)]),
            ],
            // A value holds until the next day, and so does the shade.
            Blocks = [.. both.Stretches.Where(stretch => stretch.From <= last).Select(stretch =>
                new ChartBlock("", stretch.From, Math.Min(stretch.To + 1, last)) { IsEmphasised = true })],
            Marks = daysPerYear is { } planned ? [new ChartMark($"planned: {planned}", planned)] : [],
        }.ToFigure();
    }

    // So far that the begin of the last stretch does not stand at the edge; all of it where buying never pays.
    private static int Last(BreakEven both, int? planned)
    {
        var most = both.Owning.Count - 1;
        var wanted = both.Stretches.Count == 0 ? most : 3 * both.Stretches[^1].From / 2;
        return Math.Min(most, Math.Max(FewestDays, Math.Max(wanted, 5 * (planned ?? 0) / 4)));
    }

    private static string Caption(BuyOrRent costs, string years)
    {
        List<string> words =
        [
            costs.Together!.Stretches.Count == 0 ? "Buying costs more than renting at every number of days."
                : "Shaded: buying costs no more.",
            "Renting goes in steps, for the days of a week or a month beyond the paid ones cost nothing more.",
            $"Buying is the price, repairs, worn batteries and what a day uses up, less what things bring after {years}; "
                + "what they bring, where no price is given, is an assumption.",
        ];
        if (costs.LeftOut.Count > 0)
            words.Add($"Not in it, for they can't be had both ways at a known price: "
                + $"{string.Join(", ", costs.LeftOut.Select(line => line.Title).Distinct())}.");
        return string.Join(" ", words);
    }

    private static string Describe(BreakEven both, string currency, string years, int last)
    {
        string Amount(decimal amount) => MoneyText.Of(new Money(amount, currency));
        var stretches = both.Stretches.Select(stretch => stretch.To == both.Owning.Count - 1 ? $"from {stretch.From} on"
            : stretch.From == stretch.To ? $"at {stretch.From}" : $"from {stretch.From} to {stretch.To}").ToList();
        return $"Cost over {years} as it is worth today. At 1 shooting day a year buying costs {Amount(both.Owning[1])}, renting "
            + $"{Amount(both.Renting[1])}; at {last} days buying costs {Amount(both.Owning[last])}, renting "
            + $"{Amount(both.Renting[last])}. "
            + (stretches.Count == 0 ? "Buying costs more at every number of days."
                : $"Buying costs no more {string.Join(", ", stretches)} shooting days a year.");
    }
}
