using Microsoft.AspNetCore.Http;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Page.Requests;

namespace RigScenarios.Page.TakeAlong;

/// <summary>The sheet to take along as a file to keep.</summary>
internal static class SheetReply
{
    private static readonly Dictionary<string, SheetKind> Kinds = new(StringComparer.Ordinal)
    {
        ["day"] = SheetKind.Day, ["blanks"] = SheetKind.Exercise, ["solution"] = SheetKind.Solution,
        ["build"] = SheetKind.Build, ["shopping"] = SheetKind.Shopping,
    };

    /// <summary>Which sheet a word means.</summary>
    /// <param name="word">The word; null for the sheet of the day.</param>
    /// <exception cref="ProblemException">There is no such sheet.</exception>
    public static SheetKind Kind(string? word) => Kinds.TryGetValue(word ?? "day", out var kind) ? kind
        : throw new ProblemException(StatusCodes.Status400BadRequest,
            [new Problem("There is no such sheet.", "sheet", string.Join(", ", Kinds.Keys))]);

    /// <summary>Writes the sheet of an answer.</summary>
    /// <param name="context">The request.</param>
    /// <param name="answer">The answer; null where there is none yet.</param>
    /// <param name="kind">Which sheet.</param>
    /// <param name="whole">Whether nothing is left out.</param>
    /// <exception cref="ProblemException">There is no answer.</exception>
    public static async Task WriteAsync(HttpContext context, RigAnswer? answer, SheetKind kind, bool whole)
    {
        if (answer is null)
            throw new ProblemException(StatusCodes.Status400BadRequest,
                "There is no answer yet, so there is nothing to take along.");
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.ContentDisposition = "attachment; filename=\"take-along.html\"";
        await context.Response.WriteAsync(SheetPage.Of(TakeAlongSheets.Of(answer, kind), whole), context.RequestAborted);
    }
}
