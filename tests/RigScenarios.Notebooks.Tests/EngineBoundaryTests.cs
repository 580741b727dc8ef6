using System.Reflection;
using RigScenarios.Charts;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>The notebook engine and the drawing library can be replaced: their types stay inside.</summary>
public sealed class EngineBoundaryTests
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    public void No_public_member_speaks_of_the_engine() =>
        Assert.Empty(Spoken(typeof(NotebookSession).Assembly, "Microsoft.")
            .Concat(Spoken(typeof(NotebookCompiler).Assembly, "Microsoft.")));

    [Fact]
    public void What_runs_compiled_cells_needs_no_compiler_and_no_notebook_program() => Assert.DoesNotContain(
        typeof(NotebookSession).Assembly.GetReferencedAssemblies(),
        used => used.Name!.StartsWith("Microsoft.", StringComparison.Ordinal));

    [Fact]
    public void Only_the_open_door_for_charts_speaks_of_the_drawing_library() => Assert.Equal(
        ["Figure.FromChart"], Spoken(typeof(Figure).Assembly, "Plotly")
            .Concat(Spoken(typeof(NotebookSession).Assembly, "Plotly"))
            .Concat(Spoken(typeof(NotebookCompiler).Assembly, "Plotly")).Distinct());

    [Fact]
    public void Only_one_file_names_the_engine()
    {
        var source = Path.Combine(Checkout.Root, "src");
        var naming = Directory.EnumerateDirectories(source, "RigScenarios.Notebooks*")
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories))
            .Where(path => File.ReadAllText(path).Contains("Microsoft.DotNet.Interactive", StringComparison.Ordinal))
            .Select(path => Path.GetRelativePath(source, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
        Assert.Equal(["RigScenarios.Notebooks.Compiler/KernelProgram.cs"], naming);
    }

    private static IEnumerable<string> Spoken(Assembly assembly, string otherName) =>
        from type in assembly.GetExportedTypes()
        from member in type.GetMembers(Everything)
        where Types(member).SelectMany(Flat).Any(t => t.Assembly.GetName().Name!.StartsWith(otherName, StringComparison.Ordinal))
        select $"{type.Name}.{member.Name}";

    private static IEnumerable<Type> Types(MemberInfo member) => member switch
    {
        MethodInfo method => [method.ReturnType, .. method.GetParameters().Select(p => p.ParameterType)],
        ConstructorInfo constructor => constructor.GetParameters().Select(p => p.ParameterType),
        PropertyInfo property => [property.PropertyType],
        FieldInfo field => [field.FieldType],
        _ => [],
    };

    private static IEnumerable<Type> Flat(Type type) =>
        type.IsGenericType ? [type, .. type.GetGenericArguments().SelectMany(Flat)]
        : type.HasElementType ? Flat(type.GetElementType()!)
        : [type];
}
