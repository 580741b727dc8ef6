using System.CommandLine;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>The words that all commands on a scenario share: the file, the build, the day, the changes.</summary>
internal sealed class ScenarioOptions
{
    private readonly Argument<string> file = new("SCENARIO") { Description = "The scenario file." };
    private readonly Option<string?> build = new("--build") { Description = "Only this build, by its short name.", HelpName = "NAME" };
    private readonly Option<string?> day = new("--day") { Description = "Only this day, by its short name.", HelpName = "NAME" };
    private readonly Option<string[]> set = new("--set")
    {
        Description = "Change a field for this run, by its path in the file; may be given several times. Example: --set \"builds.tripod.battery.capacity-left=80 %\"",
        HelpName = "PATH=VALUE",
        DefaultValueFactory = _ => [],
    };

    public void AddTo(Command command)
    {
        AddFileTo(command);
        command.Add(build);
        command.Add(day);
    }

    /// <summary>Only the file and the changes, for a command that is about no build and no day.</summary>
    public void AddFileTo(Command command)
    {
        command.Add(file);
        command.Add(set);
    }

    /// <summary>The same for commands that ask about no day.</summary>
    public void AddWithoutDayTo(Command command)
    {
        command.Add(file);
        command.Add(build);
        command.Add(set);
    }

    /// <summary>The scenario with its changes; warnings go to standard error.</summary>
    public Scenario Read(ParseResult parsed)
    {
        var (scenario, problems) = ScenarioFile.TryRead(parsed.GetRequiredValue(file));
        if (scenario is null)
            throw new ScenarioProblemsException(problems);
        foreach (var warning in problems)
            Console.Error.WriteLine(warning);
        return ScenarioPath.SetAll(scenario, Changes(parsed.GetRequiredValue(set)));
    }

    /// <summary>The builds that are asked about: all, or the one that was named.</summary>
    public IReadOnlyList<string> Builds(ParseResult parsed, Scenario scenario) => [.. Named(scenario.Builds, parsed.GetValue(build), "build")];

    /// <summary>Pairs of build and day to run: all, or those that were named.</summary>
    public IReadOnlyList<(string Build, string Day)> Pairs(ParseResult parsed, Scenario scenario)
    {
        var builds = Named(scenario.Builds, parsed.GetValue(build), "build");
        var days = Named(scenario.Days, parsed.GetValue(day), "day");
        return [.. builds.SelectMany(name => days.Select(other => (name, other)))];
    }

    /// <summary>Splits <c>PATH=VALUE</c> texts.</summary>
    internal static IReadOnlyList<(string Path, string Text)> Changes(IEnumerable<string> texts)
    {
        var changes = new List<(string, string)>();
        var problems = new List<Diagnostic>();
        foreach (var text in texts)
        {
            var equals = text.IndexOf('=', StringComparison.Ordinal);
            if (equals > 0)
                changes.Add((text[..equals].Trim(), text[(equals + 1)..].Trim()));
            else
                problems.Add(new Diagnostic(Severity.Error, "", TextPlace.None, "--set", $"Found \"{text}\".", "PATH=VALUE, such as \"days.day-one.ambient=-10 °C\""));
        }
        return problems.Count > 0 ? throw new ScenarioProblemsException(problems) : changes;
    }

    private static IEnumerable<string> Named<T>(OrderedMap<T> things, string? name, string what)
        where T : notnull =>
        name is null ? things.Keys
        : things.ContainsKey(name) ? [name]
        : throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, $"--{what}", $"The scenario has no {what} \"{name}\".", string.Join(", ", things.Keys), NearestName.To(name, things.Keys))]);
}
