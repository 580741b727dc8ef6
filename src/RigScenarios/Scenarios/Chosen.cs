using RigScenarios.Parts;

namespace RigScenarios.Scenarios;

/// <summary>Looks up what somebody chose by its name.</summary>
internal static class Chosen
{
    /// <summary>The thing of a name.</summary>
    /// <param name="things">The things.</param>
    /// <param name="name">The name.</param>
    /// <param name="what">What it is, for the message: "build".</param>
    /// <param name="path">Where the things stand in a file: "builds".</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing.</exception>
    public static T From<T>(OrderedMap<T> things, string name, string what, string path)
        where T : notnull =>
        things.TryGetValue(name, out var found)
            ? found
            : throw new ScenarioProblemsException([new Diagnostic(
                Severity.Error, "", TextPlace.None, path, $"The scenario has no {what} \"{name}\".",
                string.Join(", ", things.Keys), NearestName.To(name, things.Keys))]);
}
