using System.Text;

namespace RigScenarios.Scenarios;

/// <summary>Whether a problem stops the work.</summary>
public enum Severity
{
    /// <summary>The file can be used, but this is worth a look.</summary>
    Warning,

    /// <summary>The file can't be used as it is.</summary>
    Error,
}

/// <summary>One problem of a file: where it is, what was found, what is accepted, and the nearest valid name.</summary>
/// <param name="Severity">Whether it stops the work.</param>
/// <param name="File">The file, as the user named it; empty for a value given on the command line.</param>
/// <param name="At">The place in the file.</param>
/// <param name="Path">The field, such as <c>builds.tripod.battery.charge</c>; empty for the file as a whole.</param>
/// <param name="Problem">What is wrong, in one sentence.</param>
/// <param name="Accepted">What is accepted, with an example; null where the problem says it all.</param>
/// <param name="Nearest">The nearest valid name, if one is near.</param>
public sealed record Diagnostic(
    Severity Severity, string File, TextPlace At, string Path, string Problem, string? Accepted = null, string? Nearest = null)
{
    /// <summary>The problem as one readable line: <c>file:line:column: path: problem; accepted; nearest</c>. What a file or an
    /// argument put into it is shown as <see cref="ShownText"/> shows it.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        if (File.Length > 0)
            text.Append(File).Append(At == TextPlace.None ? ": " : $":{At.Line}:{At.Column}: ");
        text.Append(Severity == Severity.Error ? "error: " : "warning: ");
        if (Path.Length > 0)
            text.Append(Path).Append(": ");
        text.Append(Problem);
        if (Nearest is not null)
            text.Append(" Did you mean \"").Append(Nearest).Append("\"?");
        if (Accepted is not null)
            text.Append(" Accepted: ").Append(Accepted).Append('.');
        return ShownText.Of(text.ToString());
    }
}

/// <summary>Thrown where input can't be used: carries every problem that was found, not only the first.</summary>
public sealed class ScenarioProblemsException : Exception
{
    /// <summary>Wraps the problems.</summary>
    /// <param name="problems">At least one.</param>
    public ScenarioProblemsException(IReadOnlyList<Diagnostic> problems)
        : base(string.Join(Environment.NewLine, problems)) => Problems = problems;

    /// <summary>All problems found.</summary>
    public IReadOnlyList<Diagnostic> Problems { get; }
}
