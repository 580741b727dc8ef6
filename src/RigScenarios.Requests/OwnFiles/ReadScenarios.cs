using RigScenarios.Requests.Messages;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.OwnFiles;

/// <summary>The scenarios of files that were read last: each is kept as long as neither its file nor a parts file that it names
/// changes, so that who asks again gets the same one.</summary>
internal sealed class ReadScenarios(RigFiles files)
{
    private const int Most = 8;

    private readonly Lock gate = new();
    private readonly List<(string Key, Scenario Scenario)> known = [];

    /// <summary>The scenario of a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="who">Who wants it, as the first words of a sentence: "The form".</param>
    /// <exception cref="ProblemException">The file has errors.</exception>
    public Scenario Read(RigText file, string who)
    {
        lock (gate)
        {
            if (known.Find(last => last.Key == Key(file, last.Scenario)) is { Scenario: { } kept })
                return kept;
        }
        var (scenario, problems) = files.Check(file.Text, file.Id);
        if (scenario is null)
            throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem($"{who} can open {file.Name} only when it has no errors. Open it as text to put them right."),
                .. problems]);
        lock (gate)
        {
            known.Add((Key(file, scenario), scenario));
            if (known.Count > Most)
                known.RemoveAt(0);
        }
        return scenario;
    }

    private static string Key(RigText file, Scenario scenario) => string.Join('\n',
        [file.Id, file.Version, .. scenario.PartsFrom.SelectMany(from =>
            FilesOf(Path.GetFullPath(from, Path.GetDirectoryName(file.Path)!)))
            .Select(path => $"{path} {File.GetLastWriteTimeUtc(path).Ticks}")]);

    private static IEnumerable<string> FilesOf(string path) =>
        Directory.Exists(path) ? Directory.EnumerateFiles(path).Order(StringComparer.Ordinal) : [path];
}
