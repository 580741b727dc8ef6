namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// What stands in one cell of a sweep: a number, words, yes or no; or nothing, where the figure is not known or does not exist,
/// as the reason of a stop where nothing stopped. Nothing is neither zero nor "no".
/// </summary>
public readonly record struct SweepCell
{
    private SweepCell(double? number, string? text) => (Number, Text) = (number, text);

    /// <summary>A cell in which nothing stands.</summary>
    public static SweepCell Nothing => default;

    /// <summary>The number, in the unit of its column; 1 for yes, 0 for no; null where words or nothing stand.</summary>
    public double? Number { get; }

    /// <summary>The words; "yes" or "no" of such a cell; null where a number or nothing stands.</summary>
    public string? Text { get; }

    /// <summary>Yes or no; null where something else stands, or nothing.</summary>
    public bool? YesNo => Number is { } number && Text is not null ? number != 0 : null;

    /// <summary>Whether nothing stands here.</summary>
    public bool IsNothing => Number is null && Text is null;

    /// <summary>A number; nothing where it is not finite or null.</summary>
    /// <param name="number">The number, in the unit of the column.</param>
    public static SweepCell Of(double? number) => number is { } value && double.IsFinite(value) ? new(value, null) : default;

    /// <summary>Words; nothing where they are null or empty.</summary>
    /// <param name="text">The words.</param>
    public static SweepCell Of(string? text) => string.IsNullOrEmpty(text) ? default : new(null, text);

    /// <summary>Yes or no; nothing where it is null.</summary>
    /// <param name="yes">Which.</param>
    public static SweepCell Of(bool? yes) => yes is { } value ? new(value ? 1 : 0, value ? "yes" : "no") : default;
}
