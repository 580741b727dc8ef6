using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The ballast that a tripod needs beside what hangs on it, at the tilt that is worst for it.</summary>
/// <param name="Wanted">The lean that it is to stand; that of <see cref="TiltYardstick.NearestInKind"/> if the build says
/// nothing.</param>
/// <param name="Height">Height of the hook or of the bag's middle; a third of the camera plate's height if the build says
/// nothing.</param>
/// <param name="Ballast">What it needs for that lean on level ground.</param>
/// <param name="ForGust">What it needs against the gust that is expected, on the slope that it stands on; null where no wind is
/// expected.</param>
public sealed record StandBallast(Angle Wanted, Length Height, Ballast Ballast, Ballast? ForGust)
{
    /// <summary>The ballast of a build; null without a tripod whose figures are known.</summary>
    public static StandBallast? Of(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.Stand is not { } stand)
            return null;
        var wanted = balance.Rig.Build.OnLegs?.WantedLean ?? TiltYardstick.NearestInKind.Tilt;
        var height = balance.Rig.Build.OnLegs?.BallastHeight ?? Stand.UsualHook(balance.Supports.Stand!.CameraPlateHeight);
        return new(wanted, height, stand.BallastFor(height, wanted), balance.ExpectedWind is { } expected
            ? stand.BallastAgainst(height, balance.Wind!, expected.Gust, balance.Slope) : null);
    }
}
