namespace RigScenarios.Tests.Mutations;

/// <summary>A file of data/ that was changed by chance, made again from the seed and the number alone.</summary>
/// <param name="Seed">The seed of the series.</param>
/// <param name="Number">Its number in the series.</param>
/// <param name="Name">The file that it was, such as <c>scenarios/teaching-kit.yaml</c>.</param>
/// <param name="Bytes">What it is now.</param>
/// <param name="Changes">What was done to it, in order.</param>
internal sealed record MutatedFile(int Seed, int Number, string Name, byte[] Bytes, IReadOnlyList<string> Changes)
{
    public override string ToString() => $"seed {Seed}, case {Number}: {Name}, {string.Join(", ", Changes)}";
}
