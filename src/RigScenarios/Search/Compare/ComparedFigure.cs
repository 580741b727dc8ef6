using RigScenarios.Answers;

namespace RigScenarios.Search.Compare;

/// <summary>A figure that is read from an answer and held against that of another: what it is, and how far off a difference of
/// two may be. All numbers are in the one unit of <see cref="Amount"/>.</summary>
internal abstract class ComparedFigure
{
    /// <summary>The figures of some answers, in their order; money only where anything of any of them has a price.</summary>
    /// <param name="answers">The answers.</param>
    public static IReadOnlyList<ComparedFigure> For(IReadOnlyList<RigAnswer> answers) => CostFigure.For(answers) is { } cost
        ? [.. Physical, cost] : Physical;

    private static IReadOnlyList<ComparedFigure> Physical { get; } =
    [
        new ReserveFigure(), new MarginFigure(FigureKind.WiringLeft, QuestionKind.Wiring),
        new MarginFigure(FigureKind.BalanceLeft, QuestionKind.Balance), new MarginFigure(FigureKind.StandLeft,
            QuestionKind.Stand),
        new MassFigure(), new DrawFigure(), new MomentFigure(), new CentreFigure(FigureKind.CentreForward),
        new CentreFigure(FigureKind.CentreUp),
    ];

    public abstract FigureKind Kind { get; }

    public abstract FigureGoal Goal { get; }

    public abstract FigureAmount Amount(double number);

    public abstract FigureValue Of(RigAnswer answer);

    /// <summary>How far off the difference of two known figures may be; what both rest on alike is left out.</summary>
    public abstract double Within(RigAnswer one, RigAnswer other);

    /// <summary>The parts of the sum by the names of things; null for a figure that is no sum.</summary>
    public virtual IReadOnlyList<KeyValuePair<string, double>>? Parts(RigAnswer answer) => null;

    /// <summary>Why two figures can't be compared though both are there; null where they can.</summary>
    public virtual string? Incomparable(RigAnswer one, RigAnswer other) => null;

    /// <summary>The difference to a base, with its standing.</summary>
    /// <param name="base">The base.</param>
    /// <param name="rig">The other.</param>
    public FigureDifference Difference(RigAnswer @base, RigAnswer rig)
    {
        var (from, to) = (Of(@base), Of(rig));
        if (from.Number is not { } before || to.Number is not { } after)
            return NotKnown(from.Number is null ? from.Missing : to.Missing);
        if (Incomparable(@base, rig) is { } why)
            return NotKnown(why);
        // A figure with no end is beyond the other one; where that one is larger, nobody knows.
        if (from.IsAtLeast != to.IsAtLeast && (from.IsAtLeast ? before < after : after < before))
            return NotKnown(from.IsAtLeast ? from.Missing : to.Missing);
        var difference = after - before;
        var within = Within(@base, rig);
        var told = Math.Abs(difference) > within && Math.Abs(difference) > Math.Max(Math.Abs(before), Math.Abs(after)) * 1e-9;
        return new()
        {
            Amount = Amount(difference), Within = Amount(within), IsAtLeast = from.IsAtLeast != to.IsAtLeast,
            Standing = !told ? Standing.NoneToTell : Goal switch
            {
                FigureGoal.Large => difference > 0 ? Standing.Better : Standing.Worse,
                FigureGoal.Small => difference < 0 ? Standing.Better : Standing.Worse,
                _ => Standing.Different,
            },
        };
    }

    private static FigureDifference NotKnown(string why) => new() { Standing = Standing.NotKnown, Missing = why };

    /// <summary>The root of the sum of squares.</summary>
    protected static double Together(IEnumerable<double> errors) => Math.Sqrt(errors.Sum(error => error * error));
}
