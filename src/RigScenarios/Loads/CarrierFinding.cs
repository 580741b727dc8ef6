using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>What a part with a rated load carries.</summary>
/// <param name="Part">The part.</param>
/// <param name="Carried">Mass of all that hangs on it, handling factor included.</param>
/// <param name="Rated">What its maker rates it for.</param>
public sealed record CarrierFinding(string Part, Mass Carried, Mass Rated)
{
    /// <summary>Rating less load.</summary>
    public Mass Margin => Mass.FromKilograms(Rated.Kilograms - Carried.Kilograms);

    /// <summary>All parts of a build that carry something and have a rated load, those with the least margin first.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more.</param>
    public static IReadOnlyList<CarrierFinding> All(BuildInPlace rig, double handlingFactor = JointLoad.SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var found = from thing in rig.Things
                    where thing.Value.RatedLoad is not null
                    let carried = rig.Placed.WithAllOn(thing.Key).Where(name => name != thing.Key).ToList()
                    where carried.Count > 0
                    select new CarrierFinding(thing.Key, Mass.FromKilograms(handlingFactor * carried.Sum(name => rig.Placed.Parts[name].Mass.Kilograms)), thing.Value.RatedLoad!.Value);
        return [.. found.OrderBy(finding => finding.Margin / finding.Rated)];
    }
}
