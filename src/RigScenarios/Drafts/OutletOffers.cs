using System.Globalization;
using RigScenarios.Builds;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>An outlet that a thing could be plugged into.</summary>
/// <param name="Name">Its name on the part.</param>
/// <param name="Words">Its limits and what is plugged in, for people: "up to 8 A, fuse 10 A".</param>
/// <param name="WhyNot">Why it can't be taken; empty if it can.</param>
public sealed record OutletChoice(string Name, string Words, string WhyNot);

/// <summary>The outlets of plate and splitters, with their limits and who hangs on them.</summary>
internal sealed class OutletOffers(ProposedWiring wiring)
{
    private const double Tolerance = 1e-9;

    /// <summary>The outlet that a thing is plugged into; null for none in particular.</summary>
    public string? Of(string thing) => LinkLookup.Fed(wiring.Build).FirstOrDefault(item => item.Name == thing).Outlet
        is { } outlet && wiring.Feeds.TryGetValue(thing, out var feed) && Of(wiring.Build, feed).ContainsKey(outlet)
        ? outlet : null;

    /// <summary>The outlets of a feed as a thing may choose among them.</summary>
    public IReadOnlyList<OutletChoice> For(string thing, string feed) =>
        [.. Of(wiring.Build, feed).Select(outlet => Offer(thing, feed, outlet.Key, outlet.Value))];

    private OrderedMap<OutletData> Of(Build build, string feed) => LinkLookup.Outlets(build, feed, wiring.Part);

    private OutletChoice Offer(string thing, string feed, string name, OutletData outlet)
    {
        var others = LinkLookup.Fed(wiring.Build).Select(item => item.Name)
            .Where(other => other != thing && wiring.Feeds.GetValueOrDefault(other) == feed && Of(other) == name).ToList();
        var part = wiring.Part(thing)!;
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
            words.Add($"taken by {string.Join(", ", others.Select(other => wiring.Part(other)!.Name))}");
        var plugs = others.Sum(wiring.CountOf) + wiring.CountOf(thing);
        var whyNot = outlet.Voltage is { } held && !Takes(part, held.Volts)
            ? $"{part.Name} can't take {Number(held.Volts)} V"
            : plugs > outlet.Sockets ? others.Count > 0 ? "no socket left" : "too few sockets" : "";
        return new OutletChoice(name, string.Join(", ", words), whyNot);
    }

    private static bool Takes(Part part, double volts) => part.Regulator is { } regulator
        ? volts >= regulator.InputMinimum.Volts - Tolerance && volts <= regulator.InputMaximum.Volts + Tolerance
        : volts >= (part.Voltage?.Minimum?.Volts ?? 0) - Tolerance
            && volts <= (part.Voltage?.Maximum?.Volts ?? double.PositiveInfinity) + Tolerance;

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
