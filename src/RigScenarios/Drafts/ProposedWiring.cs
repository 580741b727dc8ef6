using System.Text.RegularExpressions;
using RigScenarios.Builds;
using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>One line of the wiring: what feeds a thing, and why.</summary>
/// <param name="Thing">The thing, by its name on the rig.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="FedBy">What feeds it: <c>battery</c>, the plate's, a splitter's or a regulator's name; empty if nothing
/// fits.</param>
/// <param name="FedByTitle">Its name for people.</param>
/// <param name="Proposed">Whether this is a proposal; otherwise somebody chose it.</param>
/// <param name="Why">The reason, in a sentence.</param>
/// <param name="Choices">What else could be chosen, as values of "fed-by" with names for people.</param>
public sealed record WiringLine(string Thing, string Title, string FedBy, string FedByTitle, bool Proposed, string Why,
    IReadOnlyList<WiringChoice> Choices)
{
    /// <summary>The part that it is, by its id.</summary>
    public required string Part { get; init; }

    /// <summary>Whether it is a device, and not something that gives power on.</summary>
    public required bool IsDevice { get; init; }

    /// <summary>Its name in the scenario, and so in the wiring's network.</summary>
    public required string Element { get; init; }

    /// <summary>The outlet that it is plugged into; null for none in particular.</summary>
    public string? Outlet { get; init; }

    /// <summary>The cable in front of it for people; empty where none is given.</summary>
    public string CableTitle { get; init; } = "";
}

/// <summary>A feed that can be chosen.</summary>
/// <param name="Value">The value of "fed-by". The id of a listed regulator puts that regulator on the rig.</param>
/// <param name="Title">Its name for people.</param>
public sealed record WiringChoice(string Value, string Title)
{
    /// <summary>Its named outlets.</summary>
    public IReadOnlyList<OutletChoice> Outlets { get; init; } = [];
}

/// <summary>
/// Proposes what feeds what: what takes the battery's whole range of voltage hangs on the plate (or the battery, if there is no
/// plate);
/// everything else on the lightest regulator whose output it takes, whose input takes the battery, and that carries its current.
/// </summary>
internal sealed partial class ProposedWiring
{
    private const double Tolerance = 1e-9;

    private readonly DraftRig rig;
    private readonly PackVoltages? pack;
    private readonly Dictionary<string, double> amperesOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> feeds = new(StringComparer.Ordinal);
    private readonly List<(RigThing Thing, bool Proposed, string Why)> found = [];
    private readonly OutletOffers outlets;

    private ProposedWiring(DraftRig rig)
    {
        this.rig = rig;
        outlets = new OutletOffers(rig, feeds);
        pack = rig.Battery is { } battery ? PackVoltages.Of(battery.Part, rig.Plate?.Part) : null;
    }

    /// <summary>The lines, devices first.</summary>
    public IReadOnlyList<WiringLine> Lines { get; private set; } = [];

    /// <summary>What feeds each device and regulator; a device that nothing fits is not in it.</summary>
    public IReadOnlyDictionary<string, string> Feeds => feeds;

    /// <summary>Wires a rig. Regulators that are proposed or were chosen from the list are added to it.</summary>
    public static ProposedWiring Of(DraftRig rig)
    {
        var wiring = new ProposedWiring(rig);
        if (rig.Battery is null)
            return wiring;
        var devices = rig.Devices.ToList();
        // What somebody chose comes first, so that a proposal counts the current that is already taken.
        foreach (var device in devices.Where(device => wiring.Chosen(device) is not null))
            wiring.Take(device, wiring.Chosen(device)!);
        foreach (var device in devices.Where(device => !wiring.feeds.ContainsKey(device.Name)))
            wiring.Propose(device);
        foreach (var splitter in rig.Splitters)
            wiring.FeedSplitter(splitter);
        // A feed chosen for one may put another on the rig.
        while (rig.Regulators.FirstOrDefault(regulator => !wiring.feeds.ContainsKey(regulator.Name)) is { } regulator)
            wiring.FeedRegulator(regulator);
        wiring.Lines = [.. devices.Concat(rig.Splitters).Concat(rig.Regulators).Select(wiring.Line)];
        wiring.outlets.TellLost();
        return wiring;
    }

    /// <summary>The outlet that a thing is plugged into; null for none in particular.</summary>
    public string? OutletOf(string thing) => rig.Find(thing) is { } found ? outlets.Of(found) : null;

