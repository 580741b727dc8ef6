using RigScenarios.Sweeps.Discharges;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The rigs that one thread works with, each made once as long as the fields that have a part in it keep their
/// values.</summary>
/// <param name="fields">Which fields these are.</param>
internal sealed class RigWorkshop(WiringFields fields)
{
    // Beyond so many those of long ago are of no use.
    private const int Most = 64;

    private readonly Dictionary<string, ReducedRig> rigs = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RigShape> shapes = new(StringComparer.Ordinal);

    /// <summary>The rig of a point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="days">Its days.</param>
    public ReducedRig Of(SweepPoint point, SweptDays days)
    {
        var key = fields.KeyOf(point);
        if (rigs.TryGetValue(key, out var rig))
            return rig;
        var shape = fields.ShapeOf(point);
        rig = new(days, shapes.GetValueOrDefault(shape));
        Keep(shapes, shape, rig.Shape);
        Keep(rigs, key, rig);
        return rig;
    }

    private static void Keep<T>(Dictionary<string, T> all, string key, T one)
    {
        if (all.Count >= Most)
            all.Clear();
        all[key] = one;
    }
}
