using System.Buffers;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>
/// Finds a brace or bracket without its other half in a text that can't be read as YAML: the parser stumbles much later, and
/// blames what stands there.
/// </summary>
internal static class YamlBrackets
{
    private static readonly SearchValues<char> NotInNames = SearchValues.Create("{}[],\"'# ");

    /// <summary>Where one stands alone, with what is wrong; null if all have their other half.</summary>
    /// <param name="text">The file.</param>
    /// <param name="stumbled">The line on which the parser stumbled: outside of groups a closing brace is part of a text, and
    /// only wrong where nothing else is.</param>
    public static (TextPlace At, string Problem)? Find(string text, int stumbled = 0)
    {
        var open = new Stack<(char Bracket, TextPlace At, int Indent)>();
        var number = 0;
        var quote = '\0';
        foreach (var raw in text.Split('\n'))
        {
            number++;
            var line = raw.TrimEnd('\r');
            var indent = line.Length - line.TrimStart(' ').Length;
            // A field at the same depth as the line with the brace, or further out: the group was meant to be over.
            if (quote == '\0' && open.TryPeek(out var last) && indent <= open.Last().Indent && BeginsField(line.AsSpan(indent)))
                return (last.At, NotClosed(last.Bracket, number));
            var before = '\0';
            for (var column = indent; column < line.Length; column++)
            {
                var character = line[column];
                if (quote != '\0')
                {
                    if (quote == '"' && character == '\\')
                        column++;
                    else if (character == quote)
                        quote = '\0';
                    before = character;
                    continue;
                }
                // A mark counts where a value begins; within a group a brace counts everywhere.
                var begins = before is '\0' or ':' or ',' or '[' or '{' or '-';
                if (character == '#' && (column == 0 || line[column - 1] == ' '))
                    break;
                if (character is '"' or '\'' && begins)
                    quote = character;
                else if (character is '{' or '[' && (begins || open.Count > 0))
                    open.Push((character, new TextPlace(number, column + 1), indent));
                else if (character is '}' or ']' && (open.Count > 0 || number == stumbled)
                    && Closes(character, open) is { } wrong)
                    return (new TextPlace(number, column + 1), wrong);
                if (character != ' ')
                    before = character;
            }
        }
        return open.TryPeek(out var never) ? (never.At, NotClosed(never.Bracket, null)) : null;
    }

    private static string? Closes(char closing, Stack<(char Bracket, TextPlace At, int Indent)> open)
    {
        var wanted = closing == '}' ? '{' : '[';
        if (!open.TryPop(out var last))
            return $"A \"{closing}\" stands here without the \"{wanted}\" that it closes.";
        return last.Bracket == wanted ? null
            : $"A \"{closing}\" stands here, but what is open is the \"{last.Bracket}\" of line {last.At.Line}, "
                + $"column {last.At.Column}.";
    }

    private static string NotClosed(char bracket, int? line) =>
        $"The \"{bracket}\" that opens here is not closed: a \"{(bracket == '{' ? '}' : ']')}\" is missing"
        + (line is { } next ? $" before line {next}." : ".");

    private static bool BeginsField(ReadOnlySpan<char> text)
    {
        var colon = text.IndexOf(':');
        return colon > 0 && (colon + 1 == text.Length || text[colon + 1] == ' ')
            && text[..colon].IndexOfAny(NotInNames) < 0;
    }
}
