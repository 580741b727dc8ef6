using System.Globalization;
using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.CSharp;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Formatting;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Engine;
using UnitsNet;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Jupyter's C# kernel. The only file that knows it.</summary>
internal sealed class KernelProgram : INotebookProgram
{
    private const string Html = "text/html";
    private const string Plain = "text/plain";

    // One progress line a cell, updated in place. Kept by the cell's command and forgotten with it. Locked: a parallel work
    // reports from several threads, and two first reports would show two lines.
    private readonly ConditionalWeakTable<KernelCommand, DisplayedValue> progressLines = [];
    private readonly Lock progressLock = new();

    public CancellationToken Cancellation => KernelInvocationContext.Current?.CancellationToken ?? CancellationToken.None;

    public void Start()
    {
        if (CurrentContext().HandlingKernel is not CSharpKernel kernel)
            throw new InvalidOperationException("NotebookSession.Start() belongs in a C# cell.");
        kernel.AddAssemblyReferences(SessionImports.Assemblies);
        kernel.DeferCommand(new SubmitCode(SessionImports.Usings));
        RegisterFormats();
    }

    public void Show(PagePart part) => CurrentContext().Display(part, Html, Plain);

    public void ShowValue(object value) => CurrentContext().Display(value);

    public void Progress(ProgressNote note)
    {
        var context = CurrentContext();
        lock (progressLock)
        {
            if (progressLines.TryGetValue(context.Command, out var line))
                line.Update(note);
            else
                progressLines.Add(context.Command, context.Display(note, Plain));
        }
    }

    public void Register<T>(Func<T, IEnumerable<PagePart>> parts) => RegisterParts(typeof(T), value => parts((T)value));

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
