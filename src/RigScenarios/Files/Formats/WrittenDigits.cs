using System.Globalization;
using System.Text;

namespace RigScenarios.Files.Formats;

/// <summary>
/// Numbers in the characters that people write them with. The one rule: a digit of any script means its value, and a full-width
/// letter, a dash before a number or a sign made for a unit means the usual one. So <c>１ °C</c> is 1 °C and <c>٥ kg</c> is 5 kg.
/// </summary>
public static class WrittenDigits
{
    private const char FullWidthFirst = '\uFF01';
    private const char FullWidthLast = '\uFF5E';

    /// <summary>The text with Latin digits, plain signs and plain spaces, without spaces at its ends.</summary>
    /// <param name="text">A number, a quantity, a time or a date as somebody wrote it.</param>
    public static string Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.All(char.IsAscii))
            return text.Trim();
        var plain = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber)
                plain.Append((int)Rune.GetNumericValue(rune));
            else if (rune.IsBmp)
                plain.Append(Usual((char)rune.Value));
            else
                plain.Append(rune);
        }
        return plain.ToString().Trim();
    }

    private static string Usual(char character) => character switch
    {
        >= FullWidthFirst and <= FullWidthLast => ((char)(character - FullWidthFirst + '!')).ToString(),
        // Hyphens and dashes that word processors put where somebody typed a minus.
        '−' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\uFE63' => "-",
        // Arabic signs for the decimal point and the percent.
        '\u066B' => ".",
        '\u066A' => "%",
        '℃' => "°C",
        '℉' => "°F",
        'º' or '˚' => "°",
        '\u2126' => "Ω",
        'μ' => "µ",
        _ when char.IsWhiteSpace(character) && character is not ('\u2028' or '\u2029') => " ",
        _ => character.ToString(),
    };
}
