using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>What a part with a rated load carries, at rest: makers rate a mass and know that it is handled. Joints are held
/// against their ratings with a factor.</summary>
/// <param name="Part">The part.</param>
/// <param name="Carried">Mass of all that hangs on it, at rest.</param>
/// <param name="Rated">What its maker rates it for.</param>
public sealed record CarrierFinding(string Part, Mass Carried, Mass Rated)
{
    /// <summary>Rating less load.</summary>
    public Mass Margin => Mass.FromKilograms(Rated.Kilograms - Carried.Kilograms);

    /// <summary>All parts of a build that carry something and have a rated load, those with the least margin first.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    public static IReadOnlyList<CarrierFinding> All(BuildInPlace rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var found = from thing in rig.Things
                    where thing.Value.RatedLoad is not null
                    let carried = rig.Placed.WithAllOn(thing.Key).Where(name => name != thing.Key).ToList()
                    where carried.Count > 0
                    select new CarrierFinding(thing.Key,
                        Mass.FromKilograms(carried.Sum(name => rig.Placed.Parts[name].Mass.Kilograms)),
                        thing.Value.RatedLoad!.Value);
        return [.. found.OrderBy(finding => finding.Margin / finding.Rated)];
    }
}
