namespace RigScenarios.Charts.Style;

/// <summary>Text for plotly.js, which takes a small part of HTML for markup: what people wrote must stay text.</summary>
internal static class PlotlyText
{
    /// <summary>The text with its angle brackets and ampersands made harmless.</summary>
    public static string Escape(string text) => text.Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;");

    /// <summary>How many characters of an escaped text are seen.</summary>
    public static int Length(string escaped) => escaped.Replace("&lt;", "<").Replace("&gt;", ">").Replace("&amp;", "&").Length;

    /// <summary>The text in lines of at most so many characters, broken between words and joined for plotly.js;
    /// escaped.</summary>
    public static string Wrap(string text, int characters)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > characters)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        lines.Add(line);
        return string.Join("<br>", lines.Select(Escape));
    }
}
