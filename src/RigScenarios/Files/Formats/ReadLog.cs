using RigScenarios.Scenarios;
namespace RigScenarios.Files.Formats;

/// <summary>
/// Collects the problems of one file while it is read, and remembers where each field stood, so that a later check
/// (a name that refers to nothing) can point at the line.
/// </summary>
public sealed class ReadLog(string file)
{
    /// <summary>More problems than this of one file help nobody; the rest are counted.</summary>
    private const int MostProblems = 200;

    private readonly List<Diagnostic> problems = [];
    private readonly Dictionary<string, TextPlace> places = new(StringComparer.Ordinal);
    private int untold;

    /// <summary>The file, as the user named it.</summary>
    public string File { get; } = file;

    /// <summary>All problems so far, in the order of the file.</summary>
    public IReadOnlyList<Diagnostic> Problems => untold == 0
        ? Sorted()
        : [.. Sorted(), new Diagnostic(Severity.Error, File, TextPlace.None, "", $"{untold} more problems are not listed.")];

    /// <summary>Whether a problem that stops the work was found.</summary>
    public bool HasErrors => untold > 0 || problems.Exists(problem => problem.Severity == Severity.Error);

    /// <summary>The nearest valid name for a message; null also where the log is full, so that a file of slips costs no more than
    /// its first ones.</summary>
    public string? Nearest(string word, IEnumerable<string> candidates) =>
        problems.Count < MostProblems ? NearestName.To(word, candidates) : null;

    /// <summary>Whether an error was noted for a field or inside it, so that what only follows from it is not told too.</summary>
    public bool HasErrorIn(string path) =>
        problems.Exists(problem => problem.Severity == Severity.Error && problem.Path.StartsWith(path, StringComparison.Ordinal)
            && (problem.Path.Length == path.Length || problem.Path[path.Length] == '.'));

    /// <summary>Remembers where a field stands.</summary>
    public void Place(string path, TextPlace at) => places[path] = at;

    /// <summary>The place of a field, or of the nearest field around it that has one.</summary>
    public TextPlace PlaceOf(string path)
    {
        for (var part = path; part.Length > 0;)
        {
            if (places.TryGetValue(part, out var at))
                return at;
            var dot = part.LastIndexOf('.');
            part = dot < 0 ? "" : part[..dot];
        }
        return places.GetValueOrDefault("");
    }

    /// <summary>Notes an error at a place.</summary>
    public void Error(TextPlace at, string path, string problem, string? accepted = null, string? nearest = null) =>
        Add(new Diagnostic(Severity.Error, File, at, path, problem, accepted, nearest));

    /// <summary>Notes an error at the place of the field.</summary>
    public void Error(string path, string problem, string? accepted = null, string? nearest = null) =>
        Error(PlaceOf(path), path, problem, accepted, nearest);

    /// <summary>Notes something worth a look at the place of the field.</summary>
    public void Warning(string path, string problem) =>
        Add(new Diagnostic(Severity.Warning, File, PlaceOf(path), path, problem));

    private void Add(Diagnostic problem)
    {
        if (problems.Count < MostProblems)
            problems.Add(problem);
        else if (problem.Severity == Severity.Error)
            untold++;
    }

    private List<Diagnostic> Sorted() => [.. problems.OrderBy(problem => problem.At.Line).ThenBy(problem => problem.At.Column)];
}
