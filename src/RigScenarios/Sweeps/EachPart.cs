using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps;

/// <summary>An axis in words: <c>each battery in the library</c>, <c>each lens in the kit</c>, <c>each fitting battery in the
/// library</c>.</summary>
internal static class EachPart
{
    /// <summary>The word that such an axis begins with.</summary>
    public const string Word = "each ";

    /// <summary>How such an axis is written.</summary>
    public const string Accepted = "\"each KIND in the library\" for the parts of a kind that the scenario can name, or \"each "
        + "KIND in the kit\" for what is had of it, such as \"kit.brick.part=each battery in the library\"; \"each fitting "
        + "KIND\" leaves out what the scenario doesn't take";

    private const string Fitting = "fitting ";

    private static readonly string[] Places = [" in the library", " in the kit"];

    /// <summary>The names of the parts, or of the things in the kit.</summary>
    /// <param name="scenario">The scenario with its library.</param>
    /// <param name="path">The field, for messages.</param>
    /// <param name="words">What stands behind the path.</param>
    /// <exception cref="ScenarioProblemsException">There is no such kind or place, or nothing of it.</exception>
    public static IReadOnlyList<string> In(Scenario scenario, string path, string words)
    {
        var rest = words[Word.Length..].Trim();
        var fitting = rest.StartsWith(Fitting, StringComparison.OrdinalIgnoreCase);
        rest = fitting ? rest[Fitting.Length..].TrimStart() : rest;
        var place = Array.Find(Places, one => rest.EndsWith(one, StringComparison.OrdinalIgnoreCase));
        var word = (place is null ? rest : rest[..^place.Length]).Trim().Replace(' ', '-').ToLowerInvariant();
        var kinds = Enum.GetValues<PartKind>().ToDictionary(ChoiceFormat<PartKind>.Word);
        if (!kinds.TryGetValue(word, out var kind))
            throw Problem(path, $"There is no kind of part \"{word}\".", string.Join(", ", kinds.Keys),
                NearestName.To(word, kinds.Keys));
        if (place is null)
            throw Problem(path, $"\"{words}\" doesn't say where from.", Accepted);
        string[] names = place == Places[0]
            ? [.. scenario.PartIds.Where(id => scenario.FindPart(id)?.Kind == kind)]
            : [.. scenario.Kit.Where(item => scenario.FindPart(item.Value.Part)?.Kind == kind).Select(item => item.Key)];
        if (names.Length == 0)
            throw Problem(path, $"There is no {word}{place}.");
        return fitting ? OfThese(scenario, path, names) : names;
    }

    /// <summary>Those that the scenario takes.</summary>
    /// <exception cref="ScenarioProblemsException">It takes none; carries why not.</exception>
    private static List<string> OfThese(Scenario scenario, string path, string[] names)
    {
        var taken = new List<string>();
        var problems = new List<Diagnostic>();
        foreach (var name in names)
        {
            try
            {
                ScenarioPath.Set(scenario, path, name);
                taken.Add(name);
            }
            catch (ScenarioProblemsException exception)
            {
                problems.AddRange(exception.Problems.Except(problems));
            }
        }
        return taken.Count > 0 ? taken : throw new ScenarioProblemsException(problems);
    }

    private static ScenarioProblemsException Problem(
        string path, string problem, string? accepted = null, string? nearest = null) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, path, problem, accepted, nearest)]);
}
