using RigScenarios.Answers;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>What is left to the nearest limit of a question, % of what is allowed; below zero where it is passed.</summary>
/// <param name="kind">The figure.</param>
/// <param name="question">The question.</param>
internal sealed class MarginFigure(FigureKind kind, QuestionKind question) : ComparedFigure
{
    public override FigureKind Kind => kind;

    public override FigureGoal Goal => FigureGoal.Large;

    public override FigureAmount Amount(double number) => FigureAmount.Of(Ratio.FromPercent(number));

    public override FigureValue Of(RigAnswer answer)
    {
        if (Nearest(answer) is not { } least)
            return FigureValue.NotKnown("no limit of it has a rating of which a share could be told");
        return new(Amount(100 * least.Share!.Value))
        {
            RestsOn = $"{LimitSentences.Element(least.Element)}: {LimitSentences.Left(least)}",
        };
    }

    private Limit? Nearest(RigAnswer answer) => NearestLimit.Of(answer, question);

    public override double Within(RigAnswer one, RigAnswer other)
    {
        var (limit, against) = (Nearest(one)!, Nearest(other)!);
        return 100 * (IsSameLimit(limit, against) && Loads(one, limit) is { } loads && Loads(other, against) is { } others
            ? Together(SharedInputs.Errors(loads, others))
            : Together([StatedErrors.ShareWithin(limit)!.Value, StatedErrors.ShareWithin(against)!.Value]));
    }

    // The same rating in both: only the loads against it differ.
    private static bool IsSameLimit(Limit one, Limit other) => one.Element == other.Element && one.Kind == other.Kind
        && one.Case == other.Case && one.Situation == other.Situation && Equals(one.Allowed, other.Allowed);

    // Of loads that are sums each part is off by its own share; of all others no one knows what they share.
    private static IEnumerable<((string, double), double)>? Loads(RigAnswer answer, Limit limit)
    {
        var parts = limit.Kind switch
        {
            LimitKind.RatedCurrent or LimitKind.Current or LimitKind.OutputCurrent or LimitKind.Fuse => Fed(answer,
                limit.Element),
            LimitKind.Load when answer.Balance is not null => Carried(answer),
            _ => null,
        };
        if (parts is null || parts.Sum(part => part.Amount) is not (> 0 and var all))
            return null;
        var against = 1 - limit.Share!.Value;
        return parts.Select(part => (part.Input, StatedErrors.Share * against * part.Amount / all));
    }

    private static List<((string, double) Input, double Amount)> Carried(RigAnswer answer) =>
        [.. MassFigure.Inputs(answer).Select(part => ((part.Input.Part, part.Input.GramsOfOne ?? 0), part.Grams))];

    private static List<((string, double) Input, double Amount)> Fed(RigAnswer answer, string element)
    {
        var feeds = answer.Simulation.Network.Elements.ToDictionary(item => item.Name, item => item.FedBy,
            StringComparer.Ordinal);
        bool Hangs(string thing)
        {
            for (string? at = thing; at is not null && feeds.TryGetValue(at, out var feed); at = feed)
            {
                if (at == element)
                    return true;
            }
            return false;
        }
        return [.. DrawFigure.Inputs(answer).Where(draw => !feeds.ContainsKey(element) || Hangs(draw.Thing))
            .Select(draw => ((draw.Input.Part, draw.Input.WattsOfOne), draw.Watts))];
    }
}
