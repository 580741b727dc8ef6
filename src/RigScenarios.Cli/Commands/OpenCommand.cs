using System.CommandLine;
using RigScenarios.Scenarios;
using System.Runtime.CompilerServices;
using RigScenarios.Files;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Page.Settings;
using RigScenarios.Page;

namespace RigScenarios.Cli.Commands;

/// <summary><c>open [FILE]</c>: shows the notebooks as pages that answer, and the form for one's own rig.</summary>
internal static class OpenCommand
{
    /// <summary>The notebook that answers for a rig file.</summary>
    private const string FirstNotebook = "00-will-it-work.ipynb";

    /// <param name="clock">Tells the age of what killed runs left behind.</param>
    public static Command Create(TimeProvider clock)
    {
        var notebook = new Argument<string?>("FILE")
        {
            Description = "A rig file (.yaml): will it work? Or a notebook (.ipynb), with the others of its folder. "
                + "Without it: the shelf.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var folder = new Option<string>("--folder") { Description = "The folder of your own rig files. Without it: the folder "
            + "you are in.", HelpName = "DIR", DefaultValueFactory = _ => "." };
        var port = new Option<int>("--port") { Description = "The port; the next free one where it is taken. 0: any free one.",
            HelpName = "N", DefaultValueFactory = _ => PageOptions.UsualPort };
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, out var number) || number is < 0 or > 65535))
                result.AddError($"--port: found \"{result.Tokens[0].Value}\"; accepted: a whole number from 0 to 65535, such "
                    + $"as {PageOptions.UsualPort}.");
        });
        var listen = new Option<bool>("--listen") { Description =
            "Let other machines on this network open the pages too, such as a phone on the same desk." };
        var noBrowser = new Option<bool>("--no-browser") { Description = "Print the address only; open no browser." };
        var command = new Command("open",
            "Show the notebooks as pages that answer while you drag, and make your own rig in a form.") { notebook, folder, port,
            listen, noBrowser };
        command.SetAction((parsed, cancellation) => Guard.RunAsync(() => RunAsync(
            parsed.GetValue(notebook), parsed.GetRequiredValue(folder), parsed.GetRequiredValue(port), parsed.GetValue(listen),
            !parsed.GetValue(noBrowser), clock.GetUtcNow(), cancellation)));
        return command;
    }

    // Not inlined: the server's types are loaded only when this command runs, so that the others start as fast as without it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static async Task<int> RunAsync(string? file, string folder, int port, bool listen, bool browser,
        DateTimeOffset now, CancellationToken cancellation)
    {
        var rig = Path.GetExtension(file) is ".yaml" or ".yml" ? file : null;
        var notebook = rig is null ? file : null;
        if (rig is not null && !(File.Exists(rig) && PlainFile.IsAt(rig)))
        {
            ErrorText.Line(File.Exists(rig) ? $"error: {rig}: {PlainFile.NoPlainFile}" : $"error: there is no file {rig}");
            return ExitCodes.BadInput;
        }
        if (!Directory.Exists(folder))
        {
            ErrorText.Line($"error: --folder: there is no folder {folder}. Accepted: a folder that is there, such as \".\".");
            return ExitCodes.BadInput;
        }
        if (notebook is not null && await ProblemsOfAsync(notebook))
            return ExitCodes.BadInput;
        // A rig file is one's own, and its folder the one that is read from and saved to.
        var rigs = Path.GetFullPath(rig is null ? folder : Path.GetDirectoryName(Path.GetFullPath(rig))!);
        var options = new PageOptions
        {
            NotebookFolder = notebook is null ? ShippedFolder.Of("notebooks")
                : Path.GetDirectoryName(Path.GetFullPath(notebook))!,
            DataFolder = ShippedFolder.Of("data"),
            RigFolder = rigs,
            CommandFolder = Environment.CurrentDirectory,
            Port = port,
            Listen = listen,
            Prepares = true,
            Report = ErrorText.Line,
        };
        using var library = new CarriedLibrary(Console.Error);
        options = options with { CarriedLibrary = library };
        Unfinished.RemoveFrom(rigs, now);
        await using var server = await PageServer.StartAsync(options, cancellation);
        var shown = rig is null ? notebook : FirstNotebook;
        var path = shown is null ? "" : $"n/{Uri.EscapeDataString(Path.GetFileNameWithoutExtension(shown))}";
        var state = "";
        if (rig is not null)
        {
            var name = Path.GetFileName(rig);
            state = $"#scenario={Uri.EscapeDataString($"own/{name}")}{FirstBuild(Path.Combine(rigs, name))}";
        }
        var address = new Uri(At(server.Address, path), state);
        await Console.Out.WriteLineAsync($"""
            The pages are open at
              {address.AbsoluteUri}
            Only this address works: it carries a key that is new at every start.
            Your own rigs are read from and saved to {ShownText.Of(rigs)}
            To stop: Ctrl-C in this window. What you saved stays.
            """);
        if (listen)
            await Console.Out.WriteLineAsync(NetworkNotice(server, path));
        // What a program is started with can be read by every user of the machine: this address opens the pages once.
        if (browser && !SystemBrowser.TryOpen(new Uri(At(server.OneTimeAddress(), path), state)))
            await Console.Out.WriteLineAsync("No browser was found to open: copy the address into one.");
        await server.RunAsync(cancellation);
        await Console.Out.WriteLineAsync("Stopped.");
        return ExitCodes.Stopped;
    }

    private static string NetworkNotice(PageServer server, string path) =>
        $"""

        Other machines on this network may open the pages at
        {string.Join(Environment.NewLine, server.NetworkAddresses.Select(address => "  " + At(address, path)))}
        Caution: whoever on this network gets one of these addresses can read and change the rig files in that folder, and what
        is sent isn't encrypted. Use this only on a network whose users you trust, and stop it when you are done.
        """;

    /// <summary>The file's first build, where the notebook is to begin; nothing where the file has errors: the page tells
    /// them.</summary>
    private static string FirstBuild(string rig) =>
        ScenarioFile.TryRead(rig).Scenario?.Builds.Keys.FirstOrDefault() is { } build
            ? $"&build={Uri.EscapeDataString(build)}" : "";

    private static Uri At(Uri address, string path) => new(address, path + address.Query);

    private static async Task<bool> ProblemsOfAsync(string notebook)
    {
        try
        {
            NotebookFile.Load(notebook);
            return false;
        }
        catch (NotebookInputException exception)
        {
            foreach (var problem in exception.Problems)
                ErrorText.Line($"error: {problem}");
            return true;
        }
    }
}
