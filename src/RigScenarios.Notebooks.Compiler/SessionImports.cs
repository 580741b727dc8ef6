using System.Reflection;
using RigScenarios.Charts;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>What a notebook's cells can name without saying where it comes from.</summary>
internal static class SessionImports
{
    private static readonly string[] AssemblyNames =
    [
        "RigScenarios", "RigScenarios.Charts", "RigScenarios.Notebooks", "RigScenarios.Notebooks.Compiler", "UnitsNet",
        "MathNet.Numerics", "Plotly.NET", "DynamicObj", "FSharp.Core",
    ];

    private const string Session = $"{nameof(RigScenarios)}.{nameof(Notebooks)}.{nameof(NotebookSession)}";

    // Looked up once and not for each cell that is compiled; not before it is asked for, for in Jupyter the library is loaded on
    // the way.
    private static readonly Lazy<IReadOnlyList<string>> AllNamespaces = new(FindNamespaces);

    /// <summary>The library and what its public members speak of, as files beside this assembly.</summary>
    public static IReadOnlyList<string> Assemblies =>
        [.. AssemblyNames.Select(name => Path.Combine(Folder, name + ".dll")).Where(File.Exists)];

    /// <summary>The folder that this assembly and all it needs lie in.</summary>
    public static string Folder => Path.GetDirectoryName(typeof(SessionImports).Assembly.Location) is { Length: > 0 } folder
        ? folder
        : AppContext.BaseDirectory;

    /// <summary>Every public namespace of the library, and the class whose functions cells call by their names alone.</summary>
    public static IReadOnlyList<string> Namespaces => AllNamespaces.Value;

    /// <summary>The same as using directives, for a notebook program.</summary>
    public static string Usings =>
        string.Concat(Namespaces.Select(name => $"using {(name == Session ? "static " : "")}{name};\n"));

    private static IReadOnlyList<string> FindNamespaces() =>
    [
        "UnitsNet", "UnitsNet.Units", Session,
        .. new[] { typeof(Figure).Assembly, Assembly.Load("RigScenarios") }
            .SelectMany(assembly => assembly.GetExportedTypes())
            .Select(type => type.Namespace)
            .OfType<string>()
            .Where(name => name.StartsWith("RigScenarios", StringComparison.Ordinal))
            .Distinct()
            .Order(StringComparer.Ordinal),
    ];
}
