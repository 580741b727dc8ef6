using RigScenarios.Parts;

namespace RigScenarios.Balance;

/// <summary>
/// A build as it sits: parts with their places. The places form a tree; moving a part moves what hangs on it. Immutable.
/// </summary>
public sealed class PlacedBuild
{
    private readonly Lazy<MassProperties> massProperties;

    /// <param name="parts">The parts by name, in any order; at least one has a mass above 0.</param>
    /// <exception cref="ArgumentException">A carrier is not there, parts carry each other in a ring, or nothing has a mass; all
    /// problems in one message.</exception>
    public PlacedBuild(OrderedMap<PlacedPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var problems = Problems(parts).ToList();
        if (problems.Count > 0)
            throw new ArgumentException(string.Join(Environment.NewLine, problems), nameof(parts));
        Parts = parts;
        massProperties = new(() => MassProperties.Of(this));
    }

    /// <summary>The parts by name.</summary>
    public OrderedMap<PlacedPart> Parts { get; }

    /// <summary>Mass, centre and inertia of the whole, worked out when first asked for.</summary>
    public MassProperties MassProperties => massProperties.Value;

    /// <summary>The build with one part changed, or added.</summary>
    /// <exception cref="ArgumentException">As for the constructor.</exception>
    public PlacedBuild With(string name, PlacedPart part) => new(Parts.With(name, part));

    /// <summary>The part and all that hangs on it, in the order of the build.</summary>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public IReadOnlyList<string> WithAllOn(string name)
    {
        Named(name);
        return [.. Parts.Keys.Where(other => Chain(Parts, other).Contains(name))];
    }

    /// <summary>The build without a part and without what hangs on it.</summary>
    /// <exception cref="ArgumentException">There is no such part, or nothing is left.</exception>
    public PlacedBuild Without(string name)
    {
        var off = WithAllOn(name);
        return new(new OrderedMap<PlacedPart>(Parts.Where(part => !off.Contains(part.Key))));
    }

    /// <summary>The part of that name.</summary>
    /// <exception cref="ArgumentException">There is none; the message lists those that there are.</exception>
    internal PlacedPart Named(string name) => Parts.TryGetValue(name, out var part)
        ? part
        : throw new ArgumentException(
            $"There is no part \"{name}\"; accepted: {string.Join(", ", Parts.Keys.Select(key => $"\"{key}\""))}.", nameof(name));

    private static IEnumerable<string> Problems(OrderedMap<PlacedPart> parts)
    {
        foreach (var (name, part) in parts)
        {
            if (part.Placement.Carrier is { } carrier && !parts.ContainsKey(carrier))
                yield return $"\"{name}\" sits on \"{carrier}\", which is not in the build; accepted: "
                    + $"{string.Concat(parts.Keys.Where(key => key != name).Select(key => $"\"{key}\", "))}or none for the "
                        + "rig itself.";
            else if (Chain(parts, name).Count() > parts.Count)
                yield return $"\"{name}\" hangs on itself: "
                    + $"{string.Join(" on ", Chain(parts, name).Take(parts.Count + 1).Select(key => $"\"{key}\""))}.";
        }

        if (!parts.Values.Any(part => part.Mass.Kilograms > 0))
            yield return "The build has no mass; accepted: at least one part with a mass above 0 kg.";
    }

    /// <summary>The part, its carrier, that one's carrier and so on; one more than there are parts if it is a ring.</summary>
    private static IEnumerable<string> Chain(OrderedMap<PlacedPart> parts, string name)
    {
        string? next = name;
        for (var i = 0; next is not null && i <= parts.Count; i++)
        {
            yield return next;
            next = parts.TryGetValue(next, out var part) ? part.Placement.Carrier : null;
        }
    }
}
