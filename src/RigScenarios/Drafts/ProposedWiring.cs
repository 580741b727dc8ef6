using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>
/// Proposes what feeds what: what takes the battery's whole range of voltage, or is labelled for the battery's own, hangs on the
/// plate (or the battery, if there is no plate); everything else on the lightest regulator that fits. The rules stand in
/// docs/own-rig.md.
/// </summary>
internal sealed class ProposedWiring
{
    private const double Tolerance = 1e-9;

    // A regulator's output lies at least so far above the least voltage of what it feeds.
    private const double LeastAbove = 1.02;

    // A regulator keeps this part of its current.
    private const double MostOfCurrent = 0.9;

    // A label within this of the battery's nominal voltage means a battery of that voltage.
    private const double SameLabel = 0.05;

    private readonly GivenRig given;
    private readonly PackVoltages? pack;
    private readonly Dictionary<string, double> amperesOf = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> feeds = new(StringComparer.Ordinal);
    private readonly List<(string Thing, bool Proposed, string Why)> found = [];
    private readonly List<string> added = [];
    private readonly OutletOffers outlets;

    private ProposedWiring(GivenRig given, Scenario scenario)
    {
        (this.given, Scenario) = (given, scenario);
        outlets = new OutletOffers(this);
        pack = Part(Build.Battery.Item) is { Battery: not null } battery
            ? PackVoltages.Of(battery, Build.Plate is { } plate ? Part(plate) : null) : null;
    }

    /// <summary>The scenario, with the regulators that were proposed.</summary>
    public Scenario Scenario { get; private set; }

    /// <summary>The build in it.</summary>
    public Build Build => Scenario.Builds[given.Frame.Build];

    /// <summary>The lines, devices first.</summary>
    public IReadOnlyList<WiringLine> Lines { get; private set; } = [];

    /// <summary>What feeds each device, splitter and regulator; a device that nothing fits is not in it.</summary>
    public IReadOnlyDictionary<string, string> Feeds => feeds;

    /// <summary>The regulators that were proposed, by their names in the kit.</summary>
    public IReadOnlyList<string> Added => added;

    /// <summary>Wires a rig.</summary>
    /// <param name="given">What is given.</param>
    /// <param name="scenario">The same with every part in it, and only with things that are complete.</param>
    public static ProposedWiring Of(GivenRig given, Scenario scenario)
    {
        var wiring = new ProposedWiring(given, scenario);
        if (wiring.Part(wiring.Build.Battery.Item)?.Battery is null)
            return wiring;
        var devices = wiring.Build.Devices.ToList();
        // What somebody chose comes first, so that a proposal counts the current that is already taken.
        foreach (var (name, device) in devices.Where(device => device.Value.FedBy is not null))
        {
            wiring.Feed(name, device.FedBy!);
            wiring.found.Add((name, false, $"Chosen. {wiring.Remark(name, device.FedBy!)}".TrimEnd()));
        }
        foreach (var (name, _) in devices.Where(device => device.Value.FedBy is null))
            wiring.Propose(name);
        foreach (var (name, splitter) in wiring.Build.Splitters)
            wiring.Give(name, splitter.FedBy, "It gives on the voltage that it gets.");
        foreach (var (name, regulator) in wiring.Build.Regulators)
            wiring.Give(name, regulator.FedBy, wiring.OfRegulator(wiring.Part(name)!.Regulator!));
        wiring.Lines = [.. devices.Select(device => device.Key).Concat(wiring.Build.Splitters.Keys)
            .Concat(wiring.Build.Regulators.Keys).Select(wiring.Line)];
        return wiring;
    }

    /// <summary>The part behind a name in the kit.</summary>
    public Part? Part(string name) => Scenario.PartOf(name);

    /// <summary>How many there are of a device; one of everything else.</summary>
    public int CountOf(string name) => Build.Devices.TryGetValue(name, out var device) ? device.Count : 1;

