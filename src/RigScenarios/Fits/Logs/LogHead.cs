namespace RigScenarios.Fits.Logs;

/// <summary>The beginning of a log's text, held while its layout is found, and the text from any line of it on.</summary>
internal sealed class LogHead
{
    /// <summary>As much as is looked at, characters; what stands above the columns is shorter.</summary>
    private const int MostCharacters = 64 * 1024;

    private const int MostLines = 200;

    private readonly char[] buffer;
    private readonly int length;
    private readonly List<int> starts = [];
    private readonly TextReader reader;

    private LogHead(char[] buffer, int length, TextReader reader)
    {
        (this.buffer, this.length, this.reader) = (buffer, length, reader);
        var lines = new List<string>();
        // What some editors put before the first letter is none.
        for (var start = length > 0 && buffer[0] == '\uFEFF' ? 1 : 0; start < length && lines.Count < MostLines;)
        {
            var end = buffer.AsSpan(start..length).IndexOfAny('\r', '\n');
            // The last line may go on beyond what is held.
            if (end < 0 && length == buffer.Length)
                break;
            end = end < 0 ? length : start + end;
            starts.Add(start);
            lines.Add(new string(buffer, start, end - start));
            start = end + (end + 1 < length && buffer[end] == '\r' && buffer[end + 1] == '\n' ? 2 : 1);
        }
        Lines = lines;
    }

    /// <summary>The first lines, whole.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Whether there is a character that no text has.</summary>
    public bool IsBinary => buffer.AsSpan(0, length).Contains('\0');

    /// <summary>Whether there is nothing at all.</summary>
    public bool IsEmpty => buffer.AsSpan(0, length).IsWhiteSpace();

    /// <summary>Reads the beginning; more is not taken from the reader.</summary>
    public static LogHead Read(TextReader reader)
    {
        var held = new char[MostCharacters];
        return new(held, reader.ReadBlock(held), reader);
    }

    /// <summary>The text from one of the lines on; to be read once.</summary>
    public TextReader From(int line) =>
        new JoinedReader(buffer.AsMemory(line < starts.Count ? starts[line]..length : length..length), reader);

    /// <summary>What is held, and then the rest.</summary>
    private sealed class JoinedReader(ReadOnlyMemory<char> held, TextReader rest) : TextReader
    {
        private ReadOnlyMemory<char> held = held;

        public override int Peek() => held.IsEmpty ? rest.Peek() : held.Span[0];

        public override int Read()
        {
            if (held.IsEmpty)
                return rest.Read();
            var first = held.Span[0];
            held = held[1..];
            return first;
        }

        public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

        public override int Read(Span<char> buffer)
        {
            if (held.IsEmpty)
                return rest.Read(buffer);
            var taken = Math.Min(held.Length, buffer.Length);
            held.Span[..taken].CopyTo(buffer);
            held = held[taken..];
            return taken;
        }
    }
}
