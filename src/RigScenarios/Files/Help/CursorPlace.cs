namespace RigScenarios.Files.Help;

/// <summary>A place in a text that may be half typed, as the names one goes through to it.</summary>
/// <param name="Path">The names; items of a list count from 1.</param>
/// <param name="Word">A word that stands there without a colon: half a name, or a value on a line of its own.</param>
internal sealed record CursorPlace(IReadOnlyList<string> Path, string Word)
{
    /// <summary>Where a cursor stands. Lines and columns count from 1; beyond the text the nearest place counts.</summary>
    public static CursorPlace Find(string text, int line, int column)
    {
        var scan = new LooseScan(text, Math.Max(line, 1), Math.Max(column, 1) - 1, null);
        scan.Run();
        return scan.Found ?? new CursorPlace([], "");
    }

    /// <summary>The names that stand directly in a group.</summary>
    public static IReadOnlySet<string> KeysIn(string text, IReadOnlyList<string> group)
    {
        var scan = new LooseScan(text, 0, 0, group);
        scan.Run();
        return scan.Keys;
    }
}
