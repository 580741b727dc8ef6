using RigScenarios.Cells;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>A figure of a scenario that nobody knows exactly.</summary>
/// <param name="Field">The field and what it may be.</param>
/// <param name="Name">What it is, in words: "energy of the brick".</param>
/// <param name="Act">What one would do to know it: "time one full discharge of the brick". One act may tell several
/// figures.</param>
/// <param name="Why">Why it may be off by so much.</param>
/// <param name="Source">Where that comes from; null where somebody gave it.</param>
public sealed record UnsureFigure(UncertainField Field, string Name, string Act, string Why, Citation? Source)
{
    /// <summary>The name of it and of what is drawn together with it: "draw of the camera"; null for none.</summary>
    public string? Together { get; init; }

    /// <summary>Whether it has no part in the days, only in balance, tripod and joints.</summary>
    public bool OnlyAtRest { get; init; }

    /// <summary>Whether it has no part in the rig at rest, only in the days.</summary>
    public bool OnlyInDays { get; init; }

    /// <summary>Whether somebody gave its spread.</summary>
    public bool IsGiven => Source is null;

    /// <summary>A figure whose spread somebody gave.</summary>
    /// <param name="field">The field and what it may be.</param>
    public static UnsureFigure Given(UncertainField field)
    {
        ArgumentNullException.ThrowIfNull(field);
        return new(field, field.Path, $"measure {field.Path}", "as it was given", null);
    }
}
