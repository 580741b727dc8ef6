namespace RigScenarios.Batteries;

/// <summary>
/// Looks on while a discharge runs. It is told of both ends of each stretch of the demand and of many moments between, never of one in which the run
/// ends right after a step.
/// </summary>
internal abstract class DischargeWitness
{
    /// <summary>Tells of one moment; times don't fall.</summary>
    /// <param name="seconds">From the start of the run.</param>
    /// <param name="volts">At the terminals.</param>
    /// <param name="draw">The draw that holds.</param>
    public abstract void See(double seconds, double volts, in TerminalDraw draw);
}
