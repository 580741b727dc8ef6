using System.Reflection;
using RigScenarios.Charts;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>The notebook engine and the drawing library can be replaced: their types stay inside.</summary>
public sealed class EngineBoundaryTests
{
    private const BindingFlags Everything =
        BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    public void No_public_member_speaks_of_the_engine() =>
        Assert.Empty(Spoken(typeof(NotebookSession).Assembly, "Microsoft.DotNet.Interactive"));

    [Fact]
    public void Only_the_open_door_for_charts_speaks_of_the_drawing_library() => Assert.Equal(
        ["Figure.FromChart"], Spoken(typeof(Figure).Assembly, "Plotly")
            .Concat(Spoken(typeof(NotebookSession).Assembly, "Plotly")).Distinct());

    [Fact]
    public void Only_the_folder_Engine_names_the_engine()
    {
        var source = Path.Combine(Checkout.Root, "src", "RigScenarios.Notebooks");
        var naming = Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Where(path => File.ReadAllText(path).Contains("Microsoft.DotNet.Interactive", StringComparison.Ordinal))
            .Select(path => Path.GetRelativePath(source, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);
        Assert.Equal(["Engine/CellDisplay.cs"], naming);
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