    private void Propose(string device)
    {
        var (part, standard) = (Part(device)!, Build.StandardFeed);
        if (pack is not { } volts)
        {
            Feed(device, standard);
            found.Add((device, true, "The battery's figures don't add up, so its voltage can't be compared."));
            return;
        }
        var (low, high) = Window(part);
        var range = $"{volts.EmptyVolts:0.#} to {volts.FullVolts:0.#} V";
        var takesFull = high >= volts.FullVolts - Tolerance;
        if (takesFull && low <= volts.EmptyVolts + Tolerance)
        {
            Feed(device, standard);
            found.Add((device, true, part.Voltage is null
                ? "Its voltage is not known. Read it on the label before you plug it in: the full battery gives "
                    + $"{volts.FullVolts:0.#} V."
                : $"It takes {WindowText(part)}, and the battery gives {range}: straight {From(standard)}."));
            return;
        }
        if (takesFull && part.Label?.Voltage is { } label && Math.Abs(label.Volts - volts.NominalVolts)
            <= SameLabel * volts.NominalVolts)
        {
            Feed(device, standard);
            found.Add((device, true, $"It is made for a battery of {label.Volts:0.##} V: straight {From(standard)}, where it "
                + $"stops when the voltage falls to {low:0.#} V."));
            return;
        }
        if (Regulator(device, volts) is { } regulator)
        {
            var data = Part(regulator)!.Regulator!;
            Feed(device, regulator);
            found.Add((device, true, $"It takes {WindowText(part)}, but the battery gives {range}: through "
                + $"{Part(regulator)!.Name}, the lightest that gives a voltage it takes ({data.OutputVoltage.Volts:0.##} V) and "
                + $"carries its {Amperes(device, data):0.0} A."));
            return;
        }
        if (takesFull && low < volts.FullVolts)
        {
            Feed(device, standard);
            found.Add((device, true, $"No regulator of the list fits it. Straight {From(standard)} it stops when the voltage "
                + $"falls to {low:0.#} V, before the battery is empty."));
            return;
        }
        found.Add((device, true, $"Nothing fits: it takes {WindowText(part)}, the battery gives {range}, and no regulator of the "
            + "list gives a voltage it takes and carries its current from this battery. Until something feeds it, it is left "
            + "out of the answer."));
    }

    private void Give(string name, string? chosen, string why)
    {
        Feed(name, chosen ?? Build.StandardFeed);
        found.Add((name, chosen is null, why));
    }

    private string OfRegulator(RegulatorData data) => pack is { } volts && data.InputMinimum.Volts > volts.EmptyVolts + Tolerance
        ? $"It needs {data.InputMinimum.Volts:0.##} V and stops before the battery is empty."
        : $"It takes {data.InputMinimum.Volts:0.##} to {data.InputMaximum.Volts:0.##} V.";

    /// <summary>The lightest regulator that fits: one on the rig that has current left, else one of the list, which is put on
    /// the rig; null where none fits.</summary>
    private string? Regulator(string device, PackVoltages volts)
    {
        var onRig = Build.Regulators.Keys.Where(name => Part(name)?.Regulator is { } data
            && Fits(device, data, volts) && Carries(data, amperesOf.GetValueOrDefault(name) + Amperes(device, data)))
            .OrderBy(name => Part(name)!.Mass?.Grams ?? double.PositiveInfinity).FirstOrDefault();
        if (onRig is not null)
            return onRig;
        var (id, part) = given.AllParts
            .Where(item => item.Value.Regulator is { } data && !item.Key.StartsWith(OwnPart.IdStart, StringComparison.Ordinal)
                && Fits(device, data, volts) && Carries(data, Amperes(device, data)))
            .OrderBy(item => item.Value.Mass?.Grams ?? double.PositiveInfinity)
            .ThenByDescending(item => item.Value.Regulator!.Efficiency.Percent).FirstOrDefault();
        if (part is null)
            return null;
        var name = id;
        // One of that kind that lies in the kit is taken; it is not on the rig, or it would have been found there.
        for (var number = 2; Scenario.Kit.TryGetValue(name, out var item)
            && (item.Part != id || Build.Things.Contains(name)); number++)
            name = $"{id}-{number}";
        Scenario = Scenario with
        {
            Parts = Scenario.FindPart(id) is null ? Scenario.Parts.With(id, part) : Scenario.Parts,
            Kit = Scenario.Kit.ContainsKey(name) ? Scenario.Kit : Scenario.Kit.With(name, new KitItem(id)),
            Builds = Scenario.Builds.With(given.Frame.Build,
                Build with { Regulators = Build.Regulators.With(name, new RegulatorInUse()) }),
        };
        added.Add(name);
        return name;
    }

