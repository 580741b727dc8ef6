using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>Ways to keep batteries that are compared: half full or full, in a fridge, a room, a warm store; and the way of
/// now.</summary>
internal static class StorageWays
{
    private static readonly int[] YearsTold = [1, 3, 5];

    /// <summary>A way.</summary>
    public sealed record Way(Kept Kept, StoragePlace Place, bool IsAsNow);

    /// <summary>The ways, each once.</summary>
    /// <param name="life">How the first battery is kept now.</param>
    public static IReadOnlyList<Way> Of(LifeInWords life)
    {
        var whole = life.Completed;
        (Kept Kept, StoragePlace Place)[] ways =
        [
            (Kept.Half, StoragePlace.Fridge), (Kept.Half, StoragePlace.Room), (Kept.Half, StoragePlace.WarmStore),
            (Kept.Full, StoragePlace.Room), (Kept.Full, StoragePlace.WarmStore), (whole.Kept!, whole.Place!),
        ];
        return [.. ways.Distinct().Select(way => new Way(way.Kept, way.Place, way == (whole.Kept!, whole.Place!)))];
    }

    /// <summary>Runs one of them.</summary>
    /// <param name="way">The way.</param>
    /// <param name="ahead">The batteries kept so.</param>
    /// <param name="battery">Which of them is told of.</param>
    /// <param name="from">Today.</param>
    /// <param name="daysEnd">Whether the planned days are ended by an age at all.</param>
    public static StorageCase Run(Way way, BatteriesAhead ahead, int battery, DateOnly from, bool daysEnd) =>
        new(way.Kept, way.Place, way.IsAsNow,
        [.. YearsTold.Select(years =>
        {
            var time = Duration.FromDays(years * 365.25);
            return new StorageYear(years, ahead.Paths[battery].At(time), ahead.DaysAt(time));
        })],
        YearsAhead.DateAfter(from, ahead.Paths[battery].TimeTo(LifeResult.Replaced)),
        daysEnd ? YearsAhead.DateAfter(from, ahead.UntilDaysFail()) : null);
}
