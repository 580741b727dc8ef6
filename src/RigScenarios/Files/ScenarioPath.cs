using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>
/// Fields of a scenario by the path that they have in its file, such as <c>builds.tripod.battery.charge</c>. Parts of the parts
/// files have paths too (<c>parts.brick-190wh.battery.energy</c>): changing one makes a copy that belongs to the scenario.
/// </summary>
public static class ScenarioPath
{
    private const string PartsStep = "parts";
    private const string PartsFromStep = "parts-from";
    private const int LongestPath = 1000;

    /// <summary>The scenario with one field set to a text, as if its file said so.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="path">The field.</param>
    /// <param name="text">The value with its unit.</param>
    /// <exception cref="ScenarioProblemsException">There is no such field, the value is not accepted, or the scenario is no
    /// longer sound with it.</exception>
    public static Scenario Set(Scenario scenario, string path, string text) => SetAll(scenario, [(path, text)]);

    /// <summary>The scenario with several fields set; it is checked once, with all of them in place.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="changes">Fields with their values.</param>
    /// <exception cref="ScenarioProblemsException">As for <see cref="Set"/>; carries the problems of all changes.</exception>
    public static Scenario SetAll(Scenario scenario, IEnumerable<(string Path, string Text)> changes) =>
        SetAll(scenario, changes, isKnownSound: false);

    /// <summary>The same, where it may be known that the fields fit together: then only the values themselves are
    /// checked.</summary>
    internal static Scenario SetAll(Scenario scenario, IEnumerable<(string Path, string Text)> changes, bool isKnownSound)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(changes);
        var log = new ReadLog("");
        foreach (var (path, text) in changes)
            scenario = SetOne(scenario, path, text, log);
        if (!log.HasErrors && !isKnownSound)
        {
            // The same checks that a file gets: a changed part of the library stands among the scenario's own by now.
            PartCheck.Run(scenario.Parts, PartsStep, log);
            ScenarioCheck.Run(scenario, log);
        }
        return log.HasErrors
            ? throw new ScenarioProblemsException([.. log.Problems.Where(problem => problem.Severity == Severity.Error)])
            : scenario;
    }

    /// <summary>The paths of all fields with a number that a scenario has, with their values: what a sweep can move.</summary>
    public static IReadOnlyList<(string Path, string Text)> NumericFields(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var used = scenario.Kit.Values.Select(item => item.Part).ToHashSet();
        var library = scenario.Library.Where(part => used.Contains(part.Key) && !scenario.Parts.ContainsKey(part.Key));
        return [.. ScenarioFormat.Whole.NumericFields(scenario, ""),
            .. library.SelectMany(part => PartFormat.Whole.NumericFields(part.Value, $"{PartsStep}.{part.Key}"))];
    }

    /// <summary>The text of a field with a number; null if the scenario has no such field or it has no value.</summary>
    public static string? Find(Scenario scenario, string path) =>
        NumericFields(scenario).FirstOrDefault(field => field.Path == path) is { Path: not null } found ? found.Text : null;

    private static Scenario SetOne(Scenario scenario, string path, string text, ReadLog log)
    {
        if (path.Length > LongestPath)
        {
            log.Error(path[..57] + "...", $"This is longer than the {LongestPath} characters that a path has at most.");
            return scenario;
        }
        var steps = path.Split('.');
        if (steps[0] == PartsFromStep)
        {
            log.Error(path, "Parts are read together with the file, so that another place for them can't be set for one run.",
                $"\"{PartsFromStep}\" in the file itself, or \"parts.NAME={{…}}\" for one part");
            return scenario;
        }
        if (steps.Length > 1 && steps[0] == PartsStep && !scenario.Parts.ContainsKey(steps[1])
            && scenario.Library.TryGetValue(steps[1], out var shared))
            scenario = scenario with { Parts = scenario.Parts.With(steps[1], shared) };
        else if (steps.Length > 1 && steps[0] == PartsStep && !scenario.Parts.ContainsKey(steps[1]))
        {
            log.Error(path, $"There is no part \"{steps[1]}\".", null, log.Nearest(steps[1], scenario.PartIds));
            return scenario;
        }
        if (steps is ["builds", var build, "places", var thing, _] && scenario.Builds.TryGetValue(build, out var chosen)
            && !chosen.Places.ContainsKey(thing) && chosen.Things.Contains(thing))
            scenario = scenario with { Builds = scenario.Builds.With(build, WithUsualPlace(scenario, chosen, thing)) };
        if (NodeOf(text, path, log) is not { } node)
            return scenario;
        return ScenarioFormat.Whole.TrySet(scenario, steps, node, path, log, out var changed) ? changed : scenario;
    }

    /// <summary>The value as a file would hold it: in braces a whole group, in brackets a list, else plain text; null if it can't
    /// be read.</summary>
    private static FileNode? NodeOf(string text, string path, ReadLog log)
    {
        if (text.TrimStart() is not ['{' or '[', ..])
            return new TextNode(text, TextPlace.None);
        var inside = new ReadLog("");
        if (YamlTree.Read($"value: {text}", inside) is { Entries: [{ Value: var node }] })
            return Unplaced(node);
        foreach (var problem in inside.Problems)
            log.Error(path, problem.Problem, problem.Accepted);
        return null;
    }

    /// <summary>A place in a text that no file holds would mislead.</summary>
    private static FileNode Unplaced(FileNode node) => node switch
    {
        MapNode map =>
            new MapNode([.. map.Entries.Select(entry => new MapEntry(entry.Key, TextPlace.None, Unplaced(entry.Value)))],
            TextPlace.None),
        ListNode list => new ListNode([.. list.Items.Select(Unplaced)], TextPlace.None),
        _ => node with { At = TextPlace.None },
    };

    /// <summary>A thing without a place stands where things of its kind usually do: a change starts from there.</summary>
    private static Build WithUsualPlace(Scenario scenario, Build build, string thing)
    {
        try
        {
            return BuildInPlace.Of(build, scenario.PartOf).Places.TryGetValue(thing, out var place)
                ? build with { Places = build.Places.With(thing, place) } : build;
        }
        catch (ArgumentException)
        {
            // What is wrong with the build is told by the check that follows.
            return build;
        }
    }
}
