using System.Text;

namespace RigScenarios.Files.Help;

/// <summary>Keeps track of the place inside of braces and brackets, over as many lines as they take.</summary>
internal sealed class BracketScan
{
    private readonly List<Level> levels = [];
    private char quote;
    private readonly StringBuilder token = new();
    // Kept beside the token: to look into it at each quote would take as long as the text is, squared.
    private bool hasWord;
    private bool quoted;

    /// <summary>Whether a bracket is open.</summary>
    public bool IsOpen { get; private set; }

    /// <summary>The indentation of the name that the outermost bracket belongs to; -1 for the whole file.</summary>
    public int OwnerIndent { get; private set; } = -1;

    public void Open(int ownerIndent)
    {
        GiveUp();
        IsOpen = true;
        OwnerIndent = ownerIndent;
    }

    public void GiveUp()
    {
        levels.Clear();
        quote = default;
        IsOpen = false;
        Next();
    }

    /// <summary>Reads a line, or the rest of one. Gives the place of the cursor if it is in it and inside of the
    /// brackets.</summary>
    /// <param name="line">The line.</param>
    /// <param name="from">Where to begin.</param>
    /// <param name="cursor">Before which character the cursor stands; -1 if it is not here.</param>
    /// <param name="note">Told of each name, before its group counts as left.</param>
    public CursorPlace? Line(string line, int from, int cursor, Action<string> note)
    {
        CursorPlace? found = null;
        // The cursor stands in a word that may turn out to be a name.
        var waits = false;
        for (var at = from; at <= line.Length && IsOpen; at++)
        {
            var sign = at < line.Length ? line[at] : '\n';
            if (at == cursor)
            {
                var inWord = levels.Count > 0 && levels[^1] is { IsList: false, Key: null }
                    && (token.Length > 0 || quote != default || sign is not (' ' or ',' or '}' or '\n'));
                if (inWord)
                    waits = true;
                else
                    found = new CursorPlace(Path(), "");
            }
            if (quote != default)
            {
                if (sign == quote)
                    quote = default;
                else if (sign != '\n')
                    Take(sign);
                continue;
            }
            if (waits && sign is ',' or '}' or ']' or '{' or '[' or '\n' or '#')
            {
                found ??= new CursorPlace(Path(), Word());
                waits = false;
            }
            if (sign == '#' && (at == 0 || line[at - 1] is ' ' or '\t' or ','))
            {
                // The cursor in a comment is still at this place of the group.
                return found ?? (cursor > at ? new CursorPlace(Path(), "") : null);
            }
            switch (sign)
            {
                case '"' or '\'' when !hasWord:
                    quote = sign;
                    quoted = true;
                    break;
                case '{' or '[':
                    levels.Add(new Level(sign == '['));
                    Next();
                    break;
                case '}' or ']':
                    if (levels.Count > 0)
                        levels.RemoveAt(levels.Count - 1);
                    IsOpen = levels.Count > 0;
                    Next();
                    break;
                case ',':
                    if (levels.Count > 0)
                        levels[^1].Following();
                    Next();
                    break;
                case ':' when levels.Count > 0 && levels[^1] is { IsList: false, Key: null }
                    && (quoted || at + 1 >= line.Length || line[at + 1] is ' ' or '\t' or ',' or '}' or '{' or '['):
                    var key = Word();
                    note(key);
                    levels[^1].Key = key;
                    Next();
                    if (waits)
                    {
                        found ??= new CursorPlace(Path(), "");
                        waits = false;
                    }
                    break;
                case not '\n':
                    Take(sign);
                    break;
            }
        }
        return found;
    }

    /// <summary>Whether the innermost group is that at the end of a path, of which the first steps are outside of the
    /// brackets.</summary>
    public bool IsAt(IReadOnlyList<string> path, int outside)
    {
        if (levels.Count - 1 != path.Count - outside)
            return false;
        for (var level = 0; level < levels.Count - 1; level++)
        {
            if (path[outside + level] != levels[level].Step)
                return false;
        }
        return true;
    }

    private string Word() => token.ToString().Trim();

    private void Take(char sign)
    {
        token.Append(sign);
        hasWord |= !char.IsWhiteSpace(sign);
    }

    private void Next()
    {
        token.Clear();
        hasWord = quoted = false;
    }

    private List<string> Path() => [.. levels.Select(level => level.Step).OfType<string>()];

    private sealed class Level(bool isList)
    {
        private int item = 1;

        public bool IsList { get; } = isList;

        public string? Key { get; set; }

        public string? Step => IsList ? $"{item}" : Key;

        public void Following()
        {
            Key = null;
            item++;
        }
    }
}
