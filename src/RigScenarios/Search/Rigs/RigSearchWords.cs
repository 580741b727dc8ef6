using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>The words of musts, wishes and what stands in the way of them.</summary>
public static class RigSearchWords
{
    /// <summary>A wish in words: "least cost".</summary>
    /// <param name="wish">The wish.</param>
    public static string Wish(RigWish wish) => wish switch
    {
        RigWish.LeastCost => "least cost",
        RigWish.LeastMass => "least mass",
        RigWish.LongestDay => "longest day",
        _ => "largest margin",
    };

    /// <summary>A must in words that can stand in a list of wishes: "to last the days at -5 °C".</summary>
    /// <param name="question">The question.</param>
    /// <param name="must">The must, one that the question asks.</param>
    public static string Must(BestRigQuestion question, RigMust must)
    {
        ArgumentNullException.ThrowIfNull(question);
        var musts = question.Best.Musts;
        return must switch
        {
            RigMust.Fits => "parts that go together",
            RigMust.Lasts => Lasts(musts.Lasts!, question.Days.Count),
            RigMust.Flies => musts.Flies == FliesMust.WithoutAsking ? "to fly in the cabin without asking"
                : "to fly in the cabin, approved where it must be",
            RigMust.Balances => "to balance",
            RigMust.Holds => musts.StandCounts ? "to stay within every limit" : "to stay within the limits of the wiring",
            RigMust.Mass => $"to weigh at most {Weight(musts.Mass!.Value)}",
            _ => $"to cost at most {MoneyText.Of(musts.Budget!.Value)}",
        };
    }

    /// <summary>A mass: "820 g", "3.42 kg".</summary>
    /// <param name="mass">The mass.</param>
    public static string Weight(Mass mass) => Math.Abs(mass.Grams) < 999.5
        ? string.Create(CultureInfo.InvariantCulture, $"{mass.Grams:0} g")
        : string.Create(CultureInfo.InvariantCulture, $"{mass.Kilograms:0.00} kg");

    /// <summary>A share in percent: "12 %"; one decimal below 10 %.</summary>
    /// <param name="share">The share.</param>
    public static string Percent(double share) => Math.Abs(share) < 0.0995
        ? string.Create(CultureInfo.InvariantCulture, $"{100 * share:0.#} %")
        : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    /// <summary>An amount; "a price that nobody knows" where there is none.</summary>
    /// <param name="amount">The amount.</param>
    /// <param name="currency">Its currency; null where no price has any.</param>
    public static string Amount(decimal? amount, string? currency) =>
        amount is not { } known ? "no price known" : currency is null ? "nothing" : MoneyText.Of(new Money(known, currency));

    internal static string TooLittleLeft(Ratio? left, Ratio wanted) =>
        $"{(left is { } share ? Percent(share.DecimalFractions) : "Nothing")} is left after wrap; "
            + $"{Percent(wanted.DecimalFractions)} is wanted.";

    internal static string TooShort(Duration left, Duration wanted) =>
        $"{AnswerTimes.Length(left)} is left after wrap; {AnswerTimes.Length(wanted)} is wanted.";

    internal static string TooHeavy(decimal? grams) => grams is { } known
        ? $"It weighs {Weight(UnitsNet.Mass.FromGrams((double)known))}." : "Its mass is not known.";

    internal static string TooDear(decimal? cost, string? currency) =>
        cost is null ? "A price is not known." : $"It costs {Amount(cost, currency)}.";

    internal static string StaysBehind(IReadOnlyList<LeftBehind> left) =>
        $"Can't fly in the cabin: {string.Join(", ", left.Select(one => $"{one.Battery.Title} ({one.Margin})"))}.";

    internal static string NeedsApproval(IEnumerable<string> batteries) =>
        $"The airline must approve beforehand: {string.Join(", ", batteries.Distinct())}.";

    private static string Lasts(LastsMust must, int days)
    {
        var words = days == 1 ? "to last the day" : "to last the days";
        if (must.Air is { } air)
            words += string.Create(CultureInfo.InvariantCulture, $" at {air.DegreesCelsius:0.#} °C");
        string?[] left = [must.Reserve is { } share ? Percent(share.DecimalFractions) : null,
            must.ReserveTime is { } time ? AnswerTimes.Length(time) : null];
        return left.Any(part => part is not null)
            ? $"{words} with {string.Join(" and ", left.OfType<string>())} left" : words;
    }
}
