using System.Text;
using System.Text.Json;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Mutations;

/// <summary>What came of a file.</summary>
internal enum TrialEnd
{
    /// <summary>It was refused with its problems.</summary>
    Refused,

    /// <summary>It was read, and refused where it was to be answered.</summary>
    RefusedLate,

    /// <summary>It was answered.</summary>
    Answered,

    /// <summary>The time that a file is given was over; it stopped when it was told to.</summary>
    Stopped,
}

/// <summary>What came of a file, and what is wrong with that.</summary>
/// <param name="End">What came of it.</param>
/// <param name="Words">What it was refused with, or what the commands print of it.</param>
/// <param name="Fault">What no file may lead to; null where nothing is wrong.</param>
internal sealed record TrialResult(TrialEnd End, string Words, string? Fault = null);

/// <summary>
/// Takes files through the doors of the commands: read, checked, asked for help, answered, and shown in every face. Whatever a
/// file holds, it is refused in plain words or answered in finite figures, in bounded time.
/// </summary>
internal sealed class MutationTrial : IDisposable
{
    /// <summary>What a file is given before it is stopped.</summary>
    private static readonly TimeSpan Time = TimeSpan.FromSeconds(10);

    /// <summary>What it is given to stop, and for what can't be stopped: reading and checking. Many times what they take, so that
    /// a
    /// busy machine fails no test.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly string folder = Directory.CreateTempSubdirectory("rigscenarios-mutations-").FullName;
    // Held here: a long series is not disturbed by whoever works on data/ meanwhile.
    private readonly Dictionary<string, byte[]> originals;
    private int count;

