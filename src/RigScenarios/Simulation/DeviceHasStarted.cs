namespace RigScenarios.Simulation;

/// <summary>A device that had lost power has started again; the loop sees it when it looks at all devices.</summary>
internal sealed class DeviceHasStarted(EventLoop loop) : DayEvent(loop)
{
    /// <inheritdoc/>
    public override double Next(double now) =>
        Loop.Devices.Min(device => (double?)device.RestartEnd(now)) ?? double.PositiveInfinity;

    /// <inheritdoc/>
    public override void Happen(double now)
    {
    }
}
