using System.Text;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The page docs/aging.md. A test holds the page against this.</summary>
internal static class AgedCellsPage
{
    /// <summary>The page with the measured cells.</summary>
    public static string Of(IReadOnlyList<AgedCell> cells)
    {
        var text = new StringBuilder(WithoutCells());
        MeasuredSection.Write(text, cells);
        return text.ToString();
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
