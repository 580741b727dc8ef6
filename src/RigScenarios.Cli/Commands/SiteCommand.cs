using System.CommandLine;
using System.Globalization;
using System.IO.Compression;
using System.Runtime.CompilerServices;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Page.Folder;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Commands;

/// <summary><c>site</c>: writes the form, the answer and the notebooks as a folder that runs in a browser by itself.</summary>
internal static class SiteCommand
{
    public static Command Create()
    {
        var output = new Option<string>("--out") { Description = "The folder to write. One of an earlier run is replaced as a "
            + "whole; any other that holds something is left alone.", HelpName = "DIR", Required = true };
        var browser = new Option<string?>("--browser-files") { Description = "A published browser build to take instead of the "
            + "one beside the program, or of making it from the sources: the folder in which boot.js lies.",
            HelpName = "DIR" };
        var forNotebooks = new Option<string?>("--notebook-files") { Description = "The same for the pages of notebooks: a "
            + "browser build with their cells in it.", HelpName = "DIR" };
        var noNotebooks = new Option<bool>("--no-notebooks") { Description =
            "Leave the notebooks out: quicker to make, smaller to load." };
        var command = new Command("site", "Write the form, its answer and the notebooks as a folder for any web server: the "
            + "library runs in the browser, also without a network, and nothing is sent anywhere.")
        {
            output, browser, forNotebooks, noNotebooks,
        };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() => RunAsync(parsed.GetRequiredValue(output),
            parsed.GetValue(browser), parsed.GetValue(forNotebooks), !parsed.GetValue(noNotebooks), cancellation)));
        return command;
    }

    // Not inlined: the pages' types are loaded only when this command runs, so that the others start as fast as without it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static async Task<int> RunAsync(string output, string? browser, string? forNotebooks, bool withNotebooks,
        CancellationToken cancellation)
    {
        if (WholeFolder.Problem(output) is { } problem)
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "--out",
                $"Found \"{output}\". {problem}", "a new folder, or one that an earlier run wrote, such as \"site\"")]);
        // The notebooks' cells name files relative to their folder, which is the process's while they run.
        var target = Path.GetFullPath(output);
        var folder = ShippedFolder.Of("notebooks");
        IReadOnlyList<Notebook> notebooks = withNotebooks
            ? [.. Directory.EnumerateFiles(folder, "*.ipynb").Order(StringComparer.Ordinal).Select(NotebookFile.Load)] : [];
        var answering = notebooks.Where(notebook => notebook.NeedsProgram is null).ToList();
        // Whoever names a build for the form, and none for notebooks, is not made to wait for one.
        var library = answering.Count > 0 && (browser is null || forNotebooks is not null)
            ? await BrowserBuild.FindForNotebooksAsync(forNotebooks, answering, Console.Error, cancellation) : null;
        var content = new FolderContent
        {
            BrowserFolder = await BrowserBuild.FindAsync(browser, Console.Error, cancellation),
            DataFolder = ShippedFolder.Of("data"),
            NotebookBrowserFolder = library,
            NotebookFolder = folder,
            Version = typeof(SiteCommand).Assembly.GetName().Version!.ToString(3),
            Notebooks = await PagesOfAsync(notebooks, cancellation),
            AnsweringNotebooks = library is null ? [] : [.. answering.Select(notebook => notebook.Name)],
        };
        var files = SiteFolder.FilesOf(content);
        WholeFolder.Write(target, files, cancellation);
        Tell(output, files);
        return ExitCodes.Done;
    }

    private static async Task<IReadOnlyList<NotebookAsPage>> PagesOfAsync(IReadOnlyList<Notebook> notebooks,
        CancellationToken cancellation)
    {
        var pages = new List<NotebookAsPage>();
        foreach (var notebook in notebooks)
        {
            var name = notebook.Name;
            Console.Error.WriteLine($"Running notebook {pages.Count + 1} of {notebooks.Count}: {ShownText.Of(name)}");
            var run = await NotebookRunner.RunAsync(notebook,
                new Dictionary<string, string>(StringComparer.Ordinal), null, cancellation);
            if (run.Failure is { } failure)
                throw new IOException($"{name}: {failure}");
            var page = new NotebookAsPage
            {
                Name = name,
                Title = run.Notebook.Title,
                Sentence = run.Notebook.Sentence,
                PictureFile = run.Notebook.PictureFile,
                Page = NotebookPage.Of(run),
            };
            pages.Add(notebook.NeedsProgram is { } why ? page with { WhyItRests = why } : page);
        }
        return pages;
    }

    private static void Tell(string output, IReadOnlyDictionary<string, byte[]> files)
    {
        var (all, compressed) = (files.Values.Sum(file => (long)file.Length), files.Values.Sum(Compressed));
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
            Folder: {ShownText.Of(output)} ({files.Count} files, {all / 1e6:0.0} MB; {compressed / 1e6:0.0} MB compressed)
            A browser starts no program from a plain file. Any web server hands the folder out, such as
              python3 -m http.server 8000 --bind 127.0.0.1 --directory {ShellWord.Of(output)}
            and then http://127.0.0.1:8000/ in the browser. What else serves: {ShownText.Of(Path.Combine(output, "READ-ME.txt"))}
            """));
    }

    private static long Compressed(byte[] content)
    {
        using var counted = new MemoryStream();
        using (var packed = new GZipStream(counted, CompressionLevel.Optimal, leaveOpen: true))
            packed.Write(content);
        return Math.Min(content.Length, counted.Length);
    }
}
