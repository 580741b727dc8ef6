using RigScenarios.Scenarios;
using RigScenarios.Files.Formats;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace RigScenarios.Files;

/// <summary>
/// Reads YAML text into a tree of nodes with their places. Only the plain part of the language is accepted: one document of
/// maps, lists and text. References between nodes (anchors) and tags are refused, so that a small file can't grow large.
/// </summary>
internal static class YamlTree
{
    private const int DeepestNesting = 24;
    private const int MostNodes = 30_000;
    private const int LongestName = 200;

    /// <summary>Reads the text; null if no tree came of it. Every problem goes to the log.</summary>
    public static MapNode? Read(string text, ReadLog log)
    {
        try
        {
            var reading = new Reading(new Parser(new StringReader(text)), log);
            return reading.Document();
        }
        catch (YamlException exception)
        {
            if (TabAtLineStart(text) is { } tab)
            {
                log.Error(tab, "", "A tab stands at the start of this line. Only spaces are read there: in the editor choose "
                    + "\"indent with spaces\".");
                return null;
            }
            if (YamlBrackets.Find(text, (int)exception.Start.Line) is { } bracket)
            {
                log.Error(bracket.At, "", bracket.Problem);
                return null;
            }
            var reason = Reason(exception);
            log.Error(Place(exception.Start), "", "From here the text can't be read as YAML: " + reason
                + (reason.Contains("escape", StringComparison.Ordinal)
                    ? " Within double quotes a backslash begins an escape: write it twice, or take single quotes."
                    : " Often a colon without a space after it, a tab, or a quote that isn't closed."));
            return null;
        }
        catch (Unreadable unreadable)
        {
            var (at, problem) = YamlBrackets.Find(text, unreadable.At.Line) ?? (unreadable.At, unreadable.Message);
            log.Error(at, "", problem);
            return null;
        }
        catch (Refused refused)
        {
            log.Error(refused.At, "", refused.Message);
            return null;
        }
    }

    private static TextPlace Place(Mark mark) => new((int)mark.Line, (int)mark.Column);

    private static TextPlace? TabAtLineStart(string text)
    {
        var line = 0;
        foreach (var content in text.AsSpan().EnumerateLines())
        {
            line++;
            var indent = content[..^content.TrimStart(" \t").Length];
            if (indent.Length < content.Length && indent.IndexOf('\t') is var tab and >= 0)
                return new TextPlace(line, tab + 1);
        }
        return null;
    }

    private static string Reason(YamlException exception)
    {
        var message = exception.InnerException?.Message ?? exception.Message;
        var end = message.StartsWith('(') ? message.IndexOf("): ", StringComparison.Ordinal) : -1;
        return (end > 0 ? message[(end + 3)..] : message).TrimEnd('.') + ".";
    }

    /// <summary>The parser gave up without saying why.</summary>
    private sealed class Unreadable(TextPlace at, string message) : Exception(message)
    {
        public TextPlace At { get; } = at;
    }

    private sealed class Refused(TextPlace at, string message) : Exception(message)
    {
        public TextPlace At { get; } = at;
    }

    private sealed class Reading(Parser parser, ReadLog log)
    {
        private int nodes;

        public MapNode? Document()
        {
            Next();
            Next();
            if (parser.Current is StreamEnd)
                throw new Refused(new TextPlace(1, 1), "The file is empty.");
            Next();
            var at = Place(parser.Current!.Start);
            var root = Node(0, "");
            Next();
            if (parser.Current is not StreamEnd)
                throw new Refused(Place(parser.Current!.Start),
                    "A second document begins here (a line with ---); one file holds one.");
            if (root is MapNode map)
                return map;
            throw new Refused(at, $"Found {root.Describe()} where the file's fields belong, such as \"title: …\".");
        }

        private void Next()
        {
            try
            {
                if (!parser.MoveNext())
                    throw new Refused(new TextPlace(1, 1), "The file ends too early.");
            }
            catch (Exception exception) when (exception is ArgumentException or FormatException or OverflowException
                or InvalidOperationException)
            {
                // The parser lets these through for a number behind \U or in a directive that is none.
                throw new Unreadable(parser.Current is { } last ? Place(last.End) : new TextPlace(1, 1),
                    "After this place something stands that can't be read, such as a \\U with a number that is no character.");
            }
        }

