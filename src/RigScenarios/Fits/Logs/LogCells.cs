using System.Text;

namespace RigScenarios.Fits.Logs;

/// <summary>Splits a line of a log's beginning into cells. The rows below are split by a faster reader.</summary>
internal static class LogCells
{
    /// <summary>The separators that are known, the one least likely to stand in a number or a name first.</summary>
    public static readonly char[] Separators = ['\t', ';', '|', ',', ' '];

    /// <summary>The cells without quotes and blanks around them.</summary>
    public static List<string> Of(string line, char separator)
    {
        var cells = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var letter in line)
        {
            if (letter == '"')
            {
                quoted = !quoted;
            }
            else if (letter == separator && !quoted)
            {
                cells.Add(cell.ToString().Trim());
                cell.Clear();
            }
            else
            {
                cell.Append(letter);
            }
        }
        cells.Add(cell.ToString().Trim());
        return cells;
    }

    /// <summary>How many cells of a line hold a number or a clock time; 0 where the line has too few cells to be a row.</summary>
    public static int Numbers(string line, char separator, char decimalMark)
    {
        var cells = Of(line, separator);
        return cells.Count < 3 ? 0 : cells.Count(cell => LogNumber.TryRead(cell, decimalMark, out _, out _));
    }
}
