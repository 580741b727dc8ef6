namespace RigScenarios.Notebooks.Parameters;

/// <summary>A value that may be chosen.</summary>
/// <param name="Value">The value.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Detail">What tells it from the others, such as mass and draw; may be empty.</param>
public sealed record ParameterChoice(string Value, string Title, string Detail)
{
    /// <summary>For a thing that can be moved: what its mount allows; otherwise null.</summary>
    public ParameterStretch? Stretch { get; init; }
}

/// <summary>A stretch along a mount, mm forward of what carries the thing.</summary>
/// <param name="Least">Its rear end, mm.</param>
/// <param name="Greatest">Its front end, mm.</param>
/// <param name="At">Where the scenario has the thing, mm.</param>
public sealed record ParameterStretch(double Least, double Greatest, double At);
