using System.Reflection;
using System.Text;
using RigScenarios.Charts;

namespace RigScenarios.Notebooks.Engine;

/// <summary>What a notebook's cells can name without saying where it comes from.</summary>
internal static class SessionImports
{
    private static readonly string[] AssemblyNames =
    [
        "RigScenarios", "RigScenarios.Charts", "RigScenarios.Notebooks", "UnitsNet", "MathNet.Numerics", "Plotly.NET", "DynamicObj", "FSharp.Core",
    ];

    /// <summary>The library and what its public members speak of, as files beside this assembly.</summary>
    public static IReadOnlyList<string> Assemblies =>
        [.. AssemblyNames.Select(name => Path.Combine(Folder, name + ".dll")).Where(File.Exists)];

    /// <summary>The folder that this assembly and all it needs lie in.</summary>
    public static string Folder => Path.GetDirectoryName(typeof(SessionImports).Assembly.Location) is { Length: > 0 } folder
        ? folder
        : AppContext.BaseDirectory;

    /// <summary>Using directives for every public namespace of the library and for the functions of the session.</summary>
    public static string Usings
    {
        get
        {
            var namespaces = new[] { typeof(Figure).Assembly, Assembly.Load("RigScenarios") }
                .SelectMany(assembly => assembly.GetExportedTypes())
                .Select(type => type.Namespace)
                .OfType<string>()
                .Where(name => name.StartsWith("RigScenarios", StringComparison.Ordinal))
                .Distinct()
                .Order(StringComparer.Ordinal);
            var usings = new StringBuilder("using UnitsNet;\nusing UnitsNet.Units;\nusing static RigScenarios.Notebooks.NotebookSession;\n");
            foreach (var name in namespaces)
                usings.Append($"using {name};\n");
            return usings.ToString();
        }
    }
}
