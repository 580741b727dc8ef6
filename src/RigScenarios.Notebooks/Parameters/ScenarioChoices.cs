using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>Scenario files as choices: which there are, and which builds, days and parts each has. A file is read again when it
/// changed.</summary>
internal sealed class ScenarioChoices
{
    private readonly Dictionary<string,
    (DateTime Written, Scenario? Scenario, string? Problem)> read = new(StringComparer.Ordinal);

    /// <summary>A scenario by its file, seen from the notebook's folder; or why it can't be used.</summary>
    public (Scenario? Scenario, string? Problem) Read(string path, string folder)
    {
        var full = Path.GetFullPath(path, folder);
        var written = File.Exists(full) ? File.GetLastWriteTimeUtc(full) : default;
        if (!read.TryGetValue(full, out var known) || known.Written != written)
        {
            var (scenario, problems) = ScenarioFile.TryRead(full);
            var errors = problems.Where(problem => problem.Severity == Severity.Error).ToList();
            known = read[full] = (written, scenario, scenario is not null ? null
                : $"{Path.GetFileName(full)} can't be used yet: "
                    + (errors[0] with { File = Path.GetFileName(full) })
                    + (errors.Count > 1 ? $" ({errors.Count - 1} more)" : ""));
        }

        return (known.Scenario, known.Problem);
    }

    /// <summary>What may be chosen for a parameter; empty where it is no choice.</summary>
    public IReadOnlyList<ParameterChoice> Choices(
        NotebookParameter parameter, IReadOnlyList<ParameterValue> values, IReadOnlyList<ScenarioFolder> folders, string folder)
    {
        switch (parameter.Kind)
        {
            case ParameterKind.Text:
                return [.. parameter.Choices.Select(choice => new ParameterChoice(choice, choice, ""))];
            case ParameterKind.ScenarioFile:
                return [.. folders.SelectMany(given => given.Files())];
            case ParameterKind.Build or ParameterKind.Day or ParameterKind.Part:
                var owner = values.FirstOrDefault(value => value.Parameter.Name == parameter.Of
                    && value.Parameter.Kind == ParameterKind.ScenarioFile);
                return owner is not null && Read(owner.Value, folder).Scenario is { } scenario ? Of(scenario, parameter) : [];
            case ParameterKind.Places:
                return BuildOf(parameter, values, folder) is { } chosen
                    ? [.. MovedPlaces.Of(chosen.Scenario, chosen.Build)
                        .Select(part => new ParameterChoice(part.Name, part.Title,
                        "") { Stretch = new(part.Range.Least.Millimeters, part.Range.Greatest.Millimeters,
                        part.At.Millimeters) })]
                    : [];
            default:
                return [];
        }
    }

    /// <summary>The scenario and the build whose things a parameter moves; null where either is not to be had, or nothing of the
    /// build has a place.</summary>
    public (Scenario Scenario, string Build)? BuildOf(NotebookParameter places,
        IReadOnlyList<ParameterValue> values, string folder)
    {
        var build = values.FirstOrDefault(value => value.Parameter.Name == places.Of
            && value.Parameter.Kind == ParameterKind.Build);
        var file = values.FirstOrDefault(value => value.Parameter.Name == build?.Parameter.Of
            && value.Parameter.Kind == ParameterKind.ScenarioFile);
        if (build is null || file is null || Read(file.Value, folder).Scenario is not { } scenario
            || !scenario.Builds.ContainsKey(build.Value))
            return null;
        try
        {
            _ = MovedPlaces.Of(scenario, build.Value);
            return (scenario, build.Value);
        }
        catch (ScenarioProblemsException)
        {
            // What is wrong with the build is told by the cell that asks for its balance.
            return null;
        }
    }

    private static IReadOnlyList<ParameterChoice> Of(Scenario scenario, NotebookParameter parameter) => parameter.Kind switch
    {
        ParameterKind.Build =>
            [.. scenario.Builds.Select(build => new ParameterChoice(build.Key, build.Value.Title ?? build.Key, ""))],
        ParameterKind.Day =>
        [
            .. parameter.TakesAll ? (ParameterChoice[])[new(NotebookParameter.AllDays, "All days, one after the other", "")] : [],
            .. scenario.Days.Select(day => new ParameterChoice(day.Key, day.Value.Title ?? day.Key, "")),
        ],
        _ =>
        [
            .. scenario.PartIds.Select(id => (id, part: scenario.FindPart(id)!))
                .Where(item => ChoiceFormat<PartKind>.Word(item.part.Kind) == parameter.PartKind)
                .Select(item => new ParameterChoice(item.id, item.part.Name, Detail(item.part))),
        ],
    };

    private static string Detail(Part part) => string.Join(", ", new[]
    {
        part.Battery is { } battery ? QuantityText.Write(battery.Energy) : null,
        part.Mass is { } mass ? QuantityText.Write(mass) : null,
        part.Power?.Record is { } power ? QuantityText.Write(power) : null,
        part.Buy?.ToString(),
    }.Where(text => text is not null));
}
