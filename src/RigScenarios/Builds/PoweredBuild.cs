using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Builds;

/// <summary>A build with its names replaced by the parts behind them: all that its electrical side needs.</summary>
/// <param name="Build">The build.</param>
/// <param name="Battery">The part that is its battery.</param>
/// <param name="Plate">The part that is its plate; null if it has none.</param>
/// <param name="Regulators">Its regulators, each standing after the one that feeds it.</param>
/// <param name="Devices">Its devices.</param>
public sealed record PoweredBuild(
    Build Build, Part Battery, Part? Plate, OrderedMap<PoweredRegulator> Regulators, OrderedMap<PoweredDevice> Devices)
{
    /// <summary>
    /// Resistance of the cable, its contacts and plugs in front of a plate, splitter, regulator or device, by its name in the
    /// kit, given as such. It
    /// stands in place of the cable that the build names; what has neither is joined by a perfect wire.
    /// </summary>
    public OrderedMap<ElectricResistance> Cables { get; init; } = OrderedMap<ElectricResistance>.Empty;

    /// <summary>Outlets and cables of what names any, by names in the kit.</summary>
    public OrderedMap<PoweredLink> Links { get; init; } = OrderedMap<PoweredLink>.Empty;

    /// <summary>Its splitters.</summary>
    public OrderedMap<PoweredSplitter> Splitters { get; init; } = OrderedMap<PoweredSplitter>.Empty;

    /// <summary>Looks up the parts of a build.</summary>
    /// <param name="build">The build.</param>
    /// <param name="partOf">The part behind a name in the kit; null for an unknown name.</param>
    /// <exception cref="ArgumentException">A name has no part, a part is not of the kind needed, an outlet is not there, or
    /// regulators and splitters feed each other in a circle.</exception>
    public static PoweredBuild From(Build build, Func<string, Part?> partOf)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(partOf);
        Part Need(string name) =>
            partOf(name) ?? throw new ArgumentException($"There is nothing named \"{name}\" in the kit.", nameof(build));
        var battery = Need(build.Battery.Item);
        if (battery.Battery is null)
            throw new ArgumentException($"\"{build.Battery.Item}\" is not a battery.", nameof(build));
        var regulators = new List<KeyValuePair<string, PoweredRegulator>>();
        var splitters = new List<KeyValuePair<string, PoweredSplitter>>();
        var waiting = build.Regulators.Select(item => (Name: item.Key, FedBy: item.Value.FedBy ?? build.StandardFeed))
            .Concat(build.Splitters.Select(item => (Name: item.Key, FedBy: item.Value.FedBy ?? build.StandardFeed))).ToList();
        while (waiting.Count > 0)
        {
            var next = waiting.FindIndex(item => waiting.TrueForAll(other => other.Name != item.FedBy));
            if (next < 0)
                throw new ArgumentException(
                    $"These feed each other in a circle: {string.Join(", ", waiting.Select(item => item.Name))}.", nameof(build));
            var (name, fedBy) = waiting[next];
            waiting.RemoveAt(next);
            var part = Need(name);
            if (build.Splitters.ContainsKey(name))
                splitters.Add(new(name, new PoweredSplitter(part.Name, fedBy,
                    part.Splitter ?? throw new ArgumentException($"\"{name}\" is not a splitter.", nameof(build)))));
            else
                regulators.Add(new(name, new PoweredRegulator(part.Name, fedBy,
                    part.Regulator ?? throw new ArgumentException($"\"{name}\" is not a regulator.", nameof(build)))));
        }
        var devices = build.Devices.Select(item =>
        {
            var part = Need(item.Key);
            return KeyValuePair.Create(item.Key, new PoweredDevice(
                part.Name, item.Value.FedBy ?? build.StandardFeed, Draw(part, item.Value),
                part.Voltage, item.Value.Essential, item.Value.Count));
        });
        PowerDraw Draw(Part part, DeviceInUse device) =>
            (part.Power ?? new PowerDraw()).With(device.Power).Times(build.Battery.LoadScale ?? 1);
        return new PoweredBuild(build, battery, build.Plate is { } plate ? Need(plate) : null, new(regulators), new(devices))
        {
            Splitters = new(splitters),
            Links = LinkLookup.Of(build, partOf),
        };
    }
}

/// <summary>A regulator of a build, with its data.</summary>
/// <param name="Name">Its name for people.</param>
/// <param name="FedBy">What feeds it.</param>
/// <param name="Data">Its data.</param>
public sealed record PoweredRegulator(string Name, string FedBy, RegulatorData Data);

/// <summary>A device of a build, with its data.</summary>
/// <param name="Name">Its name for people.</param>
/// <param name="FedBy">What feeds it.</param>
/// <param name="Draw">What one of them draws in each state.</param>
/// <param name="Voltage">The voltage that it accepts; null if not known.</param>
/// <param name="Essential">Whether the build is of no use without it.</param>
/// <param name="Count">How many of them there are.</param>
public sealed record PoweredDevice(string Name, string FedBy, PowerDraw Draw, VoltageWindow? Voltage, bool Essential, int Count)
{
    /// <summary>
    /// What all of them together draw in a state. With a duty, the mean over a working time: so much of it at the working draw,
    /// the rest on standby.
    /// </summary>
    /// <exception cref="InvalidOperationException">The draw in that state is not known.</exception>
    public Power DrawIn(PowerState state)
    {
        Power? one = state switch
        {
            PowerState.Off => Draw.Off ?? Power.Zero,
            PowerState.Standby => Draw.Standby,
            _ when Draw is { Duty.DecimalFractions: var duty and < 1, Record: { } working } =>
                Power.FromWatts((duty * (double)working.Watts) + ((1 - duty) * (double)(Draw.Standby?.Watts ?? 0))),
            _ => Draw.Record,
        };
        return Count * (one ?? throw new InvalidOperationException($"What {Name} draws in the state {state} is not known."));
    }
}
