namespace RigScenarios.Simulation;

/// <summary>The hot-swap reserve is charged, or warm enough to be charged, while a battery is on the rig.</summary>
internal sealed class ReserveChanges(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) =>
        Loop.Swaps.Mounted is null ? double.PositiveInfinity : Loop.Swaps.Reserve.NextEvent(now, Loop.Stretch.End);

    /// <inheritdoc/>
    public override void Happen(double now) => Loop.Swaps.Reserve.ChargesAt(now);
}
