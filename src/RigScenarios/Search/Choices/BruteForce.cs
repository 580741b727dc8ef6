using System.Numerics;

namespace RigScenarios.Search.Choices;

/// <summary>Every choice run, one after the other: the slow and simple way to the same front, to hold the search
/// against.</summary>
public static class BruteForce
{
    /// <summary>More choices than this are refused.</summary>
    public const int MostChoices = 1_000_000;

    /// <summary>The front, with all equals.</summary>
    /// <param name="model">The model.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="ArgumentException">The model contradicts itself, or has more than <see cref="MostChoices"/>
    /// choices.</exception>
    public static FrontResult Front(IChoiceModel model, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        var tables = new ChoiceTables(model, knownOnly: false);
        var points = Feasible(tables, model, cancellation).ToList();
        var known = points.Where(point => point.IsKnown).ToList();
        var entries = known.Where(point => !known.Exists(other => other.IsNoWorseThan(point) && !point.IsNoWorseThan(other)))
            .GroupBy(point => string.Join('/', point.Goals(tables)), StringComparer.Ordinal)
            .Select(same => new FrontEntry(same.First().Goals(tables), [.. same.Select(point => point.Choice).Order()], true))
            .Concat(points.Where(point => !point.IsKnown)
                .Select(point => new FrontEntry(point.Goals(tables), [point.Choice], true)));
        return new([.. entries], true, tables.HasEmptySlot ? 0 : tables.AllFitting().Count, BigInteger.Zero,
            [.. model.Goals.Select(_ => double.PositiveInfinity)], points.Count, points.Count);
    }

    /// <summary>Every choice that holds all musts, in order.</summary>
    internal static IEnumerable<ChoicePoint> Feasible(ChoiceTables tables, IChoiceModel model, CancellationToken cancellation)
    {
        if (tables.HasEmptySlot)
            yield break;
        if (tables.AllFitting().Count is var count && count > MostChoices)
            throw new ArgumentException($"There are {count} choices; accepted: up to {MostChoices}.", nameof(model));
        IEnumerable<IEnumerable<int>> all = [[]];
        for (var slot = 0; slot < tables.Slots; slot++)
        {
            var candidates = tables.Fitting(slot).ToList();
            all = all.SelectMany(_ => candidates, (before, candidate) => before.Append(candidate));
        }
        foreach (var choice in all.Select(candidates => new Choice(candidates)))
        {
            cancellation.ThrowIfCancellationRequested();
            if (!tables.Allows(choice))
                continue;
            var figures = model.Evaluate(choice, cancellation);
            if (Array.TrueForAll(tables.OtherMusts, must => figures.Musts[must] is true))
                yield return new ChoicePoint(tables, choice, figures);
        }
    }
}