    /// <summary>The feed that somebody chose, if it is still there; a listed regulator is put on the rig.</summary>
    private string? Chosen(RigThing thing)
    {
        if (thing.Thing.FedBy is not { } wanted || wanted == thing.Name)
            return null;
        if (wanted == Build.BatteryFeed || wanted == rig.Battery?.Name)
            return Build.BatteryFeed;
        if (rig.Find(wanted) is { } there)
            return there.Thing.Role is RigRole.Plate or RigRole.Regulator || there.IsSplitter ? wanted : null;
        if (rig.Draft.Things.ContainsKey(wanted))
            return null;
        var id = rig.FindPart(wanted) is null ? SecondOfItsKind().Replace(wanted, "") : wanted;
        return rig.FindPart(id) is { Regulator: not null } part ? rig.Add(wanted, id, part).Name : null;
    }

    private void Take(RigThing device, string feed)
    {
        Feed(device, feed);
        found.Add((device, false, $"Chosen. {Remark(device, feed)}".TrimEnd()));
    }

    private void Propose(RigThing device)
    {
        if (pack is not { } volts)
        {
            Feed(device, rig.StandardFeed);
            found.Add((device, true, "The battery's figures don't add up, so its voltage can't be compared."));
            return;
        }
        var (low, high) = Window(device.Part);
        if (high >= volts.FullVolts - Tolerance && low <= volts.EmptyVolts + Tolerance)
        {
            Feed(device, rig.StandardFeed);
            found.Add((device, true, device.Part.Voltage is null
                ? "Its voltage is not known. Read it on the label before you plug it in: the full battery gives "
                    + $"{volts.FullVolts:0.#} V."
                : $"It takes {WindowText(device.Part)}, and the battery gives {volts.EmptyVolts:0.#} to {volts.FullVolts:0.#} "
                    + $"V: straight {From(rig.StandardFeed)}."));
            return;
        }
        if (Regulator(device, volts) is { } regulator)
        {
            Feed(device, regulator.Name);
            found.Add((device, true,
                $"It takes {WindowText(device.Part)}, but the battery gives {volts.EmptyVolts:0.#} to {volts.FullVolts:0.#} V: "
                + $"through {regulator.Part.Name}, the lightest that gives a voltage it takes "
                    + $"({regulator.Part.Regulator!.OutputVoltage.Volts:0.##} V) and carries its "
                        + $"{Amperes(device, regulator.Part):0.0} A."));
            return;
        }
        if (high >= volts.FullVolts - Tolerance && low < volts.FullVolts)
        {
            Feed(device, rig.StandardFeed);
            found.Add((device, true,
                $"No regulator of the list fits it. Straight {From(rig.StandardFeed)} it stops when the voltage falls to "
                    + $"{low:0.#} V, before the battery is empty."));
            return;
        }
        found.Add((device, true,
            $"Nothing fits: it takes {WindowText(device.Part)}, the battery gives {volts.EmptyVolts:0.#} to "
                + $"{volts.FullVolts:0.#} V, and no regulator of the list gives a voltage it takes and carries its current "
                    + "from this battery. Until something feeds it, it is left out of the answer."));
    }

    private void FeedRegulator(RigThing regulator)
    {
        var feed = Chosen(regulator);
        Feed(regulator, feed ?? rig.StandardFeed);
        var data = regulator.Part.Regulator!;
        var why = pack is { } volts && data.InputMinimum.Volts > volts.EmptyVolts + Tolerance
            ? $"It needs {data.InputMinimum.Volts:0.##} V and stops before the battery is empty."
            : $"It takes {data.InputMinimum.Volts:0.##} to {data.InputMaximum.Volts:0.##} V.";
        found.Add((regulator, feed is null, why));
    }

    private void FeedSplitter(RigThing splitter)
    {
        var feed = Chosen(splitter);
        Feed(splitter, feed ?? rig.StandardFeed);
        found.Add((splitter, feed is null, "It gives on the voltage that it gets."));
    }

    private RigThing? Regulator(RigThing device, PackVoltages volts)
    {
        var onRig = rig.Regulators.Where(regulator => Fits(device, regulator.Part, volts)
            && Carries(regulator.Part, amperesOf.GetValueOrDefault(regulator.Name) + Amperes(device, regulator.Part)))
            .OrderBy(Weight).FirstOrDefault();
        if (onRig is not null)
            return onRig;
        var (id, part) = rig.AllParts
            .Where(item => Fits(device, item.Value, volts) && Carries(item.Value, Amperes(device, item.Value)))
            .OrderBy(item => item.Value.Mass?.Grams ?? double.PositiveInfinity)
                .ThenByDescending(item => item.Value.Regulator!.Efficiency.Percent).FirstOrDefault();
        if (part is null)
            return null;
        var name = id;
        for (var number = 2; rig.Draft.Things.ContainsKey(name) || rig.Find(name) is not null || IsOtherInKit(name, id); number++)
            name = $"{id}-{number}";
        return rig.Add(name, id, part);

        bool IsOtherInKit(string kitName, string partId) =>
            rig.Before is { } before && before.Kit.TryGetValue(kitName, out var item) && item.Part != partId;

        static double Weight(RigThing thing) => thing.Part.Mass?.Grams ?? double.PositiveInfinity;
    }

