using System.Reflection;
using System.Runtime.InteropServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace RigScenarios.Mutation.Sample;

/// <summary>The library's files as the compiler sees them, each of which can be replaced by a changed one.</summary>
internal sealed class Library
{
    private readonly CSharpCompilation whole;
    private readonly Dictionary<string, SyntaxTree> trees;

    /// <summary>Reads the library.</summary>
    /// <param name="root">The folder of the repository.</param>
    /// <param name="beside">The folder of a built test project: what the library needs lies there.</param>
    public Library(string root, string beside)
    {
        var options = new CSharpParseOptions(LanguageVersion.Latest);
        var generated = Directory.EnumerateFiles(Path.Combine(root, "artifacts", "obj", "RigScenarios", "release"), "*.cs");
        trees = Directory.EnumerateFiles(Path.Combine(root, "src", "RigScenarios"), "*.cs", SearchOption.AllDirectories)
            .Concat(generated).Order(StringComparer.Ordinal)
            .ToDictionary(path => path, path => CSharpSyntaxTree.ParseText(File.ReadAllText(path), options, path));
        var runtime = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator);
        var needed = Directory.EnumerateFiles(beside, "*.dll").Where(path =>
            !Path.GetFileName(path).StartsWith("RigScenarios", StringComparison.Ordinal) && IsManaged(path));
        var written = CSharpCompilation.Create("RigScenarios", trees.Values,
            runtime.Concat(needed).DistinctBy(Path.GetFileName).Select(path => MetadataReference.CreateFromFile(path)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release,
                nullableContextOptions: NullableContextOptions.Enable, deterministic: true));
        whole = WithExpressions(written, options);
    }

    /// <summary>The files of a room, in order.</summary>
    /// <param name="folder">The room's folder.</param>
    public IEnumerable<SyntaxTree> In(string folder) => trees.Where(tree =>
        tree.Key.StartsWith(folder + Path.DirectorySeparatorChar, StringComparison.Ordinal)).Select(tree => tree.Value);

    /// <summary>Writes the library, with a change or as it is.</summary>
    /// <param name="change">The change; null for none.</param>
    /// <param name="file">The file to write.</param>
    /// <returns>What the compiler says against it; null where it was written.</returns>
    public string? Write(Change? change, string file)
    {
        var compiled = change is null ? whole : whole.ReplaceSyntaxTree(trees[change.Path], change.Tree);
        using var stream = new MemoryStream();
        var result = compiled.Emit(stream);
        if (!result.Success)
            return result.Diagnostics.First(found => found.Severity == DiagnosticSeverity.Error).ToString();
        File.WriteAllBytes(file, stream.ToArray());
        return null;
    }

    // Regular expressions are made by the compiler, with a generator that the SDK brings.
    private static CSharpCompilation WithExpressions(CSharpCompilation written, CSharpParseOptions options)
    {
        var packs = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", "packs",
            "Microsoft.NETCore.App.Ref"));
        var generator = Directory.EnumerateFiles(packs, "System.Text.RegularExpressions.Generator.dll",
            SearchOption.AllDirectories).Order(StringComparer.Ordinal).Last();
        // By its name: the assembly's other types want the libraries of an editor.
        var type = Assembly.LoadFrom(generator).GetType("System.Text.RegularExpressions.Generator.RegexGenerator",
            throwOnError: true)!;
        var made = (IIncrementalGenerator)Activator.CreateInstance(type)!;
        CSharpGeneratorDriver.Create([made.AsSourceGenerator()], parseOptions: options)
            .RunGeneratorsAndUpdateCompilation(written, out var all, out _);
        return (CSharpCompilation)all;
    }

    private static bool IsManaged(string path)
    {
        try
        {
            AssemblyName.GetAssemblyName(path);
            return true;
        }
        catch (BadImageFormatException)
        {
            return false;
        }
    }
}
