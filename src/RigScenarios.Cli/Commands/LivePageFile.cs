using System.Runtime.CompilerServices;
using RigScenarios.Files;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Page.Saved;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary>Writes a notebook as one page with the library in it, so that its controls answer.</summary>
internal static class LivePageFile
{
    /// <summary>Where the page goes, and what it is made of.</summary>
    /// <param name="Path">The file, with its full path.</param>
    /// <param name="Shown">The file as it was named.</param>
    /// <param name="BrowserFiles">A published browser build with cells; null to find or make one.</param>
    public sealed record Target(string Path, string Shown, string? BrowserFiles);

    /// <summary>Writes the page.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="values">Values of its parameters, as somebody wrote them.</param>
    /// <param name="target">Where it goes.</param>
    /// <param name="clock">Tells what day it is.</param>
    /// <param name="cancellation">Stops it; nothing is written.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="NotebookInputException">The notebook, or a value, can't be used.</exception>
    /// <exception cref="IOException">The library for browsers is not to be had; it says why.</exception>
    // Not inlined: the pages' types are loaded only when such a page is made, so that the others start as fast as without it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static async Task<int> WriteAsync(Notebook notebook, IReadOnlyDictionary<string, string> values, Target target,
        TimeProvider clock, CancellationToken cancellation)
    {
        if (WhyNot(notebook) is { } why)
            throw new NotebookInputException(
                [$"{notebook.FileName}: {why} Without --live it is written as a page with its results."]);
        // The same one, where what it names lies beside it.
        notebook = NotebookFile.Load(Shipped(notebook));
        var data = ShippedFolder.Of("data");
        var (given, own) = AsOnAPage(notebook, values, Path.Combine(data, "scenarios"));
        var library = await LibraryAsync(target.BrowserFiles, Console.Error, cancellation);
        var (recorder, lines) = (new ConversationRecorder(data, clock), new Lines(Console.Error, notebook.FileName));
        var conversation = await InItsFolderAsync(notebook,
            () => recorder.RecordAsync(notebook, given, own, lines, cancellation));
        if (conversation.Failure is { } failure)
        {
            ErrorText.Lines($"error: {failure}");
            return ExitCodes.Failed;
        }
        var html = AnsweringPage.Of(conversation, library, typeof(LivePageFile).Assembly.GetName().Version!.ToString(3));
        cancellation.ThrowIfCancellationRequested();
        TextFile.Write(target.Path, html);
        foreach (var answer in conversation.Answers)
            await Console.Out.WriteLineAsync(answer);
        await Console.Out.WriteLineAsync($"Page: {ShownText.Of(target.Shown)} "
            + $"({AnsweringPage.InMegabytes(new FileInfo(target.Path).Length)}; its controls answer, also without a network)");
        return ExitCodes.Done;
    }

    /// <summary>Why no page of a notebook can answer by itself, in whole sentences; null where one can.</summary>
    public static string? WhyNot(Notebook notebook)
    {
        if (notebook.NeedsProgram is { } why)
            return $"Its controls answer only in the program on a computer. {why}";
        var shipped = Shipped(notebook);
        var isShipped = File.Exists(shipped)
            && File.ReadAllBytes(shipped).AsSpan().SequenceEqual(File.ReadAllBytes(notebook.FilePath));
        return isShipped ? null : "The library for browsers holds the cells of the notebooks that came with the program, as they "
            + "came; this one is another, or was changed, and no browser has a compiler for it.";
    }

    private static string Shipped(Notebook notebook) => Path.Combine(ShippedFolder.Of("notebooks"), notebook.FileName);

    /// <summary>The folder with the library for browsers and the cells of all notebooks that answer there.</summary>
    /// <param name="given">The folder that was named; null for none.</param>
    /// <param name="told">Gets a line of what takes long.</param>
    /// <param name="cancellation">Stops the making, too.</param>
    /// <exception cref="IOException">It is not to be had; it says why.</exception>
    public static async Task<string> LibraryAsync(string? given, TextWriter told, CancellationToken cancellation) =>
        await BrowserBuild.FindForNotebooksAsync(given, Answering(), told, cancellation)
            ?? throw new IOException("The library with the cells of notebooks is not beside the program, and the program does "
                + "not run from its sources. Install the packed tool, or run it from a checkout.");

    private static IReadOnlyList<Notebook> Answering() =>
        [.. Directory.EnumerateFiles(ShippedFolder.Of("notebooks"), "*.ipynb").Order(StringComparer.Ordinal)
            .Select(NotebookFile.Load).Where(notebook => notebook.NeedsProgram is null)];

    /// <summary>The values as a page would send them, and the reader's own scenario files among them: the page takes those along,
    /// each with the parts that it names.</summary>
    private static (Dictionary<string, string> Given, Dictionary<string, string> Own) AsOnAPage(Notebook notebook,
        IReadOnlyDictionary<string, string> values, string samples)
    {
        var (given, own) = (new Dictionary<string, string>(StringComparer.Ordinal),
            new Dictionary<string, string>(StringComparer.Ordinal));
        foreach (var value in notebook.Parameters.Resolve(values).Where(value => value.IsGiven))
        {
            given[value.Parameter.Name] = value.Value;
            if (value.Parameter.Kind != ParameterKind.ScenarioFile || value.Value == value.Parameter.Default)
                continue;
            var name = Path.GetFileName(value.Value);
            if (Path.GetDirectoryName(value.Value) == samples)
            {
                given[value.Parameter.Name] = $"samples/{name}";
                continue;
            }
            name = ScenarioFileName.Is(name) ? name : "my-rig.yaml";
            own[name] = ScenarioFile.Text(ScenarioFile.Read(value.Value).SelfContained());
            given[value.Parameter.Name] = $"own/{name}";
        }
        return (given, own);
    }

    // Cells name files relative to their notebook's folder.
    private static async Task<T> InItsFolderAsync<T>(Notebook notebook, Func<Task<T>> work)
    {
        var folder = Environment.CurrentDirectory;
        Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
        try
        {
            return await work();
        }
        finally
        {
            Environment.CurrentDirectory = folder;
        }
    }

    /// <summary>A line of what is done, on standard error as it was before a notebook took the console.</summary>
    private sealed class Lines(TextWriter console, string notebook) : IProgress<string>
    {
        public void Report(string value) => console.WriteLine(ShownText.Of($"{notebook}: {value}"));
    }
}
