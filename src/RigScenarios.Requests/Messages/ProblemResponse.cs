using RigScenarios.Scenarios;

namespace RigScenarios.Requests.Messages;

/// <summary>What a reader is told of an exception: plain words, without a stack trace and without the name of a type.</summary>
/// <param name="Status">A <see cref="ReplyStatus"/>.</param>
/// <param name="Problems">The problems, at least one.</param>
internal sealed record ProblemResponse(int Status, IReadOnlyList<Problem> Problems)
{
    /// <param name="exception">What was thrown.</param>
    /// <param name="during">What was being done, for the report.</param>
    /// <param name="report">Told of what the reader isn't to blame for.</param>
    public static ProblemResponse Of(Exception exception, string during, FaultReport report)
    {
        switch (exception)
        {
            case ProblemException refused:
                return new ProblemResponse(refused.Status, refused.Problems);
            case ScenarioProblemsException scenario:
                return new ProblemResponse(ReplyStatus.BadRequest, Problem.Of(scenario.Problems));
            case IOException or UnauthorizedAccessException:
                report.Tell?.Invoke($"A file could not be read or written: {exception.Message}");
                return new ProblemResponse(ReplyStatus.Fault, [new Problem("The file can't be read or written. Is the disk full, "
                    + $"or the folder write-protected? {report.Place} says more.")]);
            default:
                report.Tell?.Invoke($"Something went wrong inside RigScenarios ({during}): {exception.Message}");
                return new ProblemResponse(ReplyStatus.Fault, [new Problem("Something went wrong inside RigScenarios. Your files "
                    + $"are as they were. {report.Place} says more; please report it.")]);
        }
    }
}
