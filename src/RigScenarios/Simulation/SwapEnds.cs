namespace RigScenarios.Simulation;

/// <summary>A swap is done: the battery that was put on feeds the rig.</summary>
internal sealed class SwapEnds(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) => Loop.Swaps.Incoming is null ? double.PositiveInfinity : Loop.Swaps.SwapEnd;

    /// <inheritdoc/>
    public override void Happen(double now) => Loop.Swaps.Finish(now);
}
