using System.Globalization;
using System.Reflection;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// What a running cell's calls reach: the cell's own collector where the library runs the notebook, and otherwise the notebook
/// program that does.
/// </summary>
internal static class CellDisplay
{
    // By its name: the compiler's assembly stands below this one, and where no notebook program is it is not even there.
    private const string ProgramAssembly = $"{nameof(RigScenarios)}.{nameof(Notebooks)}.Compiler";
    private const string ProgramType = $"{ProgramAssembly}.KernelProgram";

    private static readonly Lazy<INotebookProgram?> FoundProgram = new(FindProgram);

    /// <summary>Cancelled when the run is stopped; never cancelled outside of a cell.</summary>
    public static CancellationToken Cancellation =>
        CellContext.Current?.Cancellation ?? FoundProgram.Value?.Cancellation ?? CancellationToken.None;

    public static void Start()
    {
        // Texts of the machine's language in numbers would make the same notebook give two answers.
        CultureInfo.CurrentCulture = CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        if (CellContext.Current is null)
            Program.Start();
        Show(new ScriptPart());
    }

    public static void Show(PagePart part)
    {
        if (CellContext.Current is { } cell)
            cell.Show(part);
        else
            Program.Show(part);
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
            Program.ShowValue(value);
        }
    }

    public static void Progress(double fraction, string text)
    {
        var note = new ProgressNote(Math.Clamp(fraction, 0, 1), text);
        if (CellContext.Current is { } cell)
            cell.Progress(note);
        else
            Program.Progress(note);
    }

    public static void Register<T>(Func<T, IEnumerable<PagePart>> parts)
    {
        if (CellContext.Current is { } cell)
            cell.Shown.Register(parts);
        else
            Program.Register(parts);
    }

    private static INotebookProgram Program => FoundProgram.Value
        ?? throw new InvalidOperationException("This belongs in a cell of a notebook: there is none running.");

    private static INotebookProgram? FindProgram()
    {
        if (OperatingSystem.IsBrowser())
            return null;
        try
        {
            var name = new AssemblyName(typeof(CellDisplay).Assembly.FullName!) { Name = ProgramAssembly };
            return (INotebookProgram?)Activator.CreateInstance(Assembly.Load(name).GetType(ProgramType, throwOnError: true)!);
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }
}
