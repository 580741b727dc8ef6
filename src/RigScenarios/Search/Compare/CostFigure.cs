using RigScenarios.Answers;
using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Compare;

/// <summary>What is still to be paid for a build and its days, in the currency of the file: a sum over things. Prices are exact
/// as
/// they are given, so that a difference of a cent is one.</summary>
/// <param name="currency">The currency of differences.</param>
internal sealed class CostFigure(string currency) : ComparedFigure
{
    public override FigureKind Kind => FigureKind.Cost;

    public override FigureGoal Goal => FigureGoal.Small;

    /// <summary>The figure; null where nothing of any answer has a price.</summary>
    /// <param name="answers">The answers.</param>
    public static CostFigure? For(IEnumerable<RigAnswer> answers) =>
        answers.Select(answer => CostOf(answer)?.Currency).OfType<string>().FirstOrDefault() is { } currency
            ? new(currency) : null;

    // Amounts have cents, and a double holds them to far beyond these.
    public override FigureAmount Amount(double number) => FigureAmount.Of(new Money((decimal)number, currency));

    public override FigureValue Of(RigAnswer answer) => CostOf(answer) is not { } cost
        ? FigureValue.NotKnown("the prices are in several currencies")
        : cost.TotalMoney is not { } total ? FigureValue.NotKnown("nothing of it has a price")
        : new(FigureAmount.Of(total))
        {
            IsAtLeast = cost.IsAtLeast, Missing = cost.IsAtLeast ? $"no price is given for {Names(cost)}" : "",
        };

    public override IReadOnlyList<KeyValuePair<string, double>>? Parts(RigAnswer answer) => CostOf(answer) is not { } cost ? null
        : [.. cost.Lines.Select(line => KeyValuePair.Create(line.Name, (double)(line.Total ?? 0)))];

    public override double Within(RigAnswer one, RigAnswer other) => 0;

    public override string? Incomparable(RigAnswer one, RigAnswer other)
    {
        var (before, after) = (CostOf(one)!, CostOf(other)!);
        return before.Currency != after.Currency ? $"{before.Currency} and {after.Currency} are not converted"
            // What is missing in both alike costs the same in both.
            : before.IsAtLeast && after.IsAtLeast && !NotPriced(before).SequenceEqual(NotPriced(after)) ? Of(one).Missing : null;
    }

    private static string Names(KitCost cost) =>
        string.Join(", ", cost.NotPriced.Select(line => LimitSentences.Element(line.Name)));

    private static IEnumerable<(string, Had, int)> NotPriced(KitCost cost) =>
        cost.NotPriced.Select(line => (line.Title, line.Had, line.Count)).Order();

    // The days are those that were asked about.
    private static KitCost? CostOf(RigAnswer answer) =>
        answer.Cost ?? CostQuestion.AnyOf(answer.Scenario, answer.Build, answer.Days.Count);
}
