using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>A quantity after an option, read as a file's fields are.</summary>
internal static class OptionValue
{
    /// <summary>The quantity; null where the option was not given.</summary>
    /// <param name="text">The text after the option.</param>
    /// <param name="format">What is accepted.</param>
    /// <param name="option">The option, for the message.</param>
    /// <exception cref="ScenarioProblemsException">The text is not accepted; it says what is.</exception>
    public static T? Read<T>(string? text, Format<T> format, string option)
        where T : struct
    {
        if (text is null)
            return null;
        var log = new ReadLog("");
        return format.TryRead(new TextNode(text, TextPlace.None), option, log, out var value)
            ? value : throw new ScenarioProblemsException(log.Problems);
    }
}
