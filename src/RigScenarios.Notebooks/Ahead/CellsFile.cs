using System.Text.Json;
using System.Text.Json.Serialization;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Ahead;

/// <summary>What is kept of a notebook that was compiled, beside its assemblies, so that it runs where no compiler is.</summary>
/// <param name="Parameters">What it declares.</param>
/// <param name="Cells">Its code cells, in order; all compiled.</param>
/// <param name="Prose">Its text cells as HTML, by their numbers; links to other notebooks begin with <see cref="Link"/>.</param>
internal sealed record CellsFile(
    IReadOnlyList<NotebookParameter> Parameters, IReadOnlyList<CellAhead> Cells, IReadOnlyDictionary<int, string> Prose)
{
    /// <summary>Stands before the path of another notebook in links, until it is known where that one's page is.</summary>
    public const string Link = "notebook:";

    public string Json() => JsonSerializer.Serialize(this, CellsFileFormat.Default.CellsFile);

    public static CellsFile Read(ReadOnlySpan<byte> json) => JsonSerializer.Deserialize(json, CellsFileFormat.Default.CellsFile)!;
}

/// <summary>A code cell that was compiled.</summary>
/// <param name="Number">Its number in the notebook.</param>
/// <param name="Assembly">Name of the assembly; null where the cell holds nothing to run.</param>
/// <param name="Type">The class whose object holds its variables.</param>
/// <param name="Method">The static method of that class that runs it on slots.</param>
/// <param name="Uses">What it takes from earlier cells.</param>
internal sealed record CellAhead(int Number, string? Assembly, string? Type, string? Method, UsesAhead Uses);

/// <summary>What a cell takes from earlier ones, as <see cref="CellUses"/>.</summary>
internal sealed record UsesAhead(
    IReadOnlyList<int> Cells, IReadOnlyList<VariableAhead> Reads, IReadOnlyList<VariableAhead> Writes)
{
    public static UsesAhead Of(CellUses uses) => new([.. uses.Cells.Order()], Sorted(uses.Reads), Sorted(uses.Writes));

    public CellUses ToUses() => new(Cells.ToHashSet(), Reads.Select(one => (one.Cell, one.Name)).ToHashSet(),
        Writes.Select(one => (one.Cell, one.Name)).ToHashSet());

    // In one order: the same notebook gives the same file.
    private static IReadOnlyList<VariableAhead> Sorted(IEnumerable<(int Cell, string Name)> variables) =>
        [.. variables.Select(one => new VariableAhead(one.Cell, one.Name)).OrderBy(one => one.Cell)
            .ThenBy(one => one.Name, StringComparer.Ordinal)];
}

/// <summary>A variable, and the cell that declares it.</summary>
internal sealed record VariableAhead(int Cell, string Name);

/// <summary>Generated, so that it needs no reflection.</summary>
[JsonSourceGenerationOptions(IgnoreReadOnlyProperties = true, UseStringEnumConverter = true,
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(CellsFile))]
internal sealed partial class CellsFileFormat : JsonSerializerContext;
