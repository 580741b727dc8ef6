using RigScenarios.Answers;
using RigScenarios.Numerics;

namespace RigScenarios.Search.Compare;

/// <summary>Splits the differences of two rigs: those of sums part by part, those of other figures by running the rigs between
/// them.</summary>
/// <param name="from">The base.</param>
/// <param name="to">The other.</param>
/// <param name="progress">Told of each run that is done.</param>
/// <param name="cancellation">Stops the runs.</param>
internal sealed class DifferenceSplits(RigAnswer from, RigAnswer to, Action progress, CancellationToken cancellation)
{
    // A share under this part of the largest one is what is left of rounding.
    private const double Nothing = 1e-6;

    private readonly IReadOnlyList<ChangedGroup> groups = RigChanges.Between(from, to);
    private RigAnswer?[]? mixes;

    /// <summary>How many runs a split by the order-free mean takes.</summary>
    public int Runs => groups.Count < 2 ? 0 : (1 << groups.Count) - 2;

    /// <summary>Splits a difference that can be told.</summary>
    /// <param name="figure">The figure.</param>
    public DifferenceSplit Of(ComparedFigure figure)
    {
        if (figure.Parts(from) is { } before && figure.Parts(to) is { } after)
            return new(SplitWay.Sum, OfSum(figure, before, after));
        if (groups.Count == 0)
            return None("nothing that was looked at changed");
        var (start, end) = (figure.Of(from).Number!.Value, figure.Of(to).Number!.Value);
        if (groups.Count == 1)
            return new(SplitWay.OnlyChange, [new(groups[0].Name, figure.Amount(end - start))]);
        mixes ??= Run();
        var all = mixes.Length - 1;
        double?[] worths = [.. mixes.Select((mix, set) => set == 0 ? start : set == all ? end : mix is null ? null
            : Known(figure, mix))];
        if (Array.TrueForAll(worths, worth => worth is not null))
            return new(SplitWay.OrderFreeMean, Shares(figure, OrderFreeMean.Of(groups.Count, set => worths[set]!.Value)));
        if (!Enumerable.Range(0, groups.Count).All(i => worths[all & ~(1 << i)] is not null))
            return None(mixes.Skip(1).SkipLast(1).Contains(null) ? "some of the changes alone make no rig that can be run"
                : "with some of the changes alone it is not known");
        var left = OrderFreeMean.LeaveOneOut(groups.Count, set => worths[set]!.Value);
        var together = end - start - left.Sum();
        return new(SplitWay.LeaveOneOut, Shares(figure, left))
        {
            Together = Math.Abs(together) <= Nothing * Math.Abs(end - start) ? null : figure.Amount(together),
        };
    }

    private static double? Known(ComparedFigure figure, RigAnswer mix) =>
        figure.Of(mix) is { IsAtLeast: false, Number: { } number } ? number : null;

    private static DifferenceSplit None(string why) => new(SplitWay.None, []) { Missing = why };

    private RigAnswer?[] Run()
    {
        var answers = new RigAnswer?[1 << groups.Count];
        Parallel.For(1, answers.Length - 1, EveryCore.Until(cancellation), set =>
        {
            answers[set] = MixedRig.Answer(from, to, groups, set, cancellation);
            progress();
        });
        return answers;
    }

    private List<DifferenceShare> Shares(ComparedFigure figure, IReadOnlyList<double> shares) =>
        Largest(figure, groups.Zip(shares, (group, share) => (group.Name, share)));

    // One thing that took another's place is one line.
    private List<DifferenceShare> OfSum(ComparedFigure figure, IReadOnlyList<KeyValuePair<string, double>> before,
        IReadOnlyList<KeyValuePair<string, double>> after)
    {
        var replaced = RigChanges.Replaced(from, to);
        string Line(string thing) => replaced.TryGetValue(thing, out var next) ? next : thing;
        var lines = before.Select(part => (Line(part.Key), -part.Value)).Concat(after.Select(part => (part.Key, part.Value)));
        return Largest(figure, lines.GroupBy(line => line.Item1, StringComparer.Ordinal)
            .Select(line => (Words(figure, line.Key), line.Sum(part => part.Item2))));
    }

    private string Words(ComparedFigure figure, string thing)
    {
        var words = RigChanges.Words(from, to, thing);
        // Nothing of it changed but its place.
        return figure.Kind == FigureKind.Moment && words == LimitSentences.Element(thing)
            && from.TheBuild.Things.Contains(thing) && to.TheBuild.Things.Contains(thing) ? $"{words} moved" : words;
    }

    private static List<DifferenceShare> Largest(ComparedFigure figure, IEnumerable<(string Name, double Share)> shares)
    {
        var all = shares.OrderByDescending(share => Math.Abs(share.Share)).ToList();
        var least = Nothing * Math.Abs(all.Select(share => share.Share).FirstOrDefault());
        return [.. all.Where(share => Math.Abs(share.Share) > least).Select(share => new DifferenceShare(share.Name,
            figure.Amount(share.Share)))];
    }
}
