using RigScenarios.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>What values of parameters that name files, builds, days or parts are looked up in.</summary>
/// <param name="Folders">The folders that a page offers; none where any file of the machine may be named.</param>
/// <param name="Scenarios">The scenarios read so far.</param>
/// <param name="FallsBack">
/// Whether a build, day or part that the chosen scenario lacks is replaced by its first one: on a page, where another scenario
/// was chosen and the rest has to follow. Otherwise it is a problem, unless the value is only the notebook's own.
/// </param>
internal sealed record ParameterScope(IReadOnlyList<ScenarioFolder> Folders, ScenarioChoices Scenarios, bool FallsBack)
{
    /// <summary>Settles the values that name something, and gives what is wrong with them.</summary>
    /// <param name="values">All values; those that name something are replaced by what they settle to.</param>
    /// <param name="folder">The notebook's folder.</param>
    public IEnumerable<string> Settle(List<ParameterValue> values, string folder)
    {
        var problems = new List<string>();
        for (var i = 0; i < values.Count; i++)
        {
            if (values[i] is { IsGiven: true, Parameter.Kind: ParameterKind.ScenarioFile })
                values[i] = File(values[i], folder, problems);
        }

        if (problems.Count > 0)
            return problems;
        for (var i = 0; i < values.Count; i++)
        {
            if (values[i].Parameter.Kind is ParameterKind.Build or ParameterKind.Day or ParameterKind.Part
                && (values[i].IsGiven || values.Any(other => other.IsGiven && other.Parameter.Name == values[i].Parameter.Of)))
                values[i] = Named(values[i], values, folder, problems);
        }

        // After the builds, which they speak of.
        for (var i = 0; i < values.Count; i++)
        {
            if (values[i].Parameter.Kind == ParameterKind.Places && values[i].Value.Length > 0)
                values[i] = Places(values[i], values, folder, problems);
        }

        return problems;
    }

    private ParameterValue File(ParameterValue value, string folder, List<string> problems)
    {
        var path = Folders.Select(given => given.PathOf(value.Value)).FirstOrDefault(found => found is not null);
        // From a command line a file is named as seen from where the command was given, or as the notebook itself would.
        if (path is null && Folders.Count == 0)
            path = new[] { Path.GetFullPath(value.Value),
                Path.GetFullPath(value.Value, folder) }.FirstOrDefault(System.IO.File.Exists);
        // The notebook's own file may lie outside of what a page offers.
        if (path is null && value.Value == value.Parameter.Default)
            return value;
        if (path is null)
        {
            problems.Add(value.Parameter
                .Refuse($"there is no scenario file "
                    + $"\"{value.Value}\"{(Folders.Count > 0 ? " in the folders of this page" : "")}").Problem!);
            return value;
        }

        if (Scenarios.Read(path, folder) is { Problem: { } problem })
            problems.Add($"{value.Parameter.Name}: {problem}");
        return value with { Value = path };
    }

    private ParameterValue Named(ParameterValue value, List<ParameterValue> all, string folder, List<string> problems)
    {
        var choices = Scenarios.Choices(value.Parameter, all, [], folder);
        if (choices.Count == 0 || choices.Any(choice => choice.Value == value.Value))
            return value;
        if (FallsBack || !value.IsGiven)
            return value with { Value = choices[0].Value };
        var nearest = NearestName.To(value.Value, choices.Select(choice => choice.Value)) is { } near
            ? $" Did you mean \"{near}\"?" : "";
        problems.Add($"{value.Parameter.Name}: the scenario has no \"{value.Value}\".{nearest} Expected "
            + $"({value.Parameter.Label}): one of {string.Join(" | ", choices.Select(choice => choice.Value))}.");
        return value;
    }

    /// <summary>What another build has no place for is forgotten where values fall back; a mistake in a given text is
    /// told.</summary>
    private ParameterValue Places(ParameterValue value, List<ParameterValue> all, string folder, List<string> problems)
    {
        if (Scenarios.BuildOf(value.Parameter, all, folder) is not { } owner)
            return value;
        var found = MovedPlaces.Problems(owner.Scenario, owner.Build, value.Value);
        if (found.Count == 0)
            return value;
        if (!value.IsGiven || (FallsBack && found.All(problem => problem.Path.Length > 0)))
        {
            var slides = MovedPlaces.Of(owner.Scenario, owner.Build).Select(part => part.Name).ToHashSet(StringComparer.Ordinal);
            if (found.All(problem => !slides.Contains(problem.Path)))
                return value with { Value = MovedPlaces.Text(MovedPlaces.Read(value.Value)
                    .Where(thing => slides.Contains(thing.Key))) };
        }

        problems.AddRange(found.Select(problem => $"{value.Parameter.Name}: "
            + $"{(problem.Path.Length > 0 ? $"{problem.Path}: " : "")}{problem.Problem}"
            + $"{(problem.Nearest is { } near ? $" Did you mean \"{near}\"?" : "")} Expected ({value.Parameter.Label}): "
                + $"{problem.Accepted}."));
        return value;
    }
}
