using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>Builds of point masses on the x axis, for worked examples.</summary>
internal static class PointMasses
{
    public static PlacedPart At(Mass mass, Length x) =>
        new() { Mass = mass, MassCentre = RigPoint.Origin, Placement = Placement.At(new RigPoint(x, Length.Zero, Length.Zero)) };

    public static PlacedBuild Kilograms(params (double Kilograms, double Metres)[] points) =>
        Of(points.Select(point => At(Mass.FromKilograms(point.Kilograms), Length.FromMeters(point.Metres))));

    public static PlacedBuild Pounds(params (double Pounds, double Inches)[] points) =>
        Of(points.Select(point => At(Mass.FromPounds(point.Pounds), Length.FromInches(point.Inches))));

    /// <summary>The first part is called "0", and so on.</summary>
    private static PlacedBuild Of(IEnumerable<PlacedPart> parts) =>
        new(new OrderedMap<PlacedPart>(parts.Select((part, i) => KeyValuePair.Create($"{i}", part))));
}
