using Microsoft.AspNetCore.Http;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Requests;

/// <summary>What a reader is told of an exception of the server's: plain words, without a stack trace and without the name of a
/// type.</summary>
internal static class ServerProblems
{
    /// <param name="exception">What was thrown.</param>
    /// <param name="during">What was being done, for the report.</param>
    /// <param name="report">Told of what the reader isn't to blame for.</param>
    public static ProblemResponse Of(Exception exception, string during, FaultReport report) => exception switch
    {
        NotebookInputException notebook => new ProblemResponse(StatusCodes.Status400BadRequest,
            [.. notebook.Problems.Select(text => new Problem(text))]),
        BadHttpRequestException request => Of(request.StatusCode),
        _ => ProblemResponse.Of(exception, during, report),
    };

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
