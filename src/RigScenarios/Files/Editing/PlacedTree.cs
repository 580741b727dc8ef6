using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace RigScenarios.Files.Editing;

/// <summary>
/// Reads text a second time, for the place of each value. The text has been read by <see cref="YamlTree"/> before, which refuses
/// what is not plain, so nothing is checked here.
/// </summary>
internal static class PlacedTree
{
    public static PlacedGroup Read(string text)
    {
        var parser = new Parser(new StringReader(text));
        while (parser.Current is not MappingStart)
            parser.MoveNext();
        return (PlacedGroup)Node(parser, text);
    }

    private static PlacedNode Node(Parser parser, string text)
    {
        var start = parser.Current!;
        switch (start)
        {
            case Scalar scalar:
                parser.MoveNext();
                return new PlacedText(Index(scalar.Start), EndOf(scalar, text), scalar.Value, scalar.Style);
            case SequenceStart list:
                return Group(parser, text, Index(start.Start), list.Style == SequenceStyle.Flow, isList: true);
            default:
                return Group(parser, text, Index(start.Start), ((MappingStart)start).Style == MappingStyle.Flow, isList: false);
        }
    }

    private static PlacedGroup Group(Parser parser, string text, int start, bool inBrackets, bool isList)
    {
        var entries = new List<PlacedEntry>();
        // An opening bracket has been passed; a dash or name has not.
        var opened = inBrackets && text[start] is '{' or '[';
        var position = opened ? start + 1 : start;
        parser.MoveNext();
        while (parser.Current is not (MappingEnd or SequenceEnd))
        {
            var first = Gaps.Skip(text, position, inBrackets ? "," : "");
            var entry = isList ? Item(parser, text, first, inBrackets) : Entry(parser, text, first);
            entries.Add(entry);
            position = entry.Value.End;
        }
        var end = opened ? Math.Min(Index(parser.Current.Start) + 1, text.Length) : entries.Count > 0
            ? entries[^1].Value.End : start;
        parser.MoveNext();
        return new PlacedGroup(start, end, inBrackets, isList, entries);
    }

    private static PlacedEntry Item(Parser parser, string text, int first, bool inBrackets)
    {
        var value = Node(parser, text);
        return new PlacedEntry("", first, first, first, inBrackets ? first : first + 1, value);
    }

    private static PlacedEntry Entry(Parser parser, string text, int first)
    {
        var key = (PlacedText)Node(parser, text);
        var colon = Gaps.Skip(text, key.End, "");
        return new PlacedEntry(key.Text, first, key.Start, key.End, Math.Min(colon + 1, text.Length), Node(parser, text));
    }

    private static int Index(Mark mark) => (int)mark.Index;

    /// <summary>The parser counts the blank lines below a text in <c>|</c> or <c>&gt;</c> style as part of it; only with <c>+</c>
    /// they are.</summary>
    private static int EndOf(Scalar scalar, string text)
    {
        var start = Index(scalar.Start);
        var end = Math.Min(Index(scalar.End), text.Length);
        if (scalar.Style is not (ScalarStyle.Literal or ScalarStyle.Folded))
            return end;
        var keepsBlankLines = text[start..Lines.ContentEnd(text, start)].Split('#')[0].Contains('+', StringComparison.Ordinal);
        while (end > start && Lines.IsBreak(text[end - 1]))
        {
            end -= end - 2 >= start && text[end - 1] == '\n' && text[end - 2] == '\r' ? 2 : 1;
            var line = Lines.Start(text, end);
            if (keepsBlankLines || line <= start || !string.IsNullOrWhiteSpace(text[line..end]))
                break;
            end = line;
        }
        return end;
    }
}
