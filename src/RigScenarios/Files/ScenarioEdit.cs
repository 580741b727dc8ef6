using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;


/// <summary>
/// Carries the difference of two scenarios into the text of a file, and proves the result: it must read back to the wanted
/// scenario and hold every comment. Where a small change comes out wrong the smallest group around it is written anew.
/// </summary>
internal static class ScenarioEdit
{
    /// <summary>As deep as values can be nested, and some: more steps outwards there can't be.</summary>
    private const int MostAttempts = 40;

    public static string Apply(string text, Scenario before, Scenario after)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        var was = (MapNode)ScenarioFormat.Whole.Write(before);
        var will = (MapNode)ScenarioFormat.Whole.Write(after);
        Demand(will);
        if (!TreeDifference.Same(was, Read(text)))
            throw new ArgumentException("The text doesn't say the scenario that is given as the one before.", nameof(before));
        if (TreeDifference.Same(was, will))
            return text;
        var mark = text.StartsWith(TextFile.ByteOrderMark) ? text[..1] : "";
        var plain = text[mark.Length..];
        var lineBreak = Lines.IsBreak(plain[^1]) ? "" : Lines.BreakOf(plain);
        return mark + Changed(plain, lineBreak, was, will);
    }

    private static string Changed(string text, string lineBreak, MapNode was, MapNode will)
    {
        var whole = text + lineBreak;
        var root = PlacedTree.Read(whole);
        var wanted = Gaps.Comments(whole, root).Select(comment => comment.Text).ToList();
        var anew = new HashSet<string>(StringComparer.Ordinal);
        for (var attempt = 0; attempt < MostAttempts; attempt++)
        {
            string path;
            try
            {
                var result = new KeptText(whole, root, anew).Root(root, was, will);
                if (lineBreak.Length > 0 && result.EndsWith(lineBreak, StringComparison.Ordinal))
                    result = result[..^lineBreak.Length];
                if (Fault(result, was, will, wanted) is not { } fault)
                    return result;
                path = fault;
            }
            catch (CannotKeepException refused)
            {
                path = refused.Path;
            }
            while (path.Length > 0 && !anew.Add(path))
                path = path.LastIndexOf('.') is var dot and > 0 ? path[..dot] : "";
            if (path.Length == 0)
                break;
        }
        throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "",
            "This file is written in a way that the change can't be put into without losing a comment or changing something "
                + "else. Nothing was changed.",
            "the change made by hand in the file's text")]);
    }

    /// <summary>The smallest value that came out wrong, empty for the whole file; null if all is right.</summary>
    private static string? Fault(string result, MapNode was, MapNode will, List<string> wanted)
    {
        var log = new ReadLog("");
        if (TextFile.Take(result, log) is null || !FileFormat.TryReadText(result, FileFormat.Scenario, ScenarioFormat.Whole,
            log, out var read))
            return TreeDifference.SmallestAround(was, will);
        var says = ScenarioFormat.Whole.Write(read);
        if (!TreeDifference.Same(says, will))
            return TreeDifference.SmallestAround(says, will);
        return HoldsAll(result, wanted) ? null : TreeDifference.SmallestAround(was, will);
    }

    private static bool HoldsAll(string result, List<string> wanted)
    {
        var found = Gaps.Comments(result, PlacedTree.Read(result)).GroupBy(comment => comment.Text)
            .ToDictionary(group => group.Key, group => group.Count());
        return wanted.GroupBy(comment => comment).All(group => found.GetValueOrDefault(group.Key) >= group.Count());
    }

    private static FileNode Read(string text)
    {
        var log = new ReadLog("");
        if (TextFile.Take(text, log) is { } taken
            && FileFormat.TryReadText(taken, FileFormat.Scenario, ScenarioFormat.Whole, log, out var scenario))
            return ScenarioFormat.Whole.Write(scenario);
        throw new ScenarioProblemsException(log.Problems);
    }

    /// <summary>What is to be written must be readable again: a title of no letters would come back as an error.</summary>
    private static void Demand(MapNode will)
    {
        var log = new ReadLog("");
        if (!ScenarioFormat.Whole.TryRead(will, "", log, out _) || log.HasErrors)
            throw new ScenarioProblemsException(log.Problems);
    }
}