    /// <param name="data">The folder data/ of the checkout.</param>
    public MutationTrial(string data)
    {
        originals = Directory.EnumerateFiles(data, "*.yaml", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(data, file).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
        foreach (var name in originals.Keys)
            Restore(name);
    }

    /// <summary>Tries a file of data/ as it is.</summary>
    /// <param name="name">Its name, such as <c>scenarios/teaching-kit.yaml</c>.</param>
    public TrialResult Unchanged(string name) => Run(name, seeks: false);

    /// <summary>Puts a file in the place of one of data/, tries it, and puts the old one back.</summary>
    /// <param name="file">The file.</param>
    public TrialResult Run(MutatedFile file)
    {
        File.WriteAllBytes(Path.Combine(folder, file.Name), file.Bytes);
        var result = Run(file.Name, seeks: count++ % 10 == 0);
        Restore(file.Name);
        return result;
    }

    /// <summary>Tries a scenario file; it names the parts of data/ as those in data/scenarios do.</summary>
    /// <param name="bytes">The file.</param>
    public TrialResult Run(byte[] bytes)
    {
        var name = Path.Combine("scenarios", "kept.yaml");
        File.WriteAllBytes(Path.Combine(folder, name), bytes);
        return Run(name, seeks: true);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private TrialResult Run(string name, bool seeks)
    {
        using var time = new CancellationTokenSource();
        var trying = Task.Run(() => Try(name, seeks, time));
        return trying.Wait(Time + Patience) ? trying.Result
            : new TrialResult(TrialEnd.Stopped, "", $"It did not end within {(Time + Patience).TotalSeconds} s.");
    }

    private TrialResult Try(string name, bool seeks, CancellationTokenSource time)
    {
        var end = TrialEnd.Refused;
        try
        {
            var path = Path.Combine(folder, name);
            var written = Encoding.UTF8.GetString(File.ReadAllBytes(path));
            Help(written);
            if (ScenarioFile.IsPartsFile(path))
                Told(ScenarioFile.CheckParts(path));
            // A parts file is read as part of a scenario that names it.
            var (scenario, problems) = ScenarioFile.TryRead(name.StartsWith("parts", StringComparison.Ordinal)
                ? Path.Combine(folder, "scenarios", "winter-harbour.yaml") : path);
            Told(problems);
            if (scenario is null)
                return Refused(end, problems);
            end = TrialEnd.RefusedLate;
            if (scenario.Builds.Count == 0 || scenario.Days.Count == 0)
                return new(TrialEnd.Answered, "");
            time.CancelAfter(Time);
            if (!TryAnswer(scenario, time.Token, out var answers, out var late))
            {
                Told(late);
                return Refused(end, late);
            }
            foreach (var json in AllFaces.Json(scenario, answers, seeks, time.Token))
                Finite(json, written);
            var text = AllFaces.Text(scenario, answers, time.Token);
            Readable(text, isPage: true, written);
            return new(TrialEnd.Answered, text);
        }
        catch (OperationCanceledException) when (time.IsCancellationRequested)
        {
            return new(TrialEnd.Stopped, "");
        }
        catch (FaultException fault)
        {
            return new(end, "", fault.Message);
        }
#pragma warning disable CA1031 // Whatever else comes out is what is looked for.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return new(end, "", $"{exception.GetType().Name}: {exception.Message}\n{exception.StackTrace}");
        }
    }

    private static bool TryAnswer(Scenario scenario, CancellationToken cancellation, out IReadOnlyList<RigAnswer> answers,
        out IReadOnlyList<Diagnostic> problems)
    {
        (answers, problems) = ([], []);
        try
        {
            answers = AllFaces.Answers(scenario, cancellation);
            return true;
        }
        catch (ScenarioProblemsException exception)
        {
            problems = exception.Problems;
            return false;
        }
    }

    private static TrialResult Refused(TrialEnd end, IReadOnlyList<Diagnostic> problems) =>
        new(end, string.Join('\n', problems), problems.Count > 0 ? null : "It was refused without a word.");

    // What an editor asks while the text is half typed.
    private static void Help(string text)
    {
        var lines = text.AsSpan().Count('\n');
        foreach (var line in (int[])[1, lines / 2, lines])
            FieldHelp.At(text, Math.Max(line, 1), 5);
        ScenarioFile.PartsFrom(text);
    }

    private static void Told(IReadOnlyList<Diagnostic> problems)
    {
        foreach (var problem in problems)
            Readable(problem.ToString(), isPage: false);
    }

    /// <summary>A text that people read: it says something, and nothing that no one can read.</summary>
    /// <param name="text">The text.</param>
    /// <param name="isPage">Whether it is a whole answer, and not one message.</param>
    /// <param name="written">The file: what is a name there is no figure here.</param>
    internal static void Readable(string text, bool isPage, string written = "")
    {
        if (string.IsNullOrWhiteSpace(text))
            throw new FaultException("A message says nothing.");
        if (text.Contains("something went wrong inside", StringComparison.Ordinal))
            throw new FaultException(text);
        var lines = isPage ? text.Split('\n') : [text];
        if (lines.FirstOrDefault(line => line.TrimEnd('\r').Any(char.IsControl)) is { } raw)
            throw new FaultException($"A control character is shown as it is: {Uri.EscapeDataString(raw)}");
        if (isPage && text.Split([' ', '\n', '(', ')', ','], StringSplitOptions.RemoveEmptyEntries)
            .FirstOrDefault(word => word is "NaN" or "∞" or "-∞" or "Infinity" or "-Infinity"
                && !written.Contains(word, StringComparison.Ordinal)) is { } figure)
            throw new FaultException($"A text shows the figure {figure}.");
    }

    /// <summary>JSON whose figures are all figures.</summary>
    /// <param name="json">The document.</param>
    /// <param name="written">The file: what is a name there is no figure here.</param>
    internal static void Finite(string json, string written = "")
    {
        using var document = JsonDocument.Parse(json);
        var open = new Stack<JsonElement>([document.RootElement]);
        while (open.TryPop(out var element))
        {
            if (element.ValueKind == JsonValueKind.Number && !double.IsFinite(element.GetDouble()))
                throw new FaultException($"A figure is not finite: {element.GetRawText()}");
            if (element.ValueKind == JsonValueKind.String && element.GetString() is "NaN" or "Infinity" or "-Infinity"
                && !written.Contains(element.GetString()!, StringComparison.Ordinal))
                throw new FaultException($"A figure is the text {element.GetString()}.");
            foreach (var inner in element.ValueKind switch
            {
                JsonValueKind.Array => element.EnumerateArray().ToList(),
                JsonValueKind.Object => element.EnumerateObject().Select(field => field.Value).ToList(),
                _ => [],
            })
                open.Push(inner);
        }
    }

    private void Restore(string name)
    {
        var place = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllBytes(place, originals[name]);
    }

    /// <summary>What no file may lead to.</summary>
    private sealed class FaultException(string message) : Exception(message);
}
