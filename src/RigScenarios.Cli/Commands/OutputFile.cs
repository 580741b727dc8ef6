using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>The file that an option names for what a command writes.</summary>
internal static class OutputFile
{
    private static readonly string[] Others = [".yaml", ".yml", ".ipynb"];

    /// <summary>Refuses a file that can't be written, or that must not be lost; before the work that would end in it.</summary>
    /// <param name="option">The option, for the message.</param>
    /// <param name="path">What stands behind it.</param>
    /// <param name="example">A name that would do.</param>
    /// <param name="inputs">Files that the command reads.</param>
    /// <exception cref="ScenarioProblemsException">It says what is accepted.</exception>
    public static void Check(string option, string path, string example, params IEnumerable<string> inputs)
    {
        if ((TargetFile.Problem(path, inputs) ?? Kept(path, example)) is { } problem)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, option,
                $"Found \"{path}\". {problem}", $"a new file, or one that may be replaced, such as \"{example}\"")]);
    }

    // A table called as a rig is would be read with the rigs and parts of its folder, and one over a rig would be its loss.
    private static string? Kept(string path, string example) => path == "-" ? "The name of a file is needed."
        : Path.GetExtension(path) is var ending && Others.Contains(ending, StringComparer.OrdinalIgnoreCase)
            && !example.EndsWith(ending, StringComparison.OrdinalIgnoreCase)
        ? "Rigs and notebooks have such names; what is written here is neither." : null;
}
