using System.Globalization;
using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Formatting;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using UnitsNet;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// What a running cell's calls reach: the cell's own collector where the library runs the notebook, and Jupyter's C# kernel
/// where that does. The only file that knows the kernel.
/// </summary>
internal static class CellDisplay
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";

    // One progress line a cell, updated in place. Kept by the cell's command and forgotten with it. Locked: a parallel work
    // reports from several threads, and two first reports would show two lines.
    private static readonly ConditionalWeakTable<KernelCommand, DisplayedValue> ProgressLines = [];
    private static readonly Lock ProgressLock = new();

    /// <summary>Cancelled when the run is stopped; never cancelled outside of a cell.</summary>
    public static CancellationToken Cancellation => CellContext.Current?.Cancellation ?? KernelCancellation();

    public static void Start()
    {
        // Texts of the machine's language in numbers would make the same notebook give two answers.
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        if (CellContext.Current is null)
            StartKernel();
        Show(new ScriptPart());
    }

    public static void Show(PagePart part)
    {
        if (CellContext.Current is { } cell)
            cell.Show(part);
        else
            ShowInKernel(part);
    }

    /// <summary>Shows a value as a cell that ends with it would.</summary>
    public static void ShowValue(object value)
    {
        if (CellContext.Current is { } cell)
        {
            foreach (var part in cell.Shown.Parts(value))
                cell.Show(part);
        }
        else
        {
            DisplayInKernel(value);
        }
    }

    public static void Progress(double fraction, string text)
    {
        var note = new ProgressNote(Math.Clamp(fraction, 0, 1), text);
        if (CellContext.Current is { } cell)
            cell.Progress(note);
        else
            ProgressInKernel(note);
    }

    public static void Register<T>(Func<T, IEnumerable<PagePart>> parts)
    {
        if (CellContext.Current is { } cell)
            cell.Shown.Register(parts);
        else
            RegisterInKernel(parts);
    }

    // The kernel's types stand in methods of their own: without a notebook program its assemblies are never loaded.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static CancellationToken KernelCancellation() =>
        KernelInvocationContext.Current?.CancellationToken ?? CancellationToken.None;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void StartKernel()
    {
        if (CurrentContext().HandlingKernel is not CSharpKernel kernel)
            throw new InvalidOperationException("NotebookSession.Start() belongs in a C# cell.");
        kernel.AddAssemblyReferences(SessionImports.Assemblies);
        kernel.DeferCommand(new SubmitCode(SessionImports.Usings));
        RegisterFormats();
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void ShowInKernel(PagePart part) => CurrentContext().Display(part, Html, Plain);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void DisplayInKernel(object value) => CurrentContext().Display(value);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void ProgressInKernel(ProgressNote note)
    {
        var context = CurrentContext();
        lock (ProgressLock)
        {
            if (ProgressLines.TryGetValue(context.Command, out var line))
                line.Update(note);
            else
                ProgressLines.Add(context.Command, context.Display(note, Plain));
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void RegisterInKernel<T>(Func<T, IEnumerable<PagePart>> parts) =>
        RegisterParts(typeof(T), value => parts((T)value));

    private static void RegisterFormats()
    {
        foreach (var type in LibraryValues.Types)
            RegisterParts(type, value => LibraryValues.Parts(value)!);
        RegisterPlain<ProgressNote>(note => note.ToString());
        RegisterPlain<IQuantity>(TradeUnits.Text);
        // Without this each number drags a block of styles into its output.
        RegisterPlain<double>(value => Rounding.Text(value, 6));
        RegisterPlain<int>(value => value.ToString(CultureInfo.InvariantCulture));
        RegisterPlain<bool>(value => value ? "true" : "false");
        RegisterPlain<string>(text => text);
    }

    private static void RegisterParts(Type type, Func<object, IEnumerable<PagePart>> parts)
    {
        Formatter.Register(type, (value, writer) => writer.Write(string.Concat(parts(value).Select(PartHtml.Of))), Html);
        Formatter.Register(type, (value, writer) => writer.Write(string.Join('\n', parts(value).Select(PartText.Of))), Plain);
        Formatter.SetPreferredMimeTypesFor(type, Html, Plain);
    }

    private static void RegisterPlain<T>(Func<T, string> plain)
    {
        Formatter.Register<T>((value, writer) => writer.Write(plain(value)), Plain);
        Formatter.SetPreferredMimeTypesFor(typeof(T), Plain);
    }

    private static KernelInvocationContext CurrentContext() => KernelInvocationContext.Current
        ?? throw new InvalidOperationException("This belongs in a cell of a notebook: there is none running.");
}
