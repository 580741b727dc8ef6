using System.Collections.Concurrent;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Discharges;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// Which fields of a sweep have a part in the wiring, its states and its stretches, so that scenarios which differ in others
/// alone share what is made of these. Found by trying, for no list of names would stay right: each field alone at its ends and
/// in the middle, each two of them together, and points spread over the plan.
/// </summary>
internal sealed class WiringFields
{
    // Beyond so many the pairs are too many to try: then nothing is shared.
    private const int MostFields = 24;

    private readonly SweptScenarios scenarios;
    private readonly CancellationToken cancellation;
    private readonly bool[] touches;
    private readonly bool[] touchesShape;
    private readonly ConcurrentDictionary<string, ReducedRig?> tried = new(StringComparer.Ordinal);

    /// <param name="scenarios">The scenarios.</param>
    /// <param name="cancellation">Stops the trials.</param>
    public WiringFields(SweptScenarios scenarios, CancellationToken cancellation)
    {
        (this.scenarios, this.cancellation) = (scenarios, cancellation);
        var values = TriedValues(scenarios.Question.Plan);
        (touches, touchesShape) = (new bool[values.Length], new bool[values.Length]);
        if (values.Length > MostFields)
        {
            ShareNothing();
            return;
        }
        TryOnEveryCore([[], .. from field in Enumerable.Range(0, values.Length) from value in values[field]
                               select new[] { (field, value) }]);
        var asItIs = Rig([]);
        for (var field = 0; field < values.Length; field++)
        {
            touches[field] = values[field].Any(value => !Same(Rig([(field, value)]), asItIs));
            touchesShape[field] = touches[field] && values[field].Any(value => !SameShape(Rig([(field, value)]), asItIs));
        }
        // What the wiring of two hangs on for certain has a part in the key of a point whatever they do together.
        (int Field, int Other)[] pairs = [.. from field in Enumerable.Range(0, values.Length)
                                             from other in Enumerable.Range(field + 1, values.Length - field - 1)
                                             where !touchesShape[field] || !touchesShape[other]
                                             select (field, other)];
        TryOnEveryCore([.. from pair in pairs from value in Ends(values[pair.Field]) from second in Ends(values[pair.Other])
                           select new[] { (pair.Field, value), (pair.Other, second) }]);
        foreach (var (field, other) in pairs)
            TryTogether(field, values[field], other, values[other]);
    }

    /// <summary>What of a point's values the wiring hangs on; two points with the same share the wiring.</summary>
    /// <param name="point">The point.</param>
    public string KeyOf(SweepPoint point) => Array.IndexOf(touches, true) < 0 ? ""
        : string.Join('\n', point.Values.Where((_, field) => touches[field]));

    /// <summary>The same for what of it says which device is wanted when, and what it hangs on.</summary>
    public string ShapeOf(SweepPoint point) => Array.IndexOf(touchesShape, true) < 0 ? ""
        : string.Join('\n', point.Values.Where((_, field) => touchesShape[field]));

    /// <summary>Takes every field as one that has a part, because a point of the plan was not as the trials say.</summary>
    public void ShareNothing()
    {
        Array.Fill(touches, true);
        Array.Fill(touchesShape, true);
    }

    private void TryTogether(int field, string[] values, int other, string[] others)
    {
        // Of each the two ends: what one does to the other shows there first.
        foreach (var value in Ends(values))
        {
            foreach (var second in Ends(others))
            {
                var both = Rig([(field, value), (other, second)]);
                if (Same(both, Rig([.. Of(touches)])) && SameShape(both, Rig([.. Of(touchesShape)])))
                    continue;
                touches[field] = touches[other] = touchesShape[field] = touchesShape[other] = true;
                return;

                IEnumerable<(int Field, string Value)> Of(bool[] which) =>
                    new (int Field, string Value)[] { (field, value), (other, second) }.Where(one => which[one.Field]);
            }
        }
    }

    private ReducedRig? Rig((int Field, string Value)[] changes)
    {
        cancellation.ThrowIfCancellationRequested();
        var key = string.Join('\n', changes.Select(change => $"{change.Field} {change.Value}"));
        return tried.GetOrAdd(key, _ => RigOf(changes));
    }

    // The trials do not hang on each other, and nearly all of them are wanted.
    private void TryOnEveryCore((int Field, string Value)[][] trials) =>
        SweptDays.OnEveryCore(trials.Length, i => Rig(trials[i]), cancellation);

    // A trial that is refused is one of no point, or of one that is refused when its turn comes.
    private ReducedRig? RigOf((int Field, string Value)[] changes)
    {
        try
        {
            return new(scenarios.DaysOf(scenarios.With(changes), cancellation));
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            return null;
        }
    }

    private static bool Same(ReducedRig? one, ReducedRig? other) =>
        ReferenceEquals(one, other) || (one is not null && other is not null && one.SameAs(other));

    private static bool SameShape(ReducedRig? one, ReducedRig? other) =>
        ReferenceEquals(one, other) || (one is not null && other is not null && one.Shape.SameAs(other.Shape));

    private static string[] Ends(string[] values) => values.Length < 2 ? values : [values[0], values[^1]];

    private static string[][] TriedValues(SweepPlan plan) =>
    [
        .. plan.Axes.Select(axis => axis.Values.Distinct().ToArray()),
        .. plan.Uncertain.Select(field => new[] { 0, 0.5, 1 }.Select(field.Spread.TextAt).Distinct().ToArray()),
    ];
}
