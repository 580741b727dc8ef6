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

    /// <summary>
    /// An aircraft's limits as those of a head: the plate's travel from the forward limit to the aft one, inches, and the rated
    /// load, pounds. It stays level and the plate puts the centre over its axis, so that nothing else limits.
    /// </summary>
    public static FluidHead Limits(double forward, double aft, double pounds) => new()
    {
        CameraPlateTravel = new LengthRange(Length.FromInches(forward), Length.FromInches(aft)),
        AxisDepth = Length.Zero,
        Counterbalance = Counterbalance.OfSteps([Torque.Zero]),
        Friction = Torque.Zero,
        TiltUp = Angle.Zero,
        TiltDown = Angle.Zero,
        // A sum of pounds in kilograms may differ from the product in the last digit.
        RatedLoad = Mass.FromPounds(pounds * (1 + 1e-14)),
    };

    /// <summary>The first part is called "0", and so on.</summary>
    private static PlacedBuild Of(IEnumerable<PlacedPart> parts) =>
        new(new OrderedMap<PlacedPart>(parts.Select((part, i) => KeyValuePair.Create($"{i}", part))));
}
