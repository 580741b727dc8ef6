using YamlDotNet.Core;

namespace RigScenarios.Files.Editing;

/// <summary>What stands between the values of a file: spaces, line breaks, signs and comments.</summary>
internal static class Gaps
{
    /// <summary>The first place from here that is no space, line break or comment, and none of the signs.</summary>
    public static int Skip(string text, int position, string signs)
    {
        while (position < text.Length)
        {
            if (text[position] == '#')
                position = Lines.ContentEnd(text, position);
            else if (text[position] is ' ' or '\t' || Lines.IsBreak(text[position])
                || signs.Contains(text[position], StringComparison.Ordinal))
                position++;
            else
                break;
        }
        return position;
    }

    /// <summary>All comments, each from its # to the end of its line: outside of values a # begins one.</summary>
    public static IReadOnlyList<Comment> Comments(string text, PlacedNode root)
    {
        var comments = new List<Comment>();
        var position = 0;
        foreach (var value in Texts(root))
        {
            Find(text, position, value.Start, comments);
            position = value.End;
            // The first line of such a value is no part of what it says.
            if (value.Style is ScalarStyle.Literal or ScalarStyle.Folded)
                Find(text, value.Start, Lines.ContentEnd(text, value.Start), comments);
        }
        Find(text, position, text.Length, comments);
        return comments;
    }

    private static IEnumerable<PlacedText> Texts(PlacedNode node)
    {
        if (node is PlacedText text)
        {
            yield return text;
            yield break;
        }
        foreach (var entry in ((PlacedGroup)node).Entries)
        {
            if (entry.KeyEnd > entry.KeyStart)
                yield return new PlacedText(entry.KeyStart, entry.KeyEnd, entry.Key, ScalarStyle.Any);
            foreach (var inner in Texts(entry.Value))
                yield return inner;
        }
    }

    private static void Find(string text, int from, int to, List<Comment> comments)
    {
        for (var position = from; position < to; position++)
        {
            if (text[position] != '#')
                continue;
            var end = Math.Min(Lines.ContentEnd(text, position), to);
            comments.Add(new Comment(position, text[position..end].TrimEnd()));
            position = end;
        }
    }
}

/// <summary>A comment with its sign.</summary>
internal readonly record struct Comment(int Start, string Text);
