using System.Reflection;
using System.Text.RegularExpressions;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Emit;
using Microsoft.CodeAnalysis.Text;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>Compiles the cells of one notebook, each on top of those before it, as a notebook program does: top-level variables
/// stay.</summary>
internal sealed partial class CellCompiler
{
    /// <summary>What a notebook program imports by itself.</summary>
    private static readonly string[] UsualImports =
        ["System", "System.IO", "System.Text", "System.Collections", "System.Collections.Generic",
            "System.Threading.Tasks", "System.Linq"];

    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    private readonly CellAssemblies assemblies;
    private readonly CSharpCompilationOptions options;
    private readonly Dictionary<string, int> cellOfAssembly = new(StringComparer.Ordinal);
    private CSharpCompilation? previous;
    private bool isStarted;

    public CellCompiler(string folder)
    {
        assemblies = new CellAssemblies(folder);
        options = new CSharpCompilationOptions(
            OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, deterministic: true,
            metadataReferenceResolver: assemblies.Resolver,
            sourceReferenceResolver: new SourceFileResolver([], folder),
            assemblyIdentityComparer: DesktopAssemblyIdentityComparer.Default);
    }

    /// <summary>Unloads what was compiled, once nobody runs it any more.</summary>
    public void Unload() => assemblies.Unload();

    /// <summary>Compiles the next cell and makes it ready to run. After one that does not compile no other can follow.</summary>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public CompiledCell Compile(NotebookCell cell, CancellationToken cancellation)
    {
        var emitted = Emit(cell, $"cell-{cell.Number}-{Guid.NewGuid():N}", cancellation);
        if (emitted is not { Program: { } program, Symbols: { } symbols, Entry: { } entry })
            return new CompiledCell(cell, emitted.Error, null, null, emitted.Uses);
        using var code = new MemoryStream(program);
        using var lines = new MemoryStream(symbols);
        var type = assemblies.LoadFromStream(code, lines).GetType(entry.Type, throwOnError: true)!;
        var method = type.GetMethod(entry.Method, BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)!;
        return new CompiledCell(cell, null, method.CreateDelegate<Func<object?[], Task<object?>>>(), type, emitted.Uses);
    }

    /// <summary>Compiles the next cell. After one that does not compile no other can follow.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="name">The name of its assembly, its own in all that is loaded together.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public EmittedCell Emit(NotebookCell cell, string name, CancellationToken cancellation)
    {
        var code = WithoutLoadedReferences(cell.Text);
        var tree = CSharpSyntaxTree.ParseText(SourceText.From(code, Encoding.UTF8), Script,
            CellError.FileName(cell.Number), cancellation);
        var imports = isStarted ? UsualImports.Concat(SessionImports.Namespaces) : UsualImports;
        isStarted |= cell.IsStart;
        var compilation = CSharpCompilation.CreateScriptCompilation(
            name, tree, CellAssemblies.References, options.WithUsings(imports), previous, typeof(object));
        using var program = new MemoryStream();
        using var symbols = new MemoryStream();
        var emitted = compilation.Emit(program, symbols,
            options: new EmitOptions(debugInformationFormat: DebugInformationFormat.PortablePdb),
            cancellationToken: cancellation);
        var errors = emitted.Diagnostics.Where(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error).ToList();
        if (errors.Count > 0)
            return new EmittedCell(Error(errors), null, null, null, CellUses.Nothing);
        var uses = CellReferences.Find(compilation.GetSemanticModel(tree), cellOfAssembly, cancellation);
        previous = compilation;
        cellOfAssembly[name] = cell.Number;
        // A cell of using directives alone holds nothing to run: the compiler emits nothing, and that is no error.
        if (!emitted.Success || compilation.GetEntryPoint(cancellation) is not { } entry)
            return new EmittedCell(null, null, null, null, uses);
        return new EmittedCell(null, program.ToArray(), symbols.ToArray(),
            (entry.ContainingType.MetadataName, entry.MetadataName), uses);
    }

    private static CellError Error(IEnumerable<Diagnostic> diagnostics) => CellError.OfCompiler(
    [
        .. diagnostics
            .Select(d => (Line: d.Location.GetMappedLineSpan().StartLinePosition.Line + 1, Text: $"{d.GetMessage()} ({d.Id})"))
            .Distinct(),
    ]);

    // A notebook names the library's file for a notebook program. Here the library is loaded already, and where it is installed
    // as a tool that file is not there at all. The line stays as a comment, so that line numbers hold.
    private static string WithoutLoadedReferences(string code) => FileReference().Replace(
        code, match => File.Exists(Path.Combine(SessionImports.Folder, FileNameOf(match.Groups["path"].Value)))
            ? "// " + match.Value : match.Value);

    // Written on one system, read on another: both kinds of separators count.
    private static string FileNameOf(string path) => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];

    [GeneratedRegex(@"^[ \t]*#r[ \t]+""(?<path>[^"":]+\.dll)""",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FileReference();
}

/// <summary>What the compiler made of a cell.</summary>
/// <param name="Error">Why it does not compile; null if it does.</param>
/// <param name="Program">The assembly; null if it does not compile or holds nothing to run.</param>
/// <param name="Symbols">Where its code stands in the cell; null as for <paramref name="Program"/>.</param>
/// <param name="Entry">The class that holds its variables, and the static method that runs it; null as for
/// <paramref name="Program"/>.</param>
/// <param name="Uses">What it takes from earlier cells.</param>
internal sealed record EmittedCell(
    CellError? Error, byte[]? Program, byte[]? Symbols, (string Type, string Method)? Entry, CellUses Uses);
