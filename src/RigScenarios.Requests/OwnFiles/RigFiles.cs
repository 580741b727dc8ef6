using System.Text;
using RigScenarios.Answers.Classes;
using RigScenarios.Files;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Settings;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.OwnFiles;

/// <summary>The scenario files that the page may read, and the one folder where it may write.</summary>
internal sealed class RigFiles(RequestOptions options)
{
    public const string Own = "own";
    public const string Samples = "samples";

    private readonly NamedFolder own = new(options.OwnFolder);
    private readonly NamedFolder samples = new(Path.Combine(options.DataFolder, "scenarios"));

    private readonly PartsReach reach = new(options.OwnFolder, options.DataFolder);

    // Two pages that save at once would both find the file unchanged.
    private readonly Lock writing = new();

    /// <summary>The folder of the parts that came with the program.</summary>
    public string PartsFolder { get; } = Path.Combine(options.DataFolder, "parts");

    /// <summary>The parts files that were read: the same ones serve the form and the scenarios.</summary>
    public KnownParts KnownParts { get; } = new();

    /// <summary>The folder of own files.</summary>
    public string OwnFolder => options.OwnFolder;

    /// <summary>The folder of the samples that came with the program.</summary>
    public string SamplesFolder { get; } = Path.Combine(options.DataFolder, "scenarios");

    /// <summary>The folder of own files in words for people; null where they lie in none.</summary>
    public string? ShownFolder => options.OwnFolderInWords;

    /// <summary>The names of the files in which tasks for a class are kept.</summary>
    public IEnumerable<string> TaskNames => own.Names().Where(ClassTaskFile.IsTaskName);

    /// <summary>All scenario files: own ones first.</summary>
    public IEnumerable<RigFile> All(CancellationToken cancellation) =>
        Files(Own, own, cancellation).Concat(Files(Samples, samples, cancellation));

    /// <summary>A file's text.</summary>
    /// <param name="folder">"own" or "samples".</param>
    /// <param name="name">A file's name.</param>
    /// <exception cref="ProblemException">There is no such file, or it isn't text.</exception>
    public RigText Read(string folder, string name)
    {
        var path = (folder switch { Own => own, Samples => samples, _ => null })?.Find(name)
            ?? throw new ProblemException(ReplyStatus.NotFound,
                [new Problem($"There is no scenario file \"{Short(name)}\" here.", Nearest: NearestName.To(name, own.Names()))]);
        return new RigText(folder, name, path, TextOf(path));
    }

    /// <summary>A file's text by its name with the folder, such as <c>own/my-rig.yaml</c>.</summary>
    /// <exception cref="ProblemException">There is no such file, or it isn't text.</exception>
    public RigText Read(string id)
    {
        var slash = id.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? Read("", id) : Read(id[..slash], id[(slash + 1)..]);
    }

    /// <summary>Reads a text as the scenario file that it is meant for.</summary>
    /// <param name="text">The text, which may not be saved yet.</param>
    /// <param name="id">The file's name with the folder, or null for a new one.</param>
    public (Scenario? Scenario, IReadOnlyList<Problem> Problems) Check(string text, string? id)
    {
        var known = id?.Split('/') is [var folder, var name]
            ? (folder switch { Own => own, Samples => samples, _ => null })?.Find(name) : null;
        var path = known ?? Path.Combine(options.OwnFolder, "new.yaml");
        if (reach.Problems(text, path, known is null ? null : TextFile.TryRead(known).Text) is { Count: > 0 } outside)
            return (null, outside);
        var (scenario, problems) = ScenarioFile.TryReadText(text, path, KnownParts);
        return (scenario, Problem.Of(problems, path));
    }

    /// <summary>Writes an own file, unless that would take away what someone else wrote.</summary>
    /// <param name="name">The file's name.</param>
    /// <param name="text">Its text.</param>
    /// <param name="version">What the file was when it was opened; null for a new file.</param>
    /// <param name="replace">Whether a file that is there may be written over, whatever it holds.</param>
    /// <exception cref="ProblemException">The name is none, the file is there already, or it changed meanwhile.</exception>
    public RigText Write(string name, string text, string? version, bool replace)
    {
        if (Encoding.UTF8.GetByteCount(text) > options.Limits.LargestFileBytes)
            throw new ProblemException(ReplyStatus.TooLarge, "The text is larger than a scenario file may be.");
        if (text.AsSpan().ContainsAny('\0', '\uFFFE', '\uFFFF'))
            throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem("The text holds characters that no text file has.", "text")]);
        var path = own.Place(name)
            ?? throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem($"\"{Short(name)}\" can't be the name of a scenario file here.", "name", NamedFolder.Accepted)]);
        lock (writing)
        {
            if (reach.Problems(text, path, Path.Exists(path) ? TextFile.TryRead(path).Text : null) is { Count: > 0 } outside)
                throw new ProblemException(ReplyStatus.BadRequest, outside);
            if (!replace)
                MustBeUnchanged(name, path, version);
            TextFile.Write(path, text);
        }
        return new RigText(Own, name, path, text);
    }

    private static void MustBeUnchanged(string name, string path, string? version)
    {
        if (version is null)
        {
            if (Path.Exists(path))
                throw Conflict($"There is a file \"{name}\" already. Take another name, or say that it may be written over.");
            return;
        }
        if (!Path.Exists(path))
            throw Conflict($"\"{name}\" was deleted or renamed since it was opened here. Save it under a new name, or say "
                + "that it may be written.");
        if (RigText.VersionOf(TextOf(path)) != version)
            throw Conflict($"\"{name}\" was changed elsewhere since it was opened here. Open it again to see that version, or "
                + "say that it may be written over.");
    }

    private static ProblemException Conflict(string text) => new(ReplyStatus.Conflict, [new Problem(text, "name")]);

    private static IEnumerable<RigFile> Files(string folder, NamedFolder named, CancellationToken cancellation)
    {
        foreach (var name in named.Names())
        {
            cancellation.ThrowIfCancellationRequested();
            if (ClassTaskFile.IsTaskName(name) || named.Find(name) is not { } path || ScenarioFile.IsPartsFile(path))
                continue;
            var (scenario, errors) = Look(path);
            // Other programs keep .yaml files too: what doesn't say that it is a scenario isn't shown.
            if (scenario is null && !SaysScenario(path))
                continue;
            yield return new RigFile(folder, name, scenario is { Title.Length: > 0 } ? scenario.Title
                : Path.GetFileNameWithoutExtension(name), errors);
        }
    }

    /// <summary>A file as the shelf shows it: its scenario, or how many errors it has.</summary>
    private static (Scenario? Scenario, int Errors) Look(string path)
    {
        try
        {
            var (scenario, problems) = ScenarioFile.TryRead(path);
            return (scenario, problems.Count(problem => problem.Severity == Severity.Error));
        }
#pragma warning disable CA1031 // A file that the reader fails on must not take the others of its folder with it.
        catch (Exception)
#pragma warning restore CA1031
        {
            return (null, 1);
        }
    }

    private static bool SaysScenario(string path) =>
        File.ReadLines(path).Take(200).Any(line => line.TrimStart('\uFEFF').StartsWith("rigscenarios", StringComparison.Ordinal));

    private static string TextOf(string path) => TextFile.TryRead(path) switch
    {
        ({ } text, _) => text,
        (_, var problems) => throw new ProblemException(ReplyStatus.BadRequest, Problem.Of(problems)),
    };

    private static string Short(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");
}
