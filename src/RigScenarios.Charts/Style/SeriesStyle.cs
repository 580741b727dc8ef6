namespace RigScenarios.Charts.Style;

/// <summary>How one line of a chart looks; no two of the first 42 look the same even without colour.</summary>
/// <param name="Colour">Colour of the line, <c>#rrggbb</c>.</param>
/// <param name="TextColour">The same hue, dark enough for text on white (contrast of 4.5 to 1 or more).</param>
/// <param name="Dash">Dash pattern by plotly.js's name.</param>
/// <param name="Symbol">Marker by plotly.js's name.</param>
public sealed record SeriesStyle(string Colour, string TextColour, string Dash, string Symbol)
{
    // Okabe and Ito's colours, those with the best contrast first; see ChartStyle.
    private static readonly (string Line, string Text)[] Colours =
    [
        ("#0072B2", "#0067A1"), // blue
        ("#D55E00", "#B34F00"), // vermillion
        ("#009E73", "#007A59"), // bluish green
        ("#000000", "#000000"), // black
        ("#CC79A7", "#A34A7C"), // reddish purple
        ("#E69F00", "#8F6300"), // orange
        ("#56B4E9", "#1A759F"), // sky blue
    ];

    // Six dashes against seven colours: the pairs repeat only after 42 lines.
    private static readonly string[] Dashes = ["solid", "dash", "dot", "dashdot", "longdash", "longdashdot"];

    private static readonly string[] Symbols = ["circle", "square", "diamond", "triangle-up", "cross", "star", "triangle-down"];

    /// <summary>The look of the line with this number, from 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static SeriesStyle Number(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        var (line, text) = Colours[index % Colours.Length];
        return new SeriesStyle(line, text, Dashes[index % Dashes.Length], Symbols[index % Symbols.Length]);
    }

    /// <summary>The colour with an opacity, for bands and fills.</summary>
    /// <param name="opacity">From 0 to 1.</param>
    public string Fill(double opacity) =>
        FormattableString.Invariant($"rgba({Channel(1)},{Channel(3)},{Channel(5)},{opacity})");

    private int Channel(int start) => Convert.ToInt32(Colour.Substring(start, 2), 16);
}
