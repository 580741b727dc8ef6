using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>A name as it can be typed behind a command: what a shell would take for something else stands in quotes.</summary>
internal static class ShellWord
{
    private const string Harmless = "_-./\\:@%+,=~";

    /// <summary>The name, ready to be typed again.</summary>
    public static string Of(string name)
    {
        var shown = ShownText.Of(name);
        if (shown.Length > 0 && shown.All(character => char.IsLetterOrDigit(character)
            || Harmless.Contains(character, StringComparison.Ordinal)))
            return shown;
        return OperatingSystem.IsWindows() ? $"\"{shown}\""
            : shown.Any(character => character is '"' or '$' or '`' or '\\' or '!')
                ? $"'{shown.Replace("'", @"'\''", StringComparison.Ordinal)}'" : $"\"{shown}\"";
    }
}
