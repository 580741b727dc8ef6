using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>From the mean wind of a forecast to the gust that a tripod has to stand: <c>gust = G · mean at the rig's
/// height</c>.</summary>
public static class Gusts
{
    /// <summary>z0, the roughness of open grass: 30 mm (from memory).</summary>
    public static Length Roughness { get; } = Length.FromMillimeters(30);

    /// <summary>Where the factors come from; three works that do not know of each other print the same row of the
    /// table.</summary>
    public static Citation Source { get; } = new(
        "B. A. Harper, J. D. Kepert, J. D. Ginger",
        "Guidelines for converting between various wind averaging periods in tropical cyclone conditions", 2010,
        "WMO/TD-No. 1555, table 1.1", Standing.SecondHand);

    /// <summary>G: the greatest mean over 3 s within ten minutes, over the mean of the ten minutes.</summary>
    /// <param name="surroundings">What the wind comes over.</param>
    public static double Factor(Surroundings surroundings) => surroundings switch
    {
        Surroundings.Inland => 1.66,
        Surroundings.Coast => 1.52,
        Surroundings.Shore => 1.38,
        _ => 1.23,
    };

    /// <summary>The mean at another height, by the logarithmic profile over open grass: <c>ln(to/z0)/ln(from/z0)</c> times it
    /// (any textbook on wind; from memory).</summary>
    /// <param name="mean">The mean that is known; 0 or more.</param>
    /// <param name="from">The height over the ground that it is for; above z0.</param>
    /// <param name="to">The height that is asked for; taken as no lower than 0.3 m, where no profile holds.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mean is below 0, or its height not above z0.</exception>
    public static Speed MeanAt(Speed mean, Length from, Length to)
    {
        Require.NotNegative(mean.MetersPerSecond, "m/s", nameof(mean));
        Require.Positive((from - Roughness).Meters, "m", nameof(from));
        return mean * (Math.Log(Math.Max(0.3, to.Meters) / Roughness.Meters) / Math.Log(from / Roughness));
    }
}

/// <summary>The wind that a build has to expect.</summary>
/// <param name="Mean">The mean that was given.</param>
/// <param name="Height">The height over the ground that it is for; null where it is for the rig's own.</param>
/// <param name="MeanAtRig">The mean at the middle of the area that the wind meets.</param>
/// <param name="Factor">G.</param>
public sealed record ExpectedWind(Speed Mean, Length? Height, Speed MeanAtRig, double Factor)
{
    /// <summary>The gust to be held against the tripod.</summary>
    public Speed Gust => MeanAtRig * Factor;

    /// <summary>The wind that a build is told to expect; null where it is told none.</summary>
    /// <param name="legs">How the legs stand.</param>
    /// <param name="at">Height of the middle of the area that the wind meets.</param>
    public static ExpectedWind? Of(LegsInUse? legs, Length at) => legs?.Wind is not { } mean ? null
        : new(mean, legs.WindHeight, legs.WindHeight is { } height ? Gusts.MeanAt(mean, height, at) : mean,
            Gusts.Factor(legs.Surroundings ?? Surroundings.Inland));
}
