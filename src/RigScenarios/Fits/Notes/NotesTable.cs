using System.Text;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Fits.Notes;

/// <summary>Notes as a table (CSV): one line a note, the columns named as the fields of a note are. It becomes the same tree as
/// the other form, so that both get the same checks and messages.</summary>
internal static class NotesTable
{
    private const string NameColumn = "name";

    private const string DevicesPrefix = "devices.";

    private const int MostRows = 500;

    private static readonly char[] Separators = [',', ';', '\t'];

    // What can't stand in one cell.
    private static readonly string[] NotInTables = ["devices", "stretches"];

    /// <summary>Reads the table; null if no tree came of it.</summary>
    public static FieldNotes? Read(string text, ReadLog log)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var first = Array.FindIndex(lines, line => line.Length > 0 && line[0] != '#');
        if (first < 0)
        {
            log.Error(new TextPlace(1, 1), "", "The table is empty.", "a first line with the columns' names, such as "
                + "\"name,air,devices.camera,devices.monitor,lasted\"");
            return null;
        }
        var separator = SeparatorOf(lines[first]);
        var columns = Cells(lines[first], separator);
        Columns(columns, first + 1, log);
        var notes = new List<MapEntry>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var row = first + 1; row < lines.Length; row++)
        {
            if (lines[row].Trim(separator, ' ').Length == 0 || lines[row][0] == '#')
                continue;
            if (notes.Count == MostRows)
            {
                log.Error(new TextPlace(row + 1, 1), "", "The table goes on from here.", $"at most {MostRows} notes");
                break;
            }
            if (Row(Cells(lines[row], separator), columns, row + 1, notes.Count + 1, names, log) is { } note)
                notes.Add(note);
        }
        var whole = new MapNode([new("notes", TextPlace.None, new MapNode(notes, new TextPlace(first + 1, 1)))], default);
        return FieldNotesFormat.Whole.TryRead(whole, "", log, out var read) && !log.HasErrors ? read : null;
    }

    private static void Columns(List<(string Text, int Column)> columns, int line, ReadLog log)
    {
        string[] accepted = [NameColumn, .. FieldNotesFormat.NoteKeys.Except(NotInTables)];
        foreach (var (name, column) in columns)
        {
            if (!accepted.Contains(name) && !name.StartsWith(DevicesPrefix, StringComparison.Ordinal))
                log.Error(new TextPlace(line, column), name, $"There is no column \"{name}\".",
                    string.Join(", ", accepted) + ", and devices.NAME for what a device did", log.Nearest(name, accepted));
        }
        foreach (var twice in columns.GroupBy(column => column.Text).Where(group => group.Count() > 1))
            log.Error(new TextPlace(line, twice.Last().Column), twice.Key, $"The column \"{twice.Key}\" stands twice.",
                "each column once");
    }

    private static MapEntry? Row(List<(string Text, int Column)> cells, List<(string Text, int Column)> columns, int line,
        int number, HashSet<string> names, ReadLog log)
    {
        if (cells.Count > columns.Count)
            log.Error(new TextPlace(line, cells[columns.Count].Column), $"notes.{number}",
                $"This line has {cells.Count} cells, the first line {columns.Count}.",
                "as many cells as columns; a cell with a separator in it in double quotes, such as \"record 50 %, standby 20 "
                    + "%\"");
        var (fields, devices) = (new List<MapEntry>(), new List<MapEntry>());
        var name = $"note-{number}";
        var at = new TextPlace(line, 1);
        foreach (var ((key, _), (cell, column)) in columns.Zip(cells))
        {
            if (cell.Length == 0)
                continue;
            var place = new TextPlace(line, column);
            if (key == NameColumn)
                (name, at) = (cell, place);
            else if (key.StartsWith(DevicesPrefix, StringComparison.Ordinal))
                Add(devices, new(key[DevicesPrefix.Length..], place, new TextNode(cell, place)));
            else if (FieldNotesFormat.NoteKeys.Contains(key) && !NotInTables.Contains(key))
                Add(fields, new(key, place, new TextNode(cell, place)));
        }
        if (!names.Add(name))
        {
            log.Error(at, $"notes.{name}", $"The note \"{name}\" stands twice.", "each name once");
            return null;
        }
        if (devices.Count > 0)
            fields.Add(new("devices", at, new MapNode(devices, at)));
        return new(name, at, new MapNode(fields, at));

        // A column that stands twice is told at the first line.
        static void Add(List<MapEntry> entries, MapEntry entry)
        {
            if (!entries.Exists(other => other.Key == entry.Key))
                entries.Add(entry);
        }
    }

    private static char SeparatorOf(string header) =>
        Separators.MaxBy(candidate => header.Count(character => character == candidate));

    private static List<(string Text, int Column)> Cells(string line, char separator)
    {
        var cells = new List<(string, int)>();
        var (cell, start, isQuoted) = (new StringBuilder(), 1, false);
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && isQuoted && i + 1 < line.Length && line[i + 1] == '"')
                cell.Append(line[i++]);
            else if (line[i] == '"')
                isQuoted = !isQuoted;
            else if (line[i] == separator && !isQuoted)
            {
                cells.Add((cell.ToString().Trim(), start));
                (cell, start) = (new StringBuilder(), i + 2);
            }
            else
                cell.Append(line[i]);
        }
        cells.Add((cell.ToString().Trim(), start));
        return cells;
    }
}
