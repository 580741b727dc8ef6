using System.Text.RegularExpressions;

namespace RigScenarios.Files;

/// <summary>Plain names of scenario files, where a name comes from somebody who may not choose a path.</summary>
public static partial class ScenarioFileName
{
    /// <summary>Whether a text is the plain name of a scenario file: a few harmless characters, no path, nothing that a system
    /// takes for a device.</summary>
    /// <param name="name">Any text.</param>
    public static bool Is(string name) =>
        Plain().IsMatch(name) && !name.Contains("..", StringComparison.Ordinal) && !Device().IsMatch(name);

    [GeneratedRegex(@"^[\p{L}\p{N}][\p{L}\p{M}\p{N} ._()-]{0,74}\.(yaml|yml)\z",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Plain();

    // Names that Windows takes for devices, whatever their ending.
    [GeneratedRegex(@"^(con|prn|aux|nul|com[0-9]|lpt[0-9])\s*\.",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Device();
}
