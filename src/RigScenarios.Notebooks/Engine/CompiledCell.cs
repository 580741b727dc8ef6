using System.Reflection;
using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Notebooks.Engine;

/// <summary>A code cell, compiled once and run as often as wished.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Error">Why it does not compile; null if it does.</param>
/// <param name="Run">Runs it on a reader's slots, one for each cell's variables; null if it does not compile or holds nothing to
/// run.</param>
/// <param name="Variables">The class whose object holds its variables; null as for <paramref name="Run"/>.</param>
/// <param name="Uses">What it takes from earlier cells.</param>
internal sealed record CompiledCell(
    NotebookCell Cell, CellError? Error, Func<object?[], Task<object?>>? Run, Type? Variables, CellUses Uses)
{
    /// <summary>A variable that the cell declares, to be given another value in a reader's slots.</summary>
    public FieldInfo? Variable(string name) =>
        Variables?.GetField(name, BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic);
}

/// <summary>What a cell takes from earlier ones.</summary>
/// <param name="Cells">Numbers of the cells whose variables, methods or types it names.</param>
/// <param name="Reads">Each variable that it names, with the number of the cell that declares it.</param>
/// <param name="Writes">Those among them that it changes.</param>
internal sealed record CellUses(IReadOnlySet<int> Cells, IReadOnlySet<(int Cell, string Name)> Reads,
    IReadOnlySet<(int Cell, string Name)> Writes)
{
    public static CellUses Nothing { get; } = new(new HashSet<int>(), new HashSet<(int, string)>(), new HashSet<(int, string)>());
}
