namespace RigScenarios.Fits.Notes;

/// <summary>The unit of a log's time.</summary>
public enum LogTimeUnit
{
    /// <summary>Seconds.</summary>
    S,

    /// <summary>Milliseconds.</summary>
    Ms,

    /// <summary>Minutes.</summary>
    Min,

    /// <summary>Hours.</summary>
    H,
}

/// <summary>The unit of a log's voltage.</summary>
public enum LogVoltageUnit
{
    /// <summary>Volts.</summary>
    V,

    /// <summary>Millivolts.</summary>
    Millivolt,
}

/// <summary>The unit of a log's current.</summary>
public enum LogCurrentUnit
{
    /// <summary>Amperes.</summary>
    A,

    /// <summary>Milliamperes.</summary>
    Milliampere,
}

/// <summary>What stands between two columns of a log.</summary>
public enum LogSeparator
{
    /// <summary>A comma.</summary>
    Comma,

    /// <summary>A semicolon.</summary>
    Semicolon,

    /// <summary>A tab.</summary>
    Tab,
}

/// <summary>The decimal mark of a log.</summary>
public enum DecimalMark
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}

/// <summary>What a row of a log says.</summary>
public enum LogRowKind
{
    /// <summary>The mean until the next row.</summary>
    Mean,

    /// <summary>The values at that moment.</summary>
    Sample,
}
