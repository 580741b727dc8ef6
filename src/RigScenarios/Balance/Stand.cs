using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>A tripod with everything below the rig, the head too. Three feet on a circle, 120° apart.</summary>
public sealed record Stand
{
    /// <summary>ρ: from the axis to a foot; above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or not finite.</exception>
    public required Length FootRadius
    {
        get;
        init
        {
            Require.Positive(value.Meters, "m");
            field = value;
        }
    }

    /// <summary>m_s: mass of all below the rig, the head and ballast included; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public required Mass Mass
    {
        get;
        init
        {
            Require.NotNegative(value.Kilograms, "kg");
            field = value;
        }
    }

    /// <summary>h_s: height of that mass's centre, on the axis, over the ground.</summary>
    public required Length CentreHeight { get; init; }

    /// <summary>The hook for a ballast bag where nobody says how high it is: a third of the camera plate's height (common
    /// practice, no source).</summary>
    /// <param name="cameraPlate">Height of the camera plate over the ground.</param>
    public static Length UsualHook(Length cameraPlate) => cameraPlate / 3;

    /// <summary>H_p: height of the rig's z = 0 over the ground.</summary>
    public required Length CameraPlateHeight { get; init; }
}

/// <summary>Wind against the rig: <c>F = ½ ρ v² C_d A</c>.</summary>
/// <param name="Area">The area that it meets, A.</param>
/// <param name="Height">Height of that area's middle over the ground.</param>
/// <param name="DragCoefficient">C_d; 1.2 is a rounded value for boxes (a square plate has 1.17, <i>Aeronautical Engineer's Data
/// Book</i>, p. 95).</param>
/// <param name="AirDensity">Density of the air, see <see cref="Balance.AirDensity"/>; 1.225 kg/m³ at sea level and 15 °C
/// (International Standard Atmosphere, from memory).</param>
public sealed record Wind(Area Area, Length Height, double DragCoefficient, Density AirDensity)
{
    /// <summary>The force at a wind speed.</summary>
    public Force ForceAt(Speed speed) => Force.FromNewtons(PerSquare * speed.MetersPerSecond * speed.MetersPerSecond);

    /// <summary>½ ρ C_d A, kg/m.</summary>
    internal double PerSquare => 0.5 * AirDensity.KilogramsPerCubicMeter * DragCoefficient * Area.SquareMeters;
}
