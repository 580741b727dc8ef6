using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>All batteries of a plan growing older together, and the days with them.</summary>
/// <param name="paths">The path of each battery, in the order of the plan.</param>
/// <param name="days">The days.</param>
/// <param name="wish">The reserve that is wished after wrap; null for none.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class BatteriesAhead(
    IReadOnlyList<BatteryPath> paths, AgedDays days, Duration? wish, CancellationToken cancellation)
{
    // Where a date is looked for by trying, it is found to two days: no forecast of aging is as good.
    private const double WithinDays = 2;

    /// <summary>The paths.</summary>
    public IReadOnlyList<BatteryPath> Paths => paths;

    /// <summary>The ages after a further time.</summary>
    public IReadOnlyList<Age> At(Duration further, AgeEnd end = AgeEnd.Middle) =>
        [.. paths.Select(path => path.At(further, end))];

    /// <summary>The planned days after a further time.</summary>
    public DayFigures DaysAt(Duration further, AgeEnd end = AgeEnd.Middle, bool inTheCold = false) =>
        days.At(At(further, end), inTheCold);

    /// <summary>
    /// How long until the planned days no longer last with the reserve that is wished; zero where they don't now, null where they
    /// still do in 40 years. Found by halving, each date run.
    /// </summary>
    public Duration? UntilDaysFail(AgeEnd end = AgeEnd.Middle)
    {
        if (!DaysAt(Duration.Zero, end).Lasts(wish))
            return Duration.Zero;
        var (lasts, fails) = (0.0, Cells.Aging.LifeResult.Furthest.Days);
        if (DaysAt(Duration.FromDays(fails), end).Lasts(wish))
            return null;
        while (fails - lasts > WithinDays)
        {
            cancellation.ThrowIfCancellationRequested();
            var middle = (lasts + fails) / 2;
            if (DaysAt(Duration.FromDays(middle), end).Lasts(wish))
                lasts = middle;
            else
                fails = middle;
        }
        return Duration.FromDays(fails);
    }
}
