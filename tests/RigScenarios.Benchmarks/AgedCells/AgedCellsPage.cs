using System.Text;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The page docs/aging.md. A test holds the page against this.</summary>
internal static class AgedCellsPage
{
    private const int Width = 118;

    /// <summary>The page with the measured cells.</summary>
    public static string Of(IReadOnlyList<AgedCell> cells)
    {
        var text = new StringBuilder(WithoutCells());
        MeasuredSection.Write(text, cells);
        return text.ToString();
    }

    /// <summary>A paragraph or an item of a list, in lines of the page's width.</summary>
    public static string Wrapped(string text)
    {
        var indent = text.StartsWith("- ", StringComparison.Ordinal) ? "  " : "";
        var lines = new StringBuilder();
        var used = 0;
        foreach (var word in text.Split(' '))
        {
            if (used > 0 && used + 1 + word.Length > Width)
            {
                lines.Append('\n').Append(indent);
                used = indent.Length;
            }
            else if (used > 0)
            {
                lines.Append(' ');
                used++;
            }

            lines.Append(word);
            used += word.Length;
        }

        return lines.Append('\n').ToString();
    }

    /// <summary>The page up to the measured cells, which need data that is not in the repository.</summary>
    public static string WithoutCells()
    {
        var text = new StringBuilder();
        LawsSection.Write(text);
        SetsSection.Write(text);
        LivesSection.Write(text);
        CaseFilesSection.Write(text);
        return text.ToString();
    }
}
