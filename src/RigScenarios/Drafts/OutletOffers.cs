using System.Globalization;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>An outlet that a thing could be plugged into.</summary>
/// <param name="Name">Its name on the part.</param>
/// <param name="Words">Its limits and what is plugged in, for people: "up to 8 A, fuse 10 A".</param>
/// <param name="WhyNot">Why it can't be taken; empty if it can.</param>
public sealed record OutletChoice(string Name, string Words, string WhyNot);

/// <summary>The outlets of plate and splitters, with their limits and who hangs on them.</summary>
internal sealed class OutletOffers(DraftRig rig, IReadOnlyDictionary<string, string> feeds)
{
    private const double Tolerance = 1e-9;

    /// <summary>The outlets of what feeds something; none where it has no named ones.</summary>
    public OrderedMap<OutletData> Of(string feed) => rig.Find(feed)?.Part switch
    {
        { Plate: { } plate } => plate.Outlets,
        { Splitter: { } splitter } => splitter.Outlets,
        _ => OrderedMap<OutletData>.Empty,
    };

    /// <summary>The outlet that a thing is plugged into; null for none in particular.</summary>
    public string? Of(RigThing thing) =>
        thing.Thing.Outlet is { } outlet && feeds.TryGetValue(thing.Name, out var feed) && Of(feed).ContainsKey(outlet)
            ? outlet : null;

    /// <summary>Says of each thing whose outlet isn't there any more that it hangs on none in particular.</summary>
    public void TellLost()
    {
        foreach (var thing in rig.Things.Where(thing => thing.Thing.Outlet is not null && Of(thing) is null
            && feeds.ContainsKey(thing.Name)))
        {
            var feed = rig.Find(feeds[thing.Name])?.Part.Name ?? "the battery";
            rig.Log.Warning($"things.{thing.Name}.outlet",
                $"{feed} has no outlet \"{thing.Thing.Outlet}\", so {thing.Part.Name} is held against no outlet's limit.");
        }
    }

    /// <summary>The outlets of a feed as a thing may choose among them.</summary>
    public IReadOnlyList<OutletChoice> For(RigThing thing, string feed) =>
        [.. Of(feed).Select(outlet => Offer(thing, feed, outlet.Key, outlet.Value))];

    private OutletChoice Offer(RigThing thing, string feed, string name, OutletData outlet)
    {
        var others = rig.Things.Where(other => other.Name != thing.Name && feeds.GetValueOrDefault(other.Name) == feed
            && Of(other) == name).ToList();
        var words = new List<string>();
        if (outlet.Voltage is { } volts)
            words.Add($"holds {Number(volts.Volts)} V");
        if (outlet.MaximumCurrent is { } amperes)
            words.Add($"up to {Number(amperes.Amperes)} A");
        if (outlet.Fuse is { } fuse)
            words.Add($"fuse {Number(fuse.Rating.Amperes)} A");
        if (words.Count == 0)
            words.Add("no limit given");
        if (others.Count > 0)
            words.Add($"taken by {string.Join(", ", others.Select(other => other.Part.Name))}");
        var plugs = others.Sum(Plugs) + Plugs(thing);
        var whyNot = outlet.Voltage is { } held && !Takes(thing.Part, held.Volts)
            ? $"{thing.Part.Name} can't take {Number(held.Volts)} V"
            : plugs > outlet.Sockets ? others.Count > 0 ? "no socket left" : "too few sockets" : "";
        return new OutletChoice(name, string.Join(", ", words), whyNot);
    }

    private static int Plugs(RigThing thing) => thing.IsDevice ? thing.Thing.Count : 1;

    private static bool Takes(Part part, double volts) => part.Regulator is { } regulator
        ? volts >= regulator.InputMinimum.Volts - Tolerance && volts <= regulator.InputMaximum.Volts + Tolerance
        : volts >= (part.Voltage?.Minimum?.Volts ?? 0) - Tolerance
            && volts <= (part.Voltage?.Maximum?.Volts ?? double.PositiveInfinity) + Tolerance;

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
