namespace RigScenarios.Files.Help;

/// <summary>
/// Goes through a text line by line and keeps track of the group it is in, by indentation and brackets alone. Unlike a parser it
/// never gives up: a bracket or quote that isn't closed ends where a line further left begins with a name.
/// </summary>
internal sealed class LooseScan(string text, int cursorLine, int cursorColumn, IReadOnlyList<string>? group)
{
    private readonly List<Frame> frames = [];
    private readonly BracketScan brackets = new();
    private readonly HashSet<string> keys = new(StringComparer.Ordinal);

    /// <summary>The indentation of the name whose text goes on over deeper lines; null outside of such text.</summary>
    private int? textBelow;

    /// <summary>Where the cursor stands; null until its line was read.</summary>
    public CursorPlace? Found { get; private set; }

    /// <summary>The names seen directly in the group that was asked for.</summary>
    public IReadOnlySet<string> Keys => keys;

    public void Run()
    {
        var number = 0;
        var start = 0;
        while (Found is null)
        {
            number++;
            var end = start;
            while (end < text.Length && text[end] is not ('\n' or '\r'))
                end++;
            var isLast = end == text.Length;
            Line(text[start..end], number == cursorLine || (isLast && cursorLine > number));
            if (isLast)
                break;
            start = end + (text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? 2 : 1);
        }
    }

    private void Line(string line, bool hasCursor)
    {
        var indent = line.Length - line.TrimStart(' ').Length;
        var content = line.AsSpan(indent);
        var isBlank = content.IsWhiteSpace();
        var isComment = content.StartsWith("#");
        if (brackets.IsOpen && !isBlank && indent <= brackets.OwnerIndent && KeyLength(line, indent) > 0)
            brackets.GiveUp();
        if (brackets.IsOpen)
        {
            InBrackets(line, 0, hasCursor);
            return;
        }
        if (textBelow is { } owner && (isBlank || indent > owner))
        {
            if (hasCursor)
                Found = new CursorPlace(Path(isBlank ? Math.Max(cursorColumn, owner + 1) : int.MaxValue), "");
            return;
        }
        if (isBlank || isComment)
        {
            if (hasCursor)
                Found = new CursorPlace(Path(isComment ? indent : cursorColumn), "");
            return;
        }
        textBelow = null;
        Content(line, indent, hasCursor);
        if (hasCursor)
            Found ??= new CursorPlace(Path(int.MaxValue), "");
    }

    /// <summary>A line, or what stands behind a dash of it.</summary>
    private void Content(string line, int at, bool hasCursor)
    {
        while (at < line.Length && line[at] == '-' && (at + 1 == line.Length || line[at + 1] == ' '))
        {
            // A list may stand as deep as the name that it belongs to.
            PopTo(at, isItem: true);
            var number = frames.Count == 0 ? 1 : ++frames[^1].Items;
            frames.Add(new Frame(at, $"{number}", true));
            at++;
            while (at < line.Length && line[at] == ' ')
                at++;
        }
        if (at == line.Length || line[at] == '#')
            return;
        if (line.AsSpan(at).StartsWith("? "))
        {
            // The long way to write a name; its colon stands at the start of the next line.
            PopTo(at, isItem: false);
            frames.Add(new Frame(at, line[(at + 2)..].Split(" #")[0].Trim().Trim('"', '\''), false));
            return;
        }
        if (line.AsSpan(at).StartsWith(": "))
            at += 2;
        if (line[at] is '{' or '[')
        {
            PopTo(at, isItem: false);
            brackets.Open(frames.Count == 0 ? -1 : frames[^1].Indent);
            InBrackets(line, at, hasCursor);
            return;
        }
        var length = KeyLength(line, at);
        if (length > 0)
        {
            PopTo(at, isItem: false);
            var key = line.AsSpan(at, length).Trim().Trim("\"'").ToString();
            if (group is not null && group.Count == frames.Count && IsInFrames())
                keys.Add(key);
            frames.Add(new Frame(at, key, false));
            Value(line, at + length + 1, at, hasCursor);
        }
        else
        {
            var goesOn = frames.Count > 0 && frames[^1].HasText && frames[^1].Indent < at;
            if (goesOn)
                return;
            PopTo(at, isItem: false);
            if (hasCursor)
                Found = new CursorPlace(Path(int.MaxValue), line[at..].Split(" #")[0].Trim());
        }
    }

    /// <summary>What stands behind the colon of a name.</summary>
    private void Value(string line, int at, int indent, bool hasCursor)
    {
        while (at < line.Length && line[at] == ' ')
            at++;
        if (at >= line.Length || line[at] == '#')
            return;
        if (line[at] is '{' or '[')
        {
            brackets.Open(indent);
            InBrackets(line, at, hasCursor);
        }
        else if (line[at] is '|' or '>' || (line[at] is '"' or '\'' && line.IndexOf(line[at], at + 1) < 0))
            textBelow = indent;
        else if (frames.Count > 0)
            frames[^1].HasText = true;
    }

    private void InBrackets(string line, int from, bool hasCursor)
    {
        // A cursor before the bracket is at the name in front of it.
        var cursor = hasCursor && cursorColumn > from ? Math.Min(cursorColumn, line.Length) : hasCursor && from == 0 ? 0 : -1;
        if (brackets.Line(line, from, cursor, NoteInside) is { } inside)
            Found = new CursorPlace([.. Path(int.MaxValue), .. inside.Path], inside.Word);
    }

    private void NoteInside(string key)
    {
        if (group is not null && group.Count >= frames.Count && brackets.IsAt(group, frames.Count) && IsInFrames())
            keys.Add(key);
    }

    private bool IsInFrames()
    {
        for (var step = 0; step < frames.Count; step++)
        {
            if (group![step] != frames[step].Key)
                return false;
        }
        return true;
    }

    private List<string> Path(int column) => [.. frames.Where(frame => frame.Indent < column).Select(frame => frame.Key)];

    private void PopTo(int indent, bool isItem)
    {
        while (frames.Count > 0
            && (frames[^1].Indent > indent || (frames[^1].Indent == indent && (!isItem || frames[^1].IsItem))))
            frames.RemoveAt(frames.Count - 1);
    }

    /// <summary>How long the name is that stands here with a colon behind it; 0 if there is none.</summary>
    private static int KeyLength(string line, int at)
    {
        if (at >= line.Length || line[at] is '#' or '{' or '[')
            return 0;
        var from = at;
        if (line[at] is '"' or '\'' && line.IndexOf(line[at], at + 1) is var close and > 0)
            from = close;
        var comment = line.IndexOf(" #", from, StringComparison.Ordinal);
        for (var colon = line.IndexOf(':', from); colon > 0
            && (comment < 0 || colon < comment); colon = line.IndexOf(':', colon + 1))
        {
            if (colon + 1 == line.Length || line[colon + 1] is ' ' or '\t')
                return colon - at;
        }
        return 0;
    }

    private sealed class Frame(int indent, string key, bool isItem)
    {
        public int Indent { get; } = indent;

        public string Key { get; } = key;

        public bool IsItem { get; } = isItem;

        /// <summary>How many items its list has so far.</summary>
        public int Items { get; set; }

        /// <summary>Whether text stands behind its colon, which may go on below.</summary>
        public bool HasText { get; set; }
    }
}