    private static bool Fits(RigThing device, Part part, PackVoltages volts)
    {
        if (part.Regulator is not { } data)
            return false;
        var (low, high) = Window(device.Part);
        return data.OutputVoltage.Volts >= low - Tolerance && data.OutputVoltage.Volts <= high + Tolerance
            && data.InputMaximum.Volts >= volts.FullVolts - Tolerance && data.InputMinimum.Volts <= volts.EmptyVolts + Tolerance;
    }

    private static bool Carries(Part regulator, double amperes) =>
        regulator.Regulator!.MaximumCurrent is not { } most || amperes <= most.Amperes;

    /// <summary>What a device takes from a regulator at most, in A.</summary>
    private static double Amperes(RigThing device, Part regulator) =>
        (double)((device.Part.Power?.Record ?? device.Part.Power?.Standby)?.As(UnitsNet.Units.PowerUnit.Watt)
            ?? 0) * device.Thing.Count / regulator.Regulator!.OutputVoltage.Volts;

    private void Feed(RigThing thing, string feed)
    {
        feeds[thing.Name] = feed;
        if (thing.IsDevice && rig.Find(feed) is { Part.Regulator: not null } regulator)
            amperesOf[feed] = amperesOf.GetValueOrDefault(feed) + Amperes(thing, regulator.Part);
    }

    private string Remark(RigThing device, string feed)
    {
        if (device.Part.Voltage is null)
            return "Its voltage is not known: read it on the label before you plug it in.";
        return rig.Find(feed) is { Part.Regulator: { } data }
            ? $"It takes {WindowText(device.Part)} and gets {data.OutputVoltage.Volts:0.##} V."
            : $"It takes {WindowText(device.Part)}.";
    }

    private WiringLine Line(RigThing thing)
    {
        var (_, proposed, why) = found.Find(item => item.Thing.Name == thing.Name);
        var feed = feeds.GetValueOrDefault(thing.Name, "");
        return new WiringLine(thing.Name, thing.Part.Name, feed, TitleOf(feed), proposed, why ?? "", Choices(thing))
        {
            Part = thing.PartId,
            IsDevice = thing.IsDevice,
            Element = thing.Name,
            Outlet = outlets.Of(thing),
            CableTitle = rig.Cables.Of(thing.Name) is { } cable ? cable.Part.Name : "",
        };
    }

    private List<WiringChoice> Choices(RigThing thing)
    {
        var names = new List<string> { Build.BatteryFeed };
        if (rig.Plate is { } plate)
            names.Insert(0, plate.Name);
        names.AddRange(rig.Splitters.Select(splitter => splitter.Name).Where(name => name != thing.Name));
        names.AddRange(rig.Regulators.Select(regulator => regulator.Name).Where(name => name != thing.Name));
        var listed = pack is { } volts && thing.IsDevice
            ? rig.AllParts.Where(item => !names.Contains(item.Key) && !rig.Draft.Things.ContainsKey(item.Key)
                && Fits(thing, item.Value, volts)).OrderBy(item => item.Value.Mass?.Grams ?? double.PositiveInfinity)
            : Enumerable.Empty<KeyValuePair<string, Part>>();
        return [.. names.Select(name => new WiringChoice(name, TitleOf(name)) { Outlets = outlets.For(thing, name) }),
            .. listed.Select(item => new WiringChoice(item.Key, $"{item.Value.Name} (to be added)"))];
    }

    private string TitleOf(string feed) => feed switch
    {
        "" => "nothing",
        Build.BatteryFeed => "the battery itself",
        _ => rig.Find(feed)?.Part.Name ?? feed,
    };

    private string From(string feed) => feed == Build.BatteryFeed ? "from the battery" : $"from {TitleOf(feed)}";

    private static (double Low, double High) Window(Part part) =>
        (part.Voltage?.Minimum?.Volts ?? 0, part.Voltage?.Maximum?.Volts ?? double.PositiveInfinity);

    private static string WindowText(Part part) => part.Voltage switch
    {
        { Minimum: { } low, Maximum: { } high } => $"{low.Volts:0.##} to {high.Volts:0.##} V",
        { Minimum: { } low } => $"at least {low.Volts:0.##} V",
        { Maximum: { } high } => $"at most {high.Volts:0.##} V",
        _ => "a voltage that is not known",
    };

    [GeneratedRegex("-[0-9]$", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex SecondOfItsKind();
}
