using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// One end of a pair of rods: what hangs on it, and how it bends from the edge of what holds it. Single loads are added up, as
/// beams allow. Give in the
/// clamp is left out and is often more.
/// </summary>
/// <param name="Rods">The rods' name.</param>
/// <param name="InFront">Whether it is the front end.</param>
/// <param name="FreeLength">From the edge of what holds them to their end.</param>
/// <param name="Load">Weight of all that hangs there, handling factor included.</param>
/// <param name="EndDeflection">How far the end goes down.</param>
/// <param name="Slope">Slope of the rods at the outermost load.</param>
/// <param name="Stress">Bending stress at the clamp.</param>
/// <param name="StressMargin">Yield strength less the stress; null where the material has no such figure.</param>
/// <param name="Material">What the rods are taken to be of.</param>
public sealed record RodFinding(
    string Rods, bool InFront, Length FreeLength, Force Load, Length EndDeflection, Angle Slope, Pressure Stress,
    Pressure? StressMargin, RodMaterial Material)
{
    private static readonly bool[] FrontAndRear = [true, false];

    /// <summary>Both ends of all rods of a build whose section and material are known.</summary>
    /// <param name="rig">The build with its things at their places.</param>
    /// <param name="handlingFactor">Factor on the weight; 1 or more.</param>
    public static IReadOnlyList<RodFinding> All(BuildInPlace rig, double handlingFactor = JointLoad.SuddenLoad)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return
        [
            .. from thing in rig.Things
               where thing.Value is { Rods: not null, Size: not null } && rig.Places[thing.Key].On is not null
               from isFront in FrontAndRear
               let finding = Of(rig, thing.Key, thing.Value, isFront, handlingFactor)
               where finding is not null
               select finding,
        ];
    }

    private static RodFinding? Of(BuildInPlace rig, string name, Part part, bool isFront, double factor)
    {
        var places = rig.Placed.MassProperties.Parts;
        var holder = rig.Places[name].On!;
        double sign = isFront ? 1 : -1, half = part.Size!.Length.Meters / 2;
        var edge = (sign * places[holder].BoxMiddle.X) + ((rig.Things[holder].Size?.Length.Meters ?? 0) / 2);
        var free = (sign * places[name].MountingPoint.X.Meters) + half - edge;
        var data = part.Rods!;
        var material = data.Material switch
        {
            RodMaterialKind.Aluminium => RodMaterial.Aluminium6061,
            RodMaterialKind.StainlessSteel => RodMaterial.Stainless304,
            _ => RodMaterial.WovenCarbon,
        };
        // Each thing on the rods acts at its own centre, with all that hangs on it, no farther out than the rods' end.
        var loads = rig.Places.Where(place => place.Value.On == name)
            .Select(place => (JointLoad.Of(rig.Placed, place.Key, factor).Force,
            At: (sign * places[place.Key].Centre.X.Meters) - edge))
            .Where(load => load.At > 0 && load.Force.Newtons > 0)
                .Select(load => (load.Force, At: Length.FromMeters(Math.Min(load.At, free)))).ToList();
        if (free <= 0 || loads.Count == 0)
            return null;
        var rods = new RodPair(new RodSection(data.Diameter, data.Bore), material, Length.FromMeters(free));
        var bends = loads.ConvertAll(load => rods.Under(load.Force, load.At));
        var stress = Pressure.FromPascals(bends.Sum(bend => bend.Stress.Pascals));
        return new(name, isFront, rods.FreeLength, Force.FromNewtons(loads.Sum(load => load.Force.Newtons)),
            Length.FromMeters(bends.Sum(bend => bend.EndDeflection.Meters)),
            Angle.FromRadians(bends.Sum(bend => bend.Slope.Radians)), stress, material.YieldStrength - stress, material);
    }
}
