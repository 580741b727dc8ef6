using RigScenarios.Answers;

namespace RigScenarios.Search.Compare;

/// <summary>The rows of figures: values, differences to the base, who is best.</summary>
internal static class FigureRows
{
    /// <summary>A row, its differences not yet split.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="base">The place of the base.</param>
    public static FigureRow Of(ComparedFigure figure, IReadOnlyList<RigAnswer> answers, int @base)
    {
        List<FigureDifference?> differences = [.. answers.Index().Select(item => item.Index == @base ? null
            : figure.Difference(answers[@base], item.Item))];
        return new(figure.Kind, figure.Goal, [.. answers.Select(figure.Of)], differences, Best(figure, answers));
    }

    /// <summary>The same rows with every difference split that can be told.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="answers">The answers.</param>
    /// <param name="base">The place of the base.</param>
    /// <param name="progress">Told of the part that is done.</param>
    /// <param name="cancellation">Stops it.</param>
    public static List<FigureRow> Split(IReadOnlyList<FigureRow> rows, IReadOnlyList<RigAnswer> answers, int @base,
        IProgress<double>? progress, CancellationToken cancellation)
    {
        var done = 0;
        var runs = 1;
        var splits = answers.Select((answer, place) => place == @base ? null : new DifferenceSplits(answers[@base], answer,
            () => progress?.Report((double)Interlocked.Increment(ref done) / runs), cancellation)).ToList();
        runs = Math.Max(1, splits.Sum(split => split?.Runs ?? 0));
        return [.. rows.Zip(ComparedFigure.For(answers), (row, figure) => row with
        {
            Differences = [.. row.Differences.Zip(splits, (difference, split) => difference is
                { Standing: Standing.Better or Standing.Worse or Standing.Different, IsAtLeast: false }
                ? difference with { Split = split!.Of(figure) } : difference)],
        })];
    }

    // Nobody wins where a figure is missing: it might be the best.
    private static List<int> Best(ComparedFigure figure, IReadOnlyList<RigAnswer> answers)
    {
        if (figure.Goal == FigureGoal.Neither)
            return [];
        List<int> best = [];
        for (var i = 0; i < answers.Count; i++)
        {
            var against = answers.Index().Where(item => item.Index != i)
                .Select(item => figure.Difference(answers[i], item.Item).Standing).ToList();
            if (against.Contains(Standing.NotKnown))
                return [];
            if (!against.Contains(Standing.Better))
                best.Add(i);
        }
        return best.Count == answers.Count ? [] : best;
    }
}
