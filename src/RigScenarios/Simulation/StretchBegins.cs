namespace RigScenarios.Simulation;

/// <summary>A block, a take or a reset begins, or the last one ends.</summary>
internal sealed class StretchBegins(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) => Loop.Stretch.End;

    /// <inheritdoc/>
    public override void Happen(double now)
    {
        if (Loop.Coming!.MoveNext())
            At(Loop, now, first: false);
        else
            Loop.Finish();
    }

    /// <summary>The stretch at which the loop stands begins.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="now">The time, s.</param>
    /// <param name="first">Whether it is the first of a day.</param>
    public static void At(EventLoop loop, double now, bool first)
    {
        loop.Take(loop.Coming!.Current);
        if (loop.Swaps.Mounted is not { } mounted)
            return;
        if (loop.Swaps.IsWished && (loop.Stretch.BeginsBlock || loop.MaySwapNow))
        {
            loop.Swaps.Try(loop.Stretch, now);
        }
        else if (loop.Plan.Swaps.AtBlockEnds && loop.Stretch.BeginsBlock && !first && loop.Swaps.Next(now) is { } fuller)
        {
            mounted.AdvanceTo(now);
            if (fuller.Charge >= mounted.Charge + 0.05)
                loop.Swaps.Begin(fuller, loop.Stretch, now, forced: false);
        }
    }
}
