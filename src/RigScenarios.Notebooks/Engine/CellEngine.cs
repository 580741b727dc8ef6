using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Events;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// One session of the C# engine: runs cells one after another, with what the earlier ones declared. The only place that sends
/// it commands, so that another engine can take its place by rewriting this file and <see cref="CellDisplay"/>.
/// </summary>
internal sealed class CellEngine : IDisposable
{
    private readonly CompositeKernel kernel;
    private readonly string languageName;

    public CellEngine()
    {
        var csharp = new CSharpKernel();
        languageName = csharp.Name;
        KeepLineNumbers(csharp);
        csharp.AddAssemblyReferences(SessionImports.Assemblies);
        kernel = new CompositeKernel { csharp };
        kernel.DefaultKernelName = languageName;
    }

    /// <summary>What a cell showed and, where it failed, why.</summary>
    internal sealed record Result(IReadOnlyList<PagePart> Outputs, CellError? Error);

    /// <summary>Runs a piece of code.</summary>
    /// <param name="cell">Number of the cell, for the lines of error messages.</param>
    /// <param name="code">C# as a script.</param>
    /// <param name="progress">Called with what the cell says of its progress.</param>
    /// <param name="cancellation">Stops the cell.</param>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public async Task<Result> RunAsync(int cell, string code, Action<string> progress, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        using var live = kernel.KernelEvents.Subscribe(new ProgressListener(progress));
        // The engine is told to cancel rather than the call abandoned: only so does it let go of the console.
        await using var stop = cancellation.Register(() => _ = kernel.SendAsync(new Cancel(languageName)));
        var result = await kernel.SendAsync(new SubmitCode($"#line 1 \"{CellError.FileName(cell)}\"\n{code}", languageName), CancellationToken.None);
        cancellation.ThrowIfCancellationRequested();
        return new Result(Outputs(result), Error(result));
    }

    public void Dispose() => kernel.Dispose();

    private static CellError? Error(KernelCommandResult result)
    {
        if (result.Events.OfType<CommandFailed>().FirstOrDefault() is not { } failed)
            return null;
        var errors = result.Events.OfType<DiagnosticsProduced>().SelectMany(e => e.Diagnostics)
            .Where(d => d.Severity == DiagnosticSeverity.Error)
            // Counted from 0, and the line that names the cell stands before the code: so this is the cell's line from 1.
            .Select(d => (Line: d.LinePositionSpan.Start.Line, Text: $"{d.Message} ({d.Code})"))
            .Distinct()
            .ToList();
        return errors.Count > 0 ? CellError.OfCompiler(errors)
            : failed.Exception is { } exception ? CellError.OfException(exception)
            : new CellError(null, failed.Message);
    }

    private static List<PagePart> Outputs(KernelCommandResult result)
    {
        var outputs = new List<PagePart>();
        var shown = new Dictionary<string, int>();
        foreach (var display in result.Events.OfType<DisplayEvent>())
        {
            if (Part(display) is not { } part)
                continue;
            if (display is DisplayedValueUpdated && shown.TryGetValue(display.ValueId ?? "", out var index))
                outputs[index] = part;
            else if (part is PrintedPart printed && outputs.LastOrDefault() is PrintedPart before && IsConsole(display))
                outputs[^1] = new PrintedPart(before.Text + printed.Text);
            else
                outputs.Add(part);
            if (display.ValueId is { } id)
                shown[id] = outputs.Count - 1;
        }

        return outputs;
    }

    private static bool IsConsole(DisplayEvent display) => display is StandardOutputValueProduced or StandardErrorValueProduced;

    private static PagePart? Part(DisplayEvent display)
    {
        switch (display.Value)
        {
            case PagePart part:
                return part;
            case Figure figure:
                return new FigurePart(figure);
            case ChartTable table:
                return new TablePart(table);
            case ProgressNote:
                return null;
        }

        var formatted = display.FormattedValues;
        if (formatted.FirstOrDefault(f => f.MimeType == "text/html") is { } html)
            return new HtmlPart(html.Value + "\n");
        return formatted.FirstOrDefault(f => f.MimeType == "text/plain") is { Value: { Length: > 0 } text } ? new PrintedPart(text) : null;
    }

    // The engine has no switch for the line numbers of errors at run time; its script options do. Without them messages only
    // lack the line.
    private static void KeepLineNumbers(CSharpKernel csharp)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(csharp) is ScriptOptions options)
            field.SetValue(csharp, options.WithEmitDebugInformation(true).WithFileEncoding(Encoding.UTF8));
    }

    private sealed class ProgressListener(Action<string> report) : IObserver<KernelEvent>
    {
        public void OnNext(KernelEvent value)
        {
            if (value is DisplayEvent { Value: ProgressNote note })
                report(note.ToString());
        }

        public void OnCompleted()
        {
        }

        public void OnError(Exception error)
        {
        }
    }
}
