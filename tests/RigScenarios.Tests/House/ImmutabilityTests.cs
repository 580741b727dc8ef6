using System.Reflection;
using System.Runtime.CompilerServices;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.House;

/// <summary>The domain can't change under a reader's feet: "what if" is a copy.</summary>
public sealed class ImmutabilityTests
{
    private static readonly Type[] Public = [.. typeof(Scenario).Assembly.GetExportedTypes()];

    [Fact]
    public void No_public_property_can_be_set_after_an_object_is_made()
    {
        var settable = Public.SelectMany(type =>
            type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(property => property.SetMethod is { IsPublic: true } setter
                && !setter.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)));
        Assert.Empty(settable.Select(property => $"{property.DeclaringType}.{property.Name}"));
    }

    [Fact]
    public void No_public_field_can_be_changed()
    {
        var fields = Public.Where(type => !type.IsEnum)
            .SelectMany(type =>
            type.GetFields(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsInitOnly && !field.IsLiteral);
        Assert.Empty(fields.Select(field => $"{field.DeclaringType}.{field.Name}"));
    }

    [Fact]
    public void No_public_property_hands_out_a_list_or_dictionary_that_can_be_changed()
    {
        Type[] open = [typeof(List<>), typeof(IList<>), typeof(ICollection<>), typeof(Dictionary<,>), typeof(IDictionary<,>),
            typeof(HashSet<>)];
        var wrong =
            Public.SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(property => property.PropertyType.IsArray
                || (property.PropertyType.IsGenericType && open.Contains(property.PropertyType.GetGenericTypeDefinition())));
        Assert.Empty(wrong.Select(property => $"{property.DeclaringType}.{property.Name}"));
    }

    [Fact]
    public void No_static_field_of_the_library_can_be_changed()
    {
        var state = typeof(Scenario).Assembly.GetTypes()
            .Where(type => type.GetCustomAttribute<CompilerGeneratedAttribute>() is null && !type.FullName!.Contains('<',
            StringComparison.Ordinal) && !type.FullName.StartsWith("System.", StringComparison.Ordinal))
            .SelectMany(type =>
                type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(field => !field.IsInitOnly && !field.IsLiteral && !field.Name.Contains('<', StringComparison.Ordinal));
        Assert.Empty(state.Select(field => $"{field.DeclaringType}.{field.Name}"));
    }

    [Fact]
    public void There_is_something_to_look_at() => Assert.True(Public.Length > 40);
}
