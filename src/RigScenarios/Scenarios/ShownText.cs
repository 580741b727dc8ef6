using System.Text;

namespace RigScenarios.Scenarios;

/// <summary>
/// Text that came from a file or an argument, on its way to a terminal. Characters that move the cursor, end a line or turn the
/// reading order around would let a file say something that it doesn't hold, so they are shown as what they are.
/// </summary>
public static class ShownText
{
    /// <summary>What stands between a line's text and its end in some writing systems, and what turns the order of reading
    /// around.</summary>
    private const string LinesAndOrders = "\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";

    /// <summary>The text with every such character written out: <c>\n</c>, <c>\t</c>, or <c>\u001B</c> with its number.</summary>
    /// <param name="text">Any text.</param>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var wrong = FirstUnseen(text);
        if (wrong < 0)
            return text;
        var shown = new StringBuilder(text, 0, wrong, text.Length + 40);
        for (var at = wrong; at < text.Length; at++)
        {
            if (IsUnseen(text, at))
                shown.Append(Escaped(text[at]));
            else
                shown.Append(text[at]);
        }
        return shown.ToString();
    }

    /// <summary>The place of the first character that has no business in a line of text; below 0 where there is none.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="allowed">Characters that are no fault here, such as line breaks.</param>
    public static int FirstUnseen(string text, string allowed = "")
    {
        ArgumentNullException.ThrowIfNull(text);
        for (var at = 0; at < text.Length; at++)
        {
            if (IsUnseen(text, at) && !allowed.Contains(text[at], StringComparison.Ordinal))
                return at;
        }
        return -1;
    }

    private static bool IsUnseen(string text, int at)
    {
        var character = text[at];
        if (character < ' ' || char.IsControl(character))
            return true;
        if (character < '\u2028')
            return false;
        // Half of a pair is no character, and no file can hold it.
        return char.IsSurrogate(character) ? !IsPaired(text, at)
            : character >= '\uFFFE' || LinesAndOrders.Contains(character, StringComparison.Ordinal);
    }

    private static bool IsPaired(string text, int at) => char.IsHighSurrogate(text[at])
        ? at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])
        : at > 0 && char.IsHighSurrogate(text[at - 1]);

    private static string Escaped(char character) => character switch
    {
        '\n' => @"\n",
        '\r' => @"\r",
        '\t' => @"\t",
        _ => $@"\u{(int)character:X4}",
    };
}
