namespace RigScenarios.Charts.TakeAlong;

/// <summary>What a sheet is printed on.</summary>
public enum SheetPaper
{
    /// <summary>Either A4 or Letter: what both have room for.</summary>
    Either,

    /// <summary>A4, 210 mm by 297 mm (ISO 216).</summary>
    A4,

    /// <summary>Letter, 8.5 in by 11 in.</summary>
    Letter,
}

/// <summary>The room on a paper.</summary>
internal static class SheetPapers
{
    // Left free on each side, and a little at the foot for what a browser rounds, mm.
    private const double Margin = 8;
    private const double Rounding = 3;

    /// <summary>Width between the margins, mm.</summary>
    public static double Width(this SheetPaper paper) => Math.Floor((paper == SheetPaper.Letter ? 215.9 : 210) - (2 * Margin));

    /// <summary>Height between the margins, mm.</summary>
    public static double Height(this SheetPaper paper) =>
        (paper == SheetPaper.A4 ? 297 : 279.4) - (2 * Margin) - Rounding;

    /// <summary>What the page's style says of it; nothing where either will do.</summary>
    public static string Style(this SheetPaper paper) => paper switch
    {
        SheetPaper.A4 => "@page { size: A4; }\n",
        SheetPaper.Letter => $"@page {{ size: letter; }}\n@media print {{ main {{ width: {paper.Width():0}mm; }} }}\n",
        _ => "",
    };
}
