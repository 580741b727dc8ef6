namespace RigScenarios.Notebooks.Parameters;

/// <summary>What a person gave cannot be used: no such notebook, an unknown parameter, a value out of range. All problems at
/// once.</summary>
public sealed class NotebookInputException : Exception
{
    /// <param name="problems">One sentence or two for each problem, ready to be shown to a person; at least one.</param>
    public NotebookInputException(IReadOnlyList<string> problems)
        : base(string.Join(Environment.NewLine, problems)) => Problems = problems;

    /// <summary>The problems, each ready to be shown to a person.</summary>
    public IReadOnlyList<string> Problems { get; }
}
