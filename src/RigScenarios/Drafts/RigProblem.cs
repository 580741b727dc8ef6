using System.Text.RegularExpressions;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>A problem of the scenario behind a form, told to someone who sees no file: without keys, paths and parts
/// files.</summary>
internal static partial class RigProblem
{
    /// <summary>The problem in such words; its path stays.</summary>
    /// <param name="problem">The problem as the check of a file tells it.</param>
    public static Diagnostic Of(Diagnostic problem) => problem with
    {
        Problem = problem.Problem
            .Replace("No device is marked \"essential: yes\"", "No device is marked as one that the day needs",
                StringComparison.Ordinal)
            .Replace(" in this file or its parts files", " in the list", StringComparison.Ordinal)
            .Replace(" in its parts file", "", StringComparison.Ordinal)
            .Replace(", neither here nor in \"conditions\"", "", StringComparison.Ordinal)
            .Replace(" (a group \"power\")", "", StringComparison.Ordinal)
            .Replace(" (a group \"cable\")", "", StringComparison.Ordinal),
        Accepted = problem.Accepted is { } accepted && NamesAKey().IsMatch(accepted) ? null : problem.Accepted,
    };

    // A quoted key, with a value or without, or a path.
    [GeneratedRegex("\"[a-z-]+: |\"[a-z]+(-[a-z]+)*\"|\\b(builds|kit|days|parts|swaps|chargers|batteries)\\.[a-z]|parts? file",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex NamesAKey();
}
