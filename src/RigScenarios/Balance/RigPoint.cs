using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A point, or a way from one point to another, in a right-handed frame: x forward along the lens, y to the camera's left, z up
/// (the axes of
/// ISO 8855). In the rig frame the origin is the middle of the body's tripod socket on the base plane.
/// </summary>
/// <param name="X">Forward.</param>
/// <param name="Y">To the camera's left.</param>
/// <param name="Z">Up.</param>
public readonly record struct RigPoint(Length X, Length Y, Length Z)
{
    /// <summary>The origin.</summary>
    public static RigPoint Origin { get; } = FromMetres(0, 0, 0);

    /// <summary>A point from plain numbers in metres.</summary>
    public static RigPoint FromMetres(double x, double y, double z) =>
        new(Length.FromMeters(x), Length.FromMeters(y), Length.FromMeters(z));

    /// <summary>A point from plain numbers in millimetres, the unit of the trade.</summary>
    public static RigPoint FromMillimetres(double x, double y, double z) =>
        new(Length.FromMillimeters(x), Length.FromMillimeters(y), Length.FromMillimeters(z));

    internal Vector Metres => new(X.Meters, Y.Meters, Z.Meters);

    internal static RigPoint From(Vector metres) => FromMetres(metres.X, metres.Y, metres.Z);
}
