using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.Loader;
using Microsoft.CodeAnalysis;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>
/// The assemblies of one notebook: what its cells compile to, and the files that its <c>#r</c> lines name. Unloaded with the
/// notebook, so that one that is edited and compiled again and again leaves nothing behind.
/// </summary>
internal sealed class CellAssemblies(string folder) : AssemblyLoadContext("notebook", isCollectible: true)
{
    // Read from disk once for all notebooks; metadata references never change.
    private static readonly Lazy<ImmutableArray<MetadataReference>> StandardReferences = new(() =>
    [
        .. Directory.EnumerateFiles(Path.GetDirectoryName(typeof(object).Assembly.Location)!, "*.dll").Where(IsManaged)
            .Concat(SessionImports.Assemblies)
            .Select(path => MetadataReference.CreateFromFile(path)),
    ]);

    private readonly Dictionary<string, string> referenced = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The runtime and the library.</summary>
    public static ImmutableArray<MetadataReference> References => StandardReferences.Value;

    /// <summary>Finds what a <c>#r "path.dll"</c> line names, seen from the notebook's folder.</summary>
    public MetadataReferenceResolver Resolver => new FileResolver(this, folder);

    protected override Assembly? Load(AssemblyName assemblyName) =>
        assemblyName.Name is { } name && referenced.TryGetValue(name, out var path) ? LoadFromAssemblyPath(path) : null;

    private static bool IsManaged(string path)
    {
        var name = Path.GetFileName(path);
        return name.StartsWith("System", StringComparison.Ordinal) ? !name.Contains(".Native", StringComparison.Ordinal)
            : name is "mscorlib.dll" or "netstandard.dll" or "Microsoft.CSharp.dll" or "Microsoft.Win32.Primitives.dll";
    }

    private sealed class FileResolver(CellAssemblies assemblies, string folder) : MetadataReferenceResolver
    {
        public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath,
            MetadataReferenceProperties properties)
        {
            var path = Path.GetFullPath(reference, folder);
            if (!File.Exists(path))
                return [];
            assemblies.referenced[Path.GetFileNameWithoutExtension(path)] = path;
            return [MetadataReference.CreateFromFile(path, properties)];
        }

        public override bool Equals(object? other) => ReferenceEquals(this, other);

        public override int GetHashCode() => folder.GetHashCode(StringComparison.Ordinal);
    }
}
