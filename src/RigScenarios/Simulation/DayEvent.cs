namespace RigScenarios.Simulation;

/// <summary>A kind of thing that happens at a time known beforehand: it says when it comes next, and what it does. A new kind is
/// a new type.</summary>
internal abstract class DayEvent(EventLoop loop)
{
    /// <summary>The loop in which it happens.</summary>
    protected EventLoop Loop { get; } = loop;

    /// <summary>When it comes next, s from midnight of the first day; infinite if it doesn't.</summary>
    /// <param name="now">The time, s.</param>
    public abstract double Next(double now);

    /// <summary>It happens.</summary>
    /// <param name="now">The time, s.</param>
    public abstract void Happen(double now);
}
