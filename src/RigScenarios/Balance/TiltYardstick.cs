using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A tilt at which some other kind of equipment must not overturn, to hold a tip angle against. No standard sets a figure for
/// camera stands: DIN 56950-3 and
/// prEN 17206-2 exclude them.
/// </summary>
/// <param name="Tilt">The tilt of the test.</param>
/// <param name="What">What it is asked of.</param>
/// <param name="Source">Where it is asked.</param>
public sealed record TiltYardstick(Angle Tilt, string What, Citation Source)
{
    /// <summary>What is asked of the equipment that is nearest in kind, since nothing is asked of camera tripods.</summary>
    public static TiltYardstick NearestInKind => All.First(stick => stick.What.StartsWith("audio", StringComparison.Ordinal));

    /// <summary>The yardsticks, from low to high.</summary>
    public static IReadOnlyList<TiltYardstick> All { get; } =
    [
        new(Angle.FromDegrees(6), "portable luminaires",
            new Citation("IEC", "60598-2-4", 1997, "clause 4.6.3", Standing.SecondHand)),
        new(Angle.FromDegrees(10), "household appliances that stand on the floor",
            new Citation("IEC", "60335-1", null, "clause 20.1", Standing.SecondHand)),
        new(Angle.FromDegrees(10), "audio, video and information equipment",
            new Citation("IEC", "62368-1", null, "static stability", Standing.SecondHand)),
        new(Angle.FromDegrees(15), "garden luminaires", new Citation("IEC", "60598-2-7", 1996, "", Standing.SecondHand)),
    ];
}
