using System.Collections;
using System.Runtime.CompilerServices;

namespace RigScenarios.Parts;

/// <summary>
/// Names of what joins two parts, in the words of the trade, such as <c>75 mm bowl</c>, in the order of the file. Unlike a plain
/// list it is equal to another one of the same names.
/// </summary>
[CollectionBuilder(typeof(Interfaces), nameof(Of))]
public sealed class Interfaces : IReadOnlyList<string>, IEquatable<Interfaces>
{
    private readonly string[] names;

    private Interfaces(string[] names) => this.names = names;

    /// <inheritdoc/>
    public int Count => names.Length;

    /// <inheritdoc/>
    public string this[int index] => names[index];

    /// <summary>Takes the names in their order.</summary>
    /// <param name="names">The names.</param>
    public static Interfaces Of(ReadOnlySpan<string> names) => new(names.ToArray());

    /// <inheritdoc/>
    public IEnumerator<string> GetEnumerator() => ((IEnumerable<string>)names).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(Interfaces? other) => other is not null && names.AsSpan().SequenceEqual(other.names);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Interfaces);

    /// <inheritdoc/>
    public override int GetHashCode() => names.Aggregate(names.Length, HashCode.Combine);

    /// <inheritdoc/>
    public override string ToString() => string.Join(", ", names);
}
