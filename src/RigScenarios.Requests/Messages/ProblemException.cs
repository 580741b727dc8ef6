namespace RigScenarios.Requests.Messages;

/// <summary>A request that isn't done, and why, in words for the person at the page.</summary>
internal sealed class ProblemException(int status, IReadOnlyList<Problem> problems) : Exception(problems[0].Text)
{
    public ProblemException(int status, string text)
        : this(status, [new Problem(text)])
    {
    }

    /// <summary>A <see cref="ReplyStatus"/>.</summary>
    public int Status { get; } = status;

    /// <summary>The problems, at least one.</summary>
    public IReadOnlyList<Problem> Problems { get; } = problems;
}
