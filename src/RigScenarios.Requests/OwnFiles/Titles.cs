using System.Text.Json;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.OwnFiles;

/// <summary>A build or day of a scenario, to be chosen from.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Title">What people call it.</param>
internal sealed record NamedTitle(string Name, string Title)
{
    /// <summary>Writes the fields of one as JSON.</summary>
    public static void Write(Utf8JsonWriter json, NamedTitle named)
    {
        json.WriteString("name", named.Name);
        json.WriteString("title", named.Title);
    }
}

/// <summary>The builds and days of a scenario by name and title.</summary>
internal static class Titles
{
    public static IReadOnlyList<NamedTitle> Builds(Scenario? scenario) =>
        [.. scenario?.Builds.Select(build => new NamedTitle(build.Key, build.Value.Title ?? build.Key)) ?? []];

    public static IReadOnlyList<NamedTitle> Days(Scenario? scenario) =>
        [.. scenario?.Days.Select(day => new NamedTitle(day.Key, day.Value.Title ?? day.Key)) ?? []];
}
