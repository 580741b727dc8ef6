namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>One uncertain thing: a field, or several that are drawn together.</summary>
/// <param name="Name">In words.</param>
/// <param name="Paths">The fields, by their paths in the file.</param>
/// <param name="Coordinates">Which coordinates of a point of the unit cube draw it, from 0.</param>
public sealed record UncertainThing(string Name, IReadOnlyList<string> Paths, IReadOnlyList<int> Coordinates)
{
    /// <summary>A thing with one coordinate, by its path alone.</summary>
    /// <param name="path">The field.</param>
    /// <param name="coordinate">The coordinate, from 0.</param>
    public static UncertainThing Of(string path, int coordinate) => new(path, [path], [coordinate]);
}
