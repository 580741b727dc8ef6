namespace RigScenarios.Fits.Logs;

/// <summary>How a power log is to be read. Whatever is left open is guessed from the file, and the guess is told.</summary>
public sealed record LogColumns
{
    /// <summary>Everything guessed.</summary>
    public static LogColumns Guessed { get; } = new();

    /// <summary>The column of the time.</summary>
    public LogColumn? Time { get; init; }

    /// <summary>The column of the voltage.</summary>
    public LogColumn? Voltage { get; init; }

    /// <summary>The column of the current.</summary>
    public LogColumn? Current { get; init; }

    /// <summary>What stands between two columns: a comma, a semicolon, a tab, a bar or a blank.</summary>
    public char? Separator { get; init; }

    /// <summary>The decimal mark: a point or a comma.</summary>
    public char? DecimalMark { get; init; }

    /// <summary>Whether a row is what was measured at its moment; otherwise the mean until the next row.</summary>
    public bool Samples { get; init; }

    /// <summary>The column asked for, null to guess.</summary>
    internal LogColumn? this[LogQuantity quantity] => quantity switch
    {
        LogQuantity.Time => Time,
        LogQuantity.Voltage => Voltage,
        _ => Current,
    };
}
