using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>A field of a scenario that isn't known exactly, and what it may be.</summary>
/// <param name="Path">The field, by the path that it has in the scenario file.</param>
/// <param name="Spread">What it may be.</param>
public sealed record UncertainField(string Path, Spread Spread)
{
    /// <summary>
    /// Reads the short form of the command line: <c>PATH=MIDDLE +- DEVIATION</c>, <c>PATH=MEDIAN +- a factor of FACTOR</c>,
    /// <c>PATH=between LOW and HIGH</c>, <c>PATH=between LOW and HIGH, most likely VALUE</c>; each also with <c>, at least
    /// VALUE</c>, <c>, at most VALUE</c> or <c>, within LOW..HIGH</c>. The scenario says what quantity the field is.
    /// </summary>
    /// <param name="scenario">The scenario that has the field.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="ScenarioProblemsException">The text is not of that form, the field doesn't exist or doesn't take one of
    /// the values, or nothing is left of the spread.</exception>
    public static UncertainField Parse(Scenario scenario, string text)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(text);
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals <= 0)
            throw SpreadText.Problem(text, "This is no uncertain field.");
        var path = text[..equals].Trim();
        return new UncertainField(path, SpreadText.Read(scenario, path, text[(equals + 1)..].Trim()));
    }

    /// <summary>The field as <see cref="Parse"/> reads it.</summary>
    public override string ToString() => $"{Path}={Spread.Words}";
}
