using System.Globalization;
using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Formatting;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using UnitsNet;

namespace RigScenarios.Notebooks.Engine;

/// <summary>The engine as seen from inside a running cell. The only file besides <see cref="CellEngine"/> that knows it.</summary>
internal static class CellDisplay
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";

    // One progress line a cell, updated in place. Kept by the cell's command and forgotten with it.
    private static readonly ConditionalWeakTable<KernelCommand, DisplayedValue> ProgressLines = [];

    /// <summary>Cancelled when the run is stopped; never cancelled outside of a cell.</summary>
    public static CancellationToken Cancellation => KernelInvocationContext.Current?.CancellationToken ?? CancellationToken.None;

    public static void Start()
    {
        // Texts of the machine's language in numbers would make the same notebook give two answers.
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        if (CurrentContext().HandlingKernel is not CSharpKernel kernel)
            throw new InvalidOperationException("NotebookSession.Start() belongs in a C# cell.");
        kernel.AddAssemblyReferences(SessionImports.Assemblies);
        kernel.DeferCommand(new SubmitCode(SessionImports.Usings));
        RegisterFormats();
        Show(new ScriptPart());
    }

    public static void Show(PagePart part) => CurrentContext().Display(part, Html, Plain);

    public static void Progress(double fraction, string text)
    {
        var context = CurrentContext();
        var note = new ProgressNote(Math.Clamp(fraction, 0, 1), text);
        if (ProgressLines.TryGetValue(context.Command, out var line))
            line.Update(note);
        else
            ProgressLines.Add(context.Command, context.Display(note, Plain));
    }

    public static void Register<T>(Func<T, IEnumerable<PagePart>> parts) => RegisterHtml<T>(
        value => string.Concat(parts(value).Select(PartHtml.Of)),
        value => string.Join('\n', parts(value).Select(PartText.Of)));

    private static void RegisterFormats()
    {
        Register<Figure>(figure => [new FigurePart(figure)]);
        Register<ChartTable>(table => [new TablePart(table)]);
        Register<PagePart>(part => [part]);
        RegisterPlain<ProgressNote>(note => note.ToString());
        RegisterPlain<IQuantity>(TradeUnits.Text);
        // Without this each number drags a block of styles into its output.
        RegisterPlain<double>(value => Rounding.Text(value, 6));
        RegisterPlain<int>(value => value.ToString(CultureInfo.InvariantCulture));
        RegisterPlain<bool>(value => value ? "true" : "false");
        RegisterPlain<string>(text => text);
    }

    private static void RegisterHtml<T>(Func<T, string> html, Func<T, string> plain)
    {
        Formatter.Register<T>((value, writer) => writer.Write(html(value)), Html);
        Formatter.Register<T>((value, writer) => writer.Write(plain(value)), Plain);
        Formatter.SetPreferredMimeTypesFor(typeof(T), Html, Plain);
    }

    private static void RegisterPlain<T>(Func<T, string> plain)
    {
        Formatter.Register<T>((value, writer) => writer.Write(plain(value)), Plain);
        Formatter.SetPreferredMimeTypesFor(typeof(T), Plain);
    }

    private static KernelInvocationContext CurrentContext() => KernelInvocationContext.Current
        ?? throw new InvalidOperationException("This belongs in a cell of a notebook: there is none running.");
}
