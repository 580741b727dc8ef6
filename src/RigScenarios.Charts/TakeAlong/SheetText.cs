namespace RigScenarios.Charts.TakeAlong;

/// <summary>How much room text takes in the widest of the usual sans-serif fonts, so that a sheet fits in narrower ones
/// too.</summary>
internal static class SheetText
{
    /// <summary>Width of a text set in a size, pt.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">The size of the type, pt.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static double Width(string text, double size, bool bold = false)
    {
        var width = 0.0;
        foreach (var letter in text)
            width += Width(letter);
        return width * size * (bold ? 1.13 : 1);
    }

    /// <summary>The number of lines that a text takes in a width, broken between words.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The width, pt; above 0.</param>
    /// <param name="size">The size of the type, pt.</param>
    /// <param name="bold">Whether it is bold.</param>
    public static int Lines(string text, double width, double size, bool bold = false)
    {
        var (lines, used) = (1, 0.0);
        var space = Width(" ", size, bold);
        foreach (var word in text.Split(' '))
        {
            var length = Width(word, size, bold);
            if (used > 0 && used + space + length > width)
                (lines, used) = (lines + 1, length);
            else
                used += (used > 0 ? space : 0) + length;
            // A word that is wider than the line is broken.
            for (; used > width; used -= width)
                lines++;
        }
        return lines;
    }

    // Parts of the type's size, as a browser measures the widest of the usual sans-serif fonts; scripts whose letters are square
    // take the whole of it.
    private static double Width(char letter) => letter switch
    {
        'i' or 'j' or 'l' or '\'' => 0.28,
        'I' or 'J' => 0.3,
        ' ' or '.' or ',' or '·' => 0.32,
        'f' or 't' or 'r' or '-' or '(' or ')' or '/' or ':' or ';' or '!' => 0.4,
        'c' or 's' or 'z' or '°' or '*' or '?' => 0.55,
        'k' or 'v' or 'x' or 'y' or 'L' or 'F' => 0.59,
        'e' or 'a' or 'o' or 'E' or 'P' or 'T' or 'Y' => 0.62,
        'w' or 'M' or '±' or '×' or '+' => 0.85,
        'm' or 'W' or '%' => 0.97,
        'D' or 'G' or 'H' or 'N' or 'O' or 'Q' or 'Ω' => 0.78,
        >= 'A' and <= 'Z' => 0.73,
        >= '\u2E80' => 1,
        _ => 0.64,
    };
}
