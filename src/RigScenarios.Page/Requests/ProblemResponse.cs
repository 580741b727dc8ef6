using Microsoft.AspNetCore.Http;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Scenarios;

namespace RigScenarios.Page.Requests;

/// <summary>What a reader is told of an exception: plain words, without a stack trace and without the name of a type.</summary>
/// <param name="Status">The HTTP status.</param>
/// <param name="Problems">The problems, at least one.</param>
internal sealed record ProblemResponse(int Status, IReadOnlyList<Problem> Problems)
{
    private const string FileTrouble =
        "The file can't be read or written. Is the disk full, or the folder write-protected? The window where the program "
            + "runs says more.";

    private const string Bug =
        "Something went wrong inside RigScenarios. Your files are as they were. The window where the program runs says more; "
            + "please report it.";

    /// <param name="exception">What was thrown.</param>
    /// <param name="during">What was being done, for the report.</param>
    /// <param name="report">Told of what the reader isn't to blame for.</param>
    public static ProblemResponse Of(Exception exception, string during, Action<string>? report)
    {
        switch (exception)
        {
            case ProblemException refused:
                return new ProblemResponse(refused.Status, refused.Problems);
            case ScenarioProblemsException scenario:
                return new ProblemResponse(StatusCodes.Status400BadRequest, Problem.Of(scenario.Problems));
            case NotebookInputException notebook:
                return new ProblemResponse(StatusCodes.Status400BadRequest,
                    [.. notebook.Problems.Select(text => new Problem(text))]);
            case BadHttpRequestException request:
                return Of(request.StatusCode);
            case IOException or UnauthorizedAccessException:
                report?.Invoke($"A file could not be read or written: {exception.Message}");
                return new ProblemResponse(StatusCodes.Status500InternalServerError, [new Problem(FileTrouble)]);
            default:
                report?.Invoke($"Something went wrong inside RigScenarios ({during}): {exception.Message}");
                return new ProblemResponse(StatusCodes.Status500InternalServerError, [new Problem(Bug)]);
        }
    }

    /// <summary>The words for a status that nothing else explains.</summary>
    public static ProblemResponse Of(int status) => new(status, [new Problem(Words(status))]);

    private static string Words(int status) => status switch
    {
        StatusCodes.Status404NotFound => "There is no such page.",
        StatusCodes.Status405MethodNotAllowed => "This address can't be asked that way.",
        StatusCodes.Status413PayloadTooLarge => "This is more than the server takes at once.",
        StatusCodes.Status408RequestTimeout => "The request took too long to arrive.",
        _ => "The request isn't one that this server understands.",
    };
}
