using YamlDotNet.Core;

namespace RigScenarios.Files.Editing;

/// <summary>A value of a file with the characters that it takes in the text: from <c>Start</c> up to, without,
/// <c>End</c>.</summary>
internal abstract record PlacedNode(int Start, int End);

/// <summary>A plain value. The end of one over several lines is before its last line break.</summary>
internal sealed record PlacedText(int Start, int End, string Text, ScalarStyle Style) : PlacedNode(Start, End);

/// <summary>A map or list. One over several lines begins at its first name or dash and ends with its last value.</summary>
/// <param name="Start">Its first character.</param>
/// <param name="End">After its last character.</param>
/// <param name="InBrackets">Whether it stands in braces or brackets.</param>
/// <param name="IsList">Whether it is a list.</param>
/// <param name="Entries">What stands in it, in the order of the file.</param>
internal sealed record PlacedGroup(int Start, int End, bool InBrackets, bool IsList, IReadOnlyList<PlacedEntry> Entries)
    : PlacedNode(Start, End);

/// <summary>A name with its value, or a value of a list, whose name is empty.</summary>
/// <param name="Key">The name.</param>
/// <param name="Start">Where the entry begins: at its name, its question mark or its dash.</param>
/// <param name="KeyStart">Where the name begins.</param>
/// <param name="KeyEnd">After the name.</param>
/// <param name="MarkEnd">After the colon or the dash.</param>
/// <param name="Value">The value.</param>
internal sealed record PlacedEntry(string Key, int Start, int KeyStart, int KeyEnd, int MarkEnd, PlacedNode Value);
