using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Benchmarks.Cases.Days;

/// <summary>A scenario file whose days are a case; its name without its ending is the case's.</summary>
internal sealed record DayCase(string Id, Scenario Scenario)
{
    /// <summary>The scenario files of a folder in the order of their names; files of parts are passed over.</summary>
    /// <exception cref="CaseFileException">There is no such folder, it has no scenario, or one cannot be read.</exception>
    public static IReadOnlyList<DayCase> In(string folder)
    {
        if (!Directory.Exists(folder))
            throw new CaseFileException($"{folder}: there is no such folder; accepted: one with scenario files (*.yaml).");
        var problems = new List<string>();
        var cases = new List<DayCase>();
        foreach (var file in Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Where(IsScenario))
        {
            var (scenario, found) = ScenarioFile.TryRead(file);
            if (scenario is null)
                problems.AddRange(found.Where(one => one.Severity == Severity.Error).Select(one => one.ToString()));
            else if (scenario.Builds.Count != 1)
                problems.Add($"{file}, builds: has {scenario.Builds.Count}; accepted: one.");
            else
                cases.Add(new DayCase(Path.GetFileNameWithoutExtension(file), WithoutRule(scenario)));
        }

        if (cases.Count == 0 && problems.Count == 0)
            problems.Add($"{folder}: has no scenario file; accepted: *.yaml that begin with \"rigscenarios: scenario 1\".");
        return problems.Count == 0 ? cases : throw new CaseFileException(string.Join(Environment.NewLine, problems));
    }

    // In a case nothing is assumed (its format page): a battery whose growth is not written has none.
    private static Scenario WithoutRule(Scenario scenario) => scenario with
    {
        Batteries = new(scenario.Batteries.Select(one => KeyValuePair.Create(one.Key,
            one.Value with { ResistanceGrowth = one.Value.ResistanceGrowth ?? 1 }))),
        Builds = new(scenario.Builds.Select(one => KeyValuePair.Create(one.Key, one.Value with
        {
            Battery = one.Value.Battery with { ResistanceGrowth = one.Value.Battery.ResistanceGrowth ?? 1 },
        }))),
    };

    private static bool IsScenario(string file) =>
        File.ReadLines(file).Any(line => line.StartsWith("rigscenarios: scenario", StringComparison.Ordinal));
}
