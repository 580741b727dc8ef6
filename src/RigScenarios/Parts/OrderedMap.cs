using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace RigScenarios.Parts;

/// <summary>
/// Named things in a fixed order, unchangeable: like a read-only dictionary, but the order in which a file names its parts,
/// builds and blocks is kept. Two maps are equal if they hold equal things under equal names in the same order.
/// </summary>
/// <typeparam name="T">What has a name.</typeparam>
public sealed class OrderedMap<T> : IReadOnlyCollection<KeyValuePair<string, T>>, IEquatable<OrderedMap<T>>
    where T : notnull
{
    private readonly OrderedDictionary<string, T> items;

    /// <summary>Takes the items in their order.</summary>
    /// <param name="items">Names with things.</param>
    /// <exception cref="ArgumentException">A name stands twice.</exception>
    public OrderedMap(IEnumerable<KeyValuePair<string, T>> items) =>
        this.items = new OrderedDictionary<string, T>(items, StringComparer.Ordinal);

    /// <summary>A map with nothing in it.</summary>
    public static OrderedMap<T> Empty { get; } = new([]);

    /// <summary>How many things there are.</summary>
    public int Count => items.Count;

    /// <summary>The names, in order.</summary>
    public IEnumerable<string> Keys => items.Keys;

    /// <summary>The things, in order.</summary>
    public IEnumerable<T> Values => items.Values;

    /// <summary>The thing of that name.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public T this[string name] => items[name];

    /// <summary>Whether there is a thing of that name.</summary>
    public bool ContainsKey(string name) => items.ContainsKey(name);

    /// <summary>The thing of that name, if there is one.</summary>
    public bool TryGetValue(string name, [MaybeNullWhen(false)] out T value) => items.TryGetValue(name, out value);

    /// <summary>The map with one thing changed, or added at the end.</summary>
    public OrderedMap<T> With(string name, T value)
    {
        var changed = new OrderedDictionary<string, T>(items, StringComparer.Ordinal) { [name] = value };
        return new OrderedMap<T>(changed);
    }

    /// <summary>The map without the thing of that name.</summary>
    public OrderedMap<T> Without(string name) => new(items.Where(item => item.Key != name));

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() => items.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public bool Equals(OrderedMap<T>? other) => other is not null && items.SequenceEqual(other.items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as OrderedMap<T>);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        items.Aggregate(items.Count, (hash, item) => HashCode.Combine(hash, item.Key, item.Value));
}
