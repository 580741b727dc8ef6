namespace RigScenarios.Files.Formats;

/// <summary>A number and its unit as nearly everybody writes them, parted without a pattern: a file holds hundreds of
/// them.</summary>
internal static class PlainQuantity
{
    /// <summary>Parts a text such as <c>-8.5 °C</c>. False where it is written in any other way, which may be right all the
    /// same.</summary>
    /// <param name="text">The text, in plain digits.</param>
    /// <param name="figure">The number.</param>
    /// <param name="unit">The unit; empty where there is none.</param>
    public static bool TrySplit(string text, out string figure, out string unit)
    {
        (figure, unit) = ("", "");
        var at = text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;
        var first = at;
        at = PastDigits(text, at);
        if (at == first)
            return false;
        if (at < text.Length && text[at] == '.')
            at = PastDigits(text, at + 1);
        var end = at;
        while (at < text.Length && text[at] == ' ')
            at++;
        // An e may begin an exponent.
        if (at < text.Length && (text[at] is 'e' or 'E' or ',' or '.' or '+' or '-' || char.IsWhiteSpace(text[at])
            || char.IsAsciiDigit(text[at]) || text.Contains('\n', StringComparison.Ordinal)))
            return false;
        (figure, unit) = (text[..end], text[at..].Trim());
        return true;
    }

    private static int PastDigits(string text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at;
    }
}
