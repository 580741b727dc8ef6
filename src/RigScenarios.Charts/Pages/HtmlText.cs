using System.Text;

namespace RigScenarios.Charts.Pages;

/// <summary>Text that may stand anywhere in an HTML page, also within the quotes of an attribute.</summary>
public static class HtmlText
{
    /// <summary>The text with the five characters that HTML gives a meaning written as references; all else stays readable.</summary>
    public static string Escape(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var result = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => result.Append("&amp;"),
                '<' => result.Append("&lt;"),
                '>' => result.Append("&gt;"),
                '"' => result.Append("&quot;"),
                '\'' => result.Append("&#39;"),
                _ => result.Append(c),
            };
        }

        return result.ToString();
    }
}
