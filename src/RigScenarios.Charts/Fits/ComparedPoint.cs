namespace RigScenarios.Charts.Fits;

/// <summary>How a measurement takes part in what it is compared with.</summary>
public enum ComparedAs
{
    /// <summary>As it was measured.</summary>
    Measured,

    /// <summary>A lower bound: it was still running then.</summary>
    AtLeast,

    /// <summary>Seen, and left out of the fit.</summary>
    LeftOut,
}

/// <summary>A measurement beside what is predicted for it, both in one unit.</summary>
/// <param name="Name">Which one it is ("evening on the pier").</param>
/// <param name="Predicted">What is predicted.</param>
/// <param name="Measured">What was measured.</param>
public sealed record ComparedPoint(string Name, double Predicted, double Measured)
{
    /// <summary>Lower end of what the measurement may stand for; null draws no bar.</summary>
    public double? Least { get; init; }

    /// <summary>Upper end of what the measurement may stand for; null draws no bar.</summary>
    public double? Greatest { get; init; }

    /// <summary>How it takes part.</summary>
    public ComparedAs As { get; init; }

    /// <summary>What it belongs to, where several kinds are compared ("cycled cells"); empty where there is one.</summary>
    public string Group { get; init; } = "";
}
