namespace RigScenarios.Charts.Style;

/// <summary>
/// The one house style of all charts: dark text on white, thin grey grid, lines that differ in colour <em>and</em> in dash, so
/// that they stay apart for colour-blind eyes and in black-and-white print.
/// </summary>
/// <remarks>
/// Colours: Masataka Okabe and Kei Ito, "Color Universal Design: how to make figures and presentations that are friendly to
/// colorblind people", 2002, revised 2008, the set of eight (its yellow is left out: too faint for a line on white).
/// Heat maps: "cividis" of Jamie Nuñez, Christopher Anderton and Ryan Renslow, "Optimizing colormaps with consideration for
/// color vision deficiency to enable accurate interpretation of scientific data", PLoS ONE 13(7), 2018: its lightness rises
/// evenly, so that it survives a black-and-white print.
/// </remarks>
public static class ChartStyle
{
    /// <summary>Height of a chart with one panel, in pixels.</summary>
    public const int Height = 420;

    /// <summary>Width for which labels are placed, in pixels; a wider page only gives them more room.</summary>
    public const int Width = 760;

    /// <summary>Width for which the layout of a phone is made, in pixels.</summary>
    public const int NarrowWidth = 330;

    /// <summary>Below this width of the chart, in pixels, the layout of a phone is used.</summary>
    public const int NarrowBelow = 560;

    /// <summary>Fonts that are there on common systems; nothing is fetched.</summary>
    public const string FontFamily = "\"Segoe UI\", \"Helvetica Neue\", Arial, \"Liberation Sans\", \"DejaVu Sans\", sans-serif";

    /// <summary>Size of the text in charts, in pixels.</summary>
    public const int FontSize = 13;

    /// <summary>Colour of text.</summary>
    public const string Ink = "#222222";

    /// <summary>Colour of limit lines and of the marks where a line ends.</summary>
    public const string LimitInk = "#444444";

    /// <summary>Colour of the grid.</summary>
    public const string Grid = "#e3e3e3";

    /// <summary>The two greys of time blocks, in turn.</summary>
    public static IReadOnlyList<string> BlockFills { get; } = ["#f1f1f1", "#ffffff"];

    /// <summary>The grey of a stretch that is to be seen apart from its neighbours.</summary>
    public const string EmphasisFill = "#dadada";

    /// <summary>Height of a line of text, in pixels.</summary>
    internal const double TextHeight = 17;

    // Measured on the widest of the fonts above (DejaVu Sans, mixed text): 0.58 of the size a character, and a little air.
    private const double CharacterWidth = 0.6;

    /// <summary>About how wide a text is in a chart, in pixels, rather too wide than too narrow.</summary>
    /// <param name="text">As <see cref="PlotlyText"/> gives it, with its lines joined for plotly.js.</param>
    /// <param name="size">Size of the font in pixels.</param>
    internal static double TextWidth(string text, double size = FontSize) =>
        text.Split("<br>").Max(line => PlotlyText.Length(line)) * size * CharacterWidth;
}
