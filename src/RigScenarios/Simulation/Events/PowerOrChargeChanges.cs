namespace RigScenarios.Simulation.Events;

/// <summary>Power comes or goes, a charge ends or may begin: a battery that was waited for may be there.</summary>
internal sealed class PowerOrChargeChanges(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) => Loop.Bays.NextEvent;

    /// <inheritdoc/>
    public override void Happen(double now)
    {
        Loop.Bays.AdvanceTo(now);
        if (Loop.Mounted is null && Loop.Incoming is null)
            Loop.TrySwap(now, forced: true);
        else if (Loop.SwapWished && Loop.MaySwapNow)
            Loop.TrySwap(now);
    }
}
