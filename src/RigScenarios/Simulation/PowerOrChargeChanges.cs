namespace RigScenarios.Simulation;

/// <summary>Power comes or goes, a charge ends or may begin: a battery that was waited for may be there.</summary>
internal sealed class PowerOrChargeChanges(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) => Loop.Swaps.Bays.NextEvent;

    /// <inheritdoc/>
    public override void Happen(double now)
    {
        Loop.Swaps.Bays.AdvanceTo(now);
        if (Loop.Swaps.Mounted is null && Loop.Swaps.Incoming is null)
            Loop.Swaps.Try(Loop.Stretch, now, forced: true);
        else if (Loop.Swaps.IsWished && Loop.MaySwapNow)
            Loop.Swaps.Try(Loop.Stretch, now);
    }
}
