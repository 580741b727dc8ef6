using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The ballast that a stand needs for a wanted lean, at the tilt that is worst for it.</summary>
/// <param name="Wanted">The lean that it is to stand; that of <see cref="Yardstick"/> if the build says nothing.</param>
/// <param name="Height">Height of the hook or of the bag's middle; a third of the plate's height if the build says nothing.</param>
/// <param name="Ballast">What it needs.</param>
public sealed record StandBallast(Angle Wanted, Length Height, Ballast Ballast)
{
    /// <summary>What is asked of the equipment that is nearest in kind, since nothing is asked of camera stands.</summary>
    public static TiltYardstick Yardstick { get; } = TiltYardstick.All.First(stick => stick.What.StartsWith("audio", StringComparison.Ordinal));

    /// <summary>The ballast of a build; null without a stand whose figures are known.</summary>
    public static StandBallast? Of(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if ((balance.WorstTilt ?? balance.Level) is not { } stand)
            return null;
        var wanted = balance.Rig.Build.OnLegs?.WantedLean ?? Yardstick.Tilt;
        var height = balance.Rig.Build.OnLegs?.BallastHeight ?? balance.Supports.Stand!.PlateHeight / 3;
        return new(wanted, height, stand.BallastFor(height, wanted));
    }
}
