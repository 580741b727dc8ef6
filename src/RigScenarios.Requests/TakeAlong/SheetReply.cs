using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.TakeAlong;

/// <summary>The sheet to take along as a file to keep.</summary>
internal static class SheetReply
{
    /// <summary>What the file is called.</summary>
    public const string FileName = "take-along.html";

    private static readonly Dictionary<string, SheetKind> Kinds = new(StringComparer.Ordinal)
    {
        ["day"] = SheetKind.Day, ["blanks"] = SheetKind.Exercise, ["solution"] = SheetKind.Solution,
        ["build"] = SheetKind.Build, ["shopping"] = SheetKind.Shopping,
    };

    /// <summary>Which sheet a word means.</summary>
    /// <param name="word">The word; null for the sheet of the day.</param>
    /// <exception cref="ProblemException">There is no such sheet.</exception>
    public static SheetKind Kind(string? word) => Kinds.TryGetValue(word ?? "day", out var kind) ? kind
        : throw new ProblemException(ReplyStatus.BadRequest,
            [new Problem("There is no such sheet.", "sheet", string.Join(", ", Kinds.Keys))]);

    /// <summary>The sheet of an answer, a page of its own.</summary>
    /// <param name="answer">The answer; null where there is none yet.</param>
    /// <param name="kind">Which sheet.</param>
    /// <param name="whole">Whether nothing is left out.</param>
    /// <exception cref="ProblemException">There is no answer.</exception>
    public static string Page(RigAnswer? answer, SheetKind kind, bool whole) => answer is null
        ? throw new ProblemException(ReplyStatus.BadRequest, "There is no answer yet, so there is nothing to take along.")
        : SheetPage.Of(TakeAlongSheets.Of(answer, kind), whole);
}
