using Mono.Cecil;
using Mono.Cecil.Cil;

namespace RigScenarios.Browser.Packing;

/// <summary>
/// The units library with the quantities that a program names, and no others. It lists all of them in three places, by which the
/// trimmer takes each for used, though a program names a fifth of them. Its own code is not changed: the lists become shorter.
/// </summary>
public static class UnitsInUse
{
    private const string Library = "UnitsNet";

    private const string Resources = "UnitsNet.GeneratedCode.Resources.";

    /// <summary>Writes the library with shorter lists.</summary>
    /// <param name="library">The library as its makers publish it.</param>
    /// <param name="others">The assemblies of the program.</param>
    /// <param name="file">The file to write; one that is there is replaced.</param>
    /// <returns>The names of the quantities that stayed.</returns>
    /// <exception cref="InvalidDataException">The library does not list its quantities as expected: it is of another version.
    /// </exception>
    public static IReadOnlyList<string> Write(string library, IEnumerable<string> others, string file)
    {
        using var units = ModuleDefinition.ReadModule(library);
        var named = others.SelectMany(Named).ToHashSet(StringComparer.Ordinal);
        var quantities = units.Types.Where(type => type.IsValueType && type.Interfaces.Any(own =>
            own.InterfaceType.FullName == "UnitsNet.IQuantity")).ToList();
        var kept = quantities.Where(type => named.Contains(type.Name)).ToList();
        if (kept.Count == 0)
            throw new InvalidDataException($"{library}: none of its {quantities.Count} quantities is named by the program.");
        var list = units.GetType("UnitsNet.Quantity") ?? throw Unexpected("no list of quantities");
        ShortenNames(list, kept);
        ShortenMaking(list, kept);
        RemoveWords(units, kept);
        WriteIfOther(units, file);
        return [.. kept.Select(type => type.Name)];
    }

    // What is built of it is not built again where nothing changed.
    private static void WriteIfOther(ModuleDefinition units, string file)
    {
        using var content = new MemoryStream();
        units.Write(content);
        var bytes = content.ToArray();
        if (!File.Exists(file) || !bytes.AsSpan().SequenceEqual(File.ReadAllBytes(file)))
            File.WriteAllBytes(file, bytes);
    }

    // A quantity, or its unit: VolumeUnit stands for Volume.
    private static IEnumerable<string> Named(string assembly)
    {
        using var module = ModuleDefinition.ReadModule(assembly);
        foreach (var type in module.GetTypeReferences().Where(type => type.Scope.Name == Library))
        {
            yield return type.Name;
            if (type.Namespace == "UnitsNet.Units" && type.Name.EndsWith("Unit", StringComparison.Ordinal))
                yield return type.Name[..^4];
        }
    }

    // All of them by their names: the static constructor adds one after the other to a dictionary.
    private static void ShortenNames(TypeDefinition list, List<TypeDefinition> kept)
    {
        var constructor = list.Methods.Single(method => method.Name == ".cctor");
        var body = constructor.Body.Instructions;
        var removed = 0;
        for (var i = 0; i + 3 < body.Count;)
        {
            if (body[i].OpCode == OpCodes.Dup && body[i + 1].OpCode == OpCodes.Ldstr
                && body[i + 2].Operand is MethodReference { Name: "get_Info" } info
                && body[i + 3].Operand is MethodReference { Name: "Add" }
                && kept.TrueForAll(type => type.FullName != info.DeclaringType.FullName))
            {
                for (var left = 4; left > 0; left--)
                    body.RemoveAt(i);
                removed++;
            }
            else
            {
                i++;
            }
        }
        if (removed == 0)
            throw Unexpected("the dictionary of quantities is made otherwise");
    }

    // A quantity of a figure and a unit: one question after the other whose unit it is.
    private static void ShortenMaking(TypeDefinition list, List<TypeDefinition> kept)
    {
        var method = list.Methods.SingleOrDefault(one => one.Name == "TryFrom" && one.Parameters.Count == 3
            && one.Parameters[0].ParameterType.Name == "QuantityValue"
            && one.Parameters[1].ParameterType.Name == "Enum") ?? throw Unexpected("no TryFrom");
        var body = new MethodBody(method);
        method.Body = body;
        var code = body.GetILProcessor();
        foreach (var type in kept)
        {
            var make = type.Methods.SingleOrDefault(one => one.Name == "From" && one.Parameters.Count == 2
                && one.Parameters[0].ParameterType.FullName == method.Parameters[0].ParameterType.FullName)
                ?? throw Unexpected($"{type.Name} has no From");
            var unit = make.Parameters[1].ParameterType;
            var next = code.Create(OpCodes.Nop);
            code.Emit(OpCodes.Ldarg_1);
            code.Emit(OpCodes.Isinst, unit);
            code.Emit(OpCodes.Brfalse, next);
            code.Emit(OpCodes.Ldarg_2);
            code.Emit(OpCodes.Ldarg_0);
            code.Emit(OpCodes.Ldarg_1);
            code.Emit(OpCodes.Unbox_Any, unit);
            code.Emit(OpCodes.Call, make);
            code.Emit(OpCodes.Box, type);
            code.Emit(OpCodes.Stind_Ref);
            code.Emit(OpCodes.Ldc_I4_1);
            code.Emit(OpCodes.Ret);
            code.Append(next);
        }
        code.Emit(OpCodes.Ldarg_2);
        code.Emit(OpCodes.Ldnull);
        code.Emit(OpCodes.Stind_Ref);
        code.Emit(OpCodes.Ldc_I4_0);
        code.Emit(OpCodes.Ret);
    }

    // What the units of each are called.
    private static void RemoveWords(ModuleDefinition units, List<TypeDefinition> kept)
    {
        var left = units.Resources.Where(resource => resource.Name.StartsWith(Resources, StringComparison.Ordinal)
            && !kept.Exists(type => resource.Name == $"{Resources}{type.Name}.resources")).ToList();
        foreach (var resource in left)
            units.Resources.Remove(resource);
    }

    private static InvalidDataException Unexpected(string what) => new($"The units library is of another version: {what}.");
}
