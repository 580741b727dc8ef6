namespace RigScenarios.Simulation;

/// <summary>The temperature of the air goes on in another straight line; it does nothing else, but a run is made in one of
/// them.</summary>
internal sealed class AirTurns(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) => Loop.Air.At(now).Until;

    /// <inheritdoc/>
    public override void Happen(double now)
    {
    }
}