        /// <summary>Reads the node that begins with the current event, and moves past its last event.</summary>
        private FileNode Node(int depth, string path)
        {
            var start = parser.Current!;
            var at = Place(start.Start);
            if (++nodes > MostNodes)
                throw new Refused(at, $"The file holds more than {MostNodes} values.");
            if (depth > DeepestNesting)
                throw new Refused(at, $"Values are nested more than {DeepestNesting} deep here.");
            if (start is NodeEvent { Anchor.IsEmpty: false })
                throw new Refused(at, "A reference mark (&name) stands here. References are not accepted: write the value out.");
            if (start is NodeEvent { Tag.IsEmpty: false } tagged && !tagged.Tag.IsNonSpecific)
                throw new Refused(at, "A type mark (!name) stands here. Type marks are not accepted: leave it out.");
            switch (start)
            {
                case Scalar scalar:
                    Next();
                    return new TextNode(scalar.Value, at);
                case AnchorAlias:
                    throw new Refused(at, "A reference (*name) stands here. References are not accepted: write the value out.");
                case SequenceStart:
                    return List(at, depth, path);
                case MappingStart:
                    return Map(at, depth, path);
                default:
                    throw new Refused(at, "Something unexpected stands here.");
            }
        }

        private ListNode List(TextPlace at, int depth, string path)
        {
            var items = new List<FileNode>();
            Next();
            while (parser.Current is not SequenceEnd)
                items.Add(Node(depth + 1, $"{path}.{items.Count + 1}"));
            Next();
            return new ListNode(items, at);
        }

        private MapNode Map(TextPlace at, int depth, string path)
        {
            var entries = new List<MapEntry>();
            var lines = new Dictionary<string, int>(StringComparer.Ordinal);
            Next();
            while (parser.Current is not MappingEnd)
            {
                var keyAt = Place(parser.Current!.Start);
                if (Node(depth + 1, path) is not TextNode key)
                    throw new Refused(keyAt, "A name belongs here, not a group or list.");
                // Paths of fields are made of names: a long one would be copied into each path below it.
                if (key.Text.Length > LongestName)
                    throw new Refused(keyAt,
                        $"A name of {key.Text.Length} characters stands here; at most {LongestName} are read.");
                var valuePath = path.Length == 0 ? key.Text : $"{path}.{key.Text}";
                var value = Node(depth + 1, valuePath);
                if (lines.TryAdd(key.Text, keyAt.Line))
                    entries.Add(new MapEntry(key.Text, keyAt, value));
                else
                    log.Error(keyAt, valuePath,
                        $"The name \"{key.Text}\" stands twice in the same group; first on line {lines[key.Text]}.");
            }
            Next();
            return new MapNode(entries, at);
        }
    }

    /// <summary>Writes a tree as YAML that reads back to the same tree.</summary>
    public static string Write(MapNode root)
    {
        var text = new StringWriter { NewLine = "\n" };
        var emitter = new Emitter(text, new EmitterSettings(2, 1000, false, 1024, true, false));
        emitter.Emit(new StreamStart());
        emitter.Emit(new DocumentStart(null, null, true));
        Emit(emitter, root, 0);
        emitter.Emit(new DocumentEnd(true));
        emitter.Emit(new StreamEnd());
        return text.ToString();
    }

    private static void Emit(Emitter emitter, FileNode node, int depth)
    {
        switch (node)
        {
            case MapNode map:
                var flat = depth > 1 && map.Entries.All(entry => entry.Value is TextNode) && map.Entries.Count is > 0 and <= 4;
                emitter.Emit(new MappingStart(AnchorName.Empty, TagName.Empty, true,
                    flat || map.Entries.Count == 0 ? MappingStyle.Flow : MappingStyle.Block));
                foreach (var entry in map.Entries)
                {
                    emitter.Emit(new Scalar(entry.Key));
                    Emit(emitter, entry.Value, depth + 1);
                }
                emitter.Emit(new MappingEnd());
                break;
            case ListNode list:
                emitter.Emit(new SequenceStart(AnchorName.Empty, TagName.Empty, true, SequenceStyle.Flow));
                foreach (var item in list.Items)
                    Emit(emitter, item, depth + 1);
                emitter.Emit(new SequenceEnd());
                break;
            case TextNode text:
                var quoted = text.Text.Contains(':', StringComparison.Ordinal) || text.Text.Length == 0;
                emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, text.Text,
                    quoted ? ScalarStyle.DoubleQuoted : ScalarStyle.Any, true, true));
                break;
            default:
                throw new ArgumentException($"{node} is no kind of node.", nameof(node));
        }
    }
}
