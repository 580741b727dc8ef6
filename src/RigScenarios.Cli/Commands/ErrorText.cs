using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>What goes to standard error. Names of files and arguments stand in it, so that each line is shown as
/// <see cref="ShownText"/> shows it.</summary>
internal static class ErrorText
{
    /// <summary>Writes one line.</summary>
    public static void Line(string text) => Console.Error.WriteLine(ShownText.Of(text));

    /// <summary>Writes a text whose line breaks are meant.</summary>
    public static void Lines(string text)
    {
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
            Line(line);
    }
}