    private bool Fits(string device, RegulatorData data, PackVoltages volts)
    {
        var (low, high) = Window(Part(device)!);
        return data.OutputVoltage.Volts >= (low * LeastAbove) - Tolerance && data.OutputVoltage.Volts <= high + Tolerance
            && data.InputMaximum.Volts >= volts.FullVolts - Tolerance && data.InputMinimum.Volts <= volts.EmptyVolts + Tolerance;
    }

    private static bool Carries(RegulatorData regulator, double amperes) =>
        regulator.MaximumCurrent is not { } most || amperes <= MostOfCurrent * most.Amperes;

    /// <summary>What a device takes from a regulator at its peak, in A.</summary>
    private double Amperes(string device, RegulatorData regulator) =>
        (double)((Part(device)!.Power is { } draw ? draw.Peak ?? draw.Record ?? draw.Standby : null)
            ?.As(UnitsNet.Units.PowerUnit.Watt) ?? 0) * CountOf(device) / regulator.OutputVoltage.Volts;

    private void Feed(string thing, string feed)
    {
        feeds[thing] = feed;
        if (Build.Devices.ContainsKey(thing) && Build.Regulators.ContainsKey(feed) && Part(feed)?.Regulator is { } regulator)
            amperesOf[feed] = amperesOf.GetValueOrDefault(feed) + Amperes(thing, regulator);
    }

    private string Remark(string device, string feed)
    {
        var part = Part(device)!;
        if (part.Voltage is null)
            return "Its voltage is not known: read it on the label before you plug it in.";
        return Build.Regulators.ContainsKey(feed) && Part(feed)?.Regulator is { } data
            ? $"It takes {WindowText(part)} and gets {data.OutputVoltage.Volts:0.##} V." : $"It takes {WindowText(part)}.";
    }

    private WiringLine Line(string thing)
    {
        var (_, proposed, why) = found.Find(item => item.Thing == thing);
        var feed = feeds.GetValueOrDefault(thing, "");
        var cable = Build.Devices.TryGetValue(thing, out var device) ? device.Cable
            : Build.Splitters.TryGetValue(thing, out var splitter) ? splitter.Cable : Build.Regulators[thing].Cable;
        return new WiringLine(thing, Part(thing)!.Name, feed, TitleOf(feed), proposed, why ?? "", Choices(thing))
        {
            Part = Scenario.Kit[thing].Part,
            IsDevice = device is not null,
            Outlet = outlets.Of(thing),
            CableTitle = cable is not null && Part(cable) is { } part ? part.Name : "",
        };
    }

    private List<WiringChoice> Choices(string thing)
    {
        var names = new List<string> { Build.BatteryFeed };
        if (Build.Plate is { } plate)
            names.Insert(0, plate);
        names.AddRange(Build.Splitters.Keys.Concat(Build.Regulators.Keys).Where(name => name != thing));
        var onRig = names.Select(name => Scenario.Kit.TryGetValue(name, out var item) ? item.Part : "").ToHashSet();
        var listed = pack is { } volts && Build.Devices.ContainsKey(thing)
            ? given.AllParts.Where(item => item.Value.Regulator is { } data && !onRig.Contains(item.Key)
                && !item.Key.StartsWith(OwnPart.IdStart, StringComparison.Ordinal) && Fits(thing, data, volts))
                .OrderBy(item => item.Value.Mass?.Grams ?? double.PositiveInfinity)
            : Enumerable.Empty<KeyValuePair<string, Part>>();
        return [.. names.Select(name => new WiringChoice(name, TitleOf(name)) { Outlets = outlets.For(thing, name) }),
            .. listed.Select(item => new WiringChoice(item.Key, $"{item.Value.Name} (to be added)"))];
    }

    private string TitleOf(string feed) => feed switch
    {
        "" => "nothing",
        Build.BatteryFeed => "the battery itself",
        _ => Part(feed)?.Name ?? feed,
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
}
