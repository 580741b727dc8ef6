namespace RigScenarios.Sweeps.Sampling;

/// <summary>A spread or a plan that means nothing; the message says why in words that a person at the keyboard reads, without the
/// name of a parameter.</summary>
public sealed class UnsoundPlanException : ArgumentException
{
    /// <summary>An exception without a reason.</summary>
    public UnsoundPlanException()
        : this("The spread or the plan is not sound.")
    {
    }

    /// <summary>An exception with its reason.</summary>
    /// <param name="message">What is wrong, and what is accepted.</param>
    public UnsoundPlanException(string message)
        : base(message)
    {
    }

    /// <summary>An exception that another one caused.</summary>
    /// <param name="message">What is wrong, and what is accepted.</param>
    /// <param name="innerException">The cause.</param>
    public UnsoundPlanException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
