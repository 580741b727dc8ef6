namespace RigScenarios.Simulation;

/// <summary>A plan that asks for more than anybody can do, and would be simulated for minutes: stopped at a bound.</summary>
public sealed class PlanBoundException : ArgumentException
{
    /// <summary>Without a message.</summary>
    public PlanBoundException()
    {
    }

    /// <param name="message">What was asked for, and the bound.</param>
    public PlanBoundException(string message) : base(message)
    {
    }

    /// <param name="message">What was asked for, and the bound.</param>
    /// <param name="inner">What led to it.</param>
    public PlanBoundException(string message, Exception inner) : base(message, inner)
    {
    }
}
