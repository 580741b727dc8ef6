namespace RigScenarios.Checks;

/// <summary>
/// Where the figures that a check expects come from. On a class it holds for each of its tests, on a test for that test alone.
/// The table of outside checks counts the cases of each test by <see cref="Kind"/>.
/// </summary>
/// <param name="kind">What kind of source it is.</param>
/// <param name="citation">Author, title, year, table or page; how it was read (in the source, second-hand, from memory).</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method, AllowMultiple = true)]
public sealed class SourceAttribute(SourceKind kind, string citation) : Attribute
{
    /// <summary>What kind of source it is.</summary>
    public SourceKind Kind { get; } = kind;

    /// <summary>Author, title, year, table or page, and how it was read.</summary>
    public string Citation { get; } = citation;
}
