namespace RigScenarios.Charts;

/// <summary>
/// A finished drawing of our own, such as a rig to scale, with all that a reader needs beside it: what a <see cref="Figure"/> is
/// for a chart. Immutable.
/// </summary>
public sealed record Drawing
{
    /// <summary>Short name in lower case with hyphens, the same for the same drawing at every run ("rig-to-scale").</summary>
    /// <exception cref="ArgumentException">Another character stands in it, or none.</exception>
    public required string Slug
    {
        get;
        init => field = Figure.IsSlug(value)
            ? value
            : throw new ArgumentException(
                $"\"{value}\" is no short name for a drawing; use lower-case letters, digits and hyphens, such as "
                    + "\"rig-to-scale\".", nameof(value));
    }

    /// <summary>What the drawing shows, as a line above it.</summary>
    public required string Title { get; init; }

    /// <summary>One or two sentences below the drawing: what to see, what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the drawing, each a sentence of its own below the caption.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The drawing in words, for screen readers and for text-only output.</summary>
    public required string AlternativeText { get; init; }

    /// <summary>The drawing as an <c>svg</c> element for a page of ordinary width; it goes into the page as it is, so all text in
    /// it is escaped.</summary>
    public required string Svg { get; init; }

    /// <summary>The same for a phone; a style sheet shows one of the two.</summary>
    public required string NarrowSvg { get; init; }

    /// <summary>The drawing's numbers.</summary>
    public required ChartTable Data { get; init; }
}
