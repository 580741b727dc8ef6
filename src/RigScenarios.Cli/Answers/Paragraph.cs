using System.Globalization;
using System.Text;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Text broken into lines as wide as the console, the further lines under the words of the first; no line ends in
/// blanks, so that it can be pasted.</summary>
internal static class Paragraph
{
    /// <summary>Writes a paragraph.</summary>
    /// <param name="console">The console.</param>
    /// <param name="text">The text.</param>
    /// <param name="lead">What stands before its first line, such as two blanks and a dash.</param>
    /// <param name="bold">Whether it stands out.</param>
    public static void Write(IAnsiConsole console, string text, string lead = "", bool bold = false)
    {
        foreach (var line in Lines(text, console.Profile.Width, lead))
            console.MarkupLine(bold ? $"[bold]{Markup.Escape(line)}[/]" : Markup.Escape(line));
    }

    /// <summary>A heading with a free line above it.</summary>
    /// <param name="console">The console.</param>
    /// <param name="text">The heading.</param>
    public static void Heading(IAnsiConsole console, string text)
    {
        console.WriteLine();
        Write(console, text, bold: true);
    }

    /// <summary>A heading with lines below it, each with a dash; nothing where there is no line.</summary>
    /// <param name="console">The console.</param>
    /// <param name="heading">The heading.</param>
    /// <param name="lines">The lines.</param>
    public static void List(IAnsiConsole console, string heading, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
            return;
        Heading(console, heading);
        foreach (var line in lines)
            Write(console, line, "  - ");
    }

    /// <summary>The lines of a paragraph.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The number of columns.</param>
    /// <param name="lead">What stands before the first line; the others are moved in by as much.</param>
    public static IReadOnlyList<string> Lines(string text, int width, string lead = "")
    {
        var margin = new string(' ', Columns(lead));
        var (lines, line, isEmpty) = (new List<string>(), new StringBuilder(lead), true);
        foreach (var word in text.Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            // One column stays free: some terminals break a line that fills the last one.
            if (!isEmpty && Columns(line.ToString()) + 1 + Columns(word) >= width)
            {
                lines.Add(line.ToString());
                (line, isEmpty) = (new StringBuilder(margin), true);
            }
            line.Append(isEmpty ? "" : " ").Append(word);
            isEmpty = false;
        }
        lines.Add(line.ToString().TrimEnd());
        return lines;
    }

    private static int Columns(string text) => new StringInfo(text).LengthInTextElements;
}
