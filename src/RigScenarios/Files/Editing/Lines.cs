namespace RigScenarios.Files.Editing;

/// <summary>The lines of a text, with every line break that YAML 1.1 knows (section 4.2 of that standard; the parser keeps to
/// it).</summary>
internal static class Lines
{
    public static bool IsBreak(char character) => character is '\n' or '\r' or '\u0085' or '\u2028' or '\u2029';

    /// <summary>Where the line begins in which a place stands.</summary>
    public static int Start(string text, int position)
    {
        while (position > 0 && !IsBreak(text[position - 1]))
            position--;
        return position;
    }

    /// <summary>Where the line of a place ends, before its break.</summary>
    public static int ContentEnd(string text, int position)
    {
        while (position < text.Length && !IsBreak(text[position]))
            position++;
        return position;
    }

    /// <summary>Where the next line begins.</summary>
    public static int Next(string text, int position)
    {
        var end = ContentEnd(text, position);
        if (end + 1 < text.Length && text[end] == '\r' && text[end + 1] == '\n')
            return end + 2;
        return Math.Min(end + 1, text.Length);
    }

    /// <summary>How many spaces stand at the start of the line that begins here.</summary>
    public static int Indent(string text, int lineStart)
    {
        var position = lineStart;
        while (position < text.Length && text[position] == ' ')
            position++;
        return position - lineStart;
    }

    /// <summary>Whether the line that begins here has nothing but a comment, or nothing at all.</summary>
    public static bool IsBlankOrComment(string text, int lineStart, out bool isComment)
    {
        var position = lineStart;
        while (position < text.Length && text[position] is ' ' or '\t')
            position++;
        isComment = position < text.Length && text[position] == '#';
        return isComment || position == text.Length || IsBreak(text[position]);
    }

    /// <summary>The line break that the text uses.</summary>
    public static string BreakOf(string text) =>
        text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : text.Contains('\n', StringComparison.Ordinal)
            || !text.Contains('\r', StringComparison.Ordinal) ? "\n" : "\r";
}
