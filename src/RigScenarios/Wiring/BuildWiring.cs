using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>The wiring of a build: its plate, outlets, splitters, regulators and devices, joined by its cables, and by perfect
/// wires where it names none.</summary>
public static class BuildWiring
{
    /// <summary>The name of what a plate or splitter draws itself, after its own name.</summary>
    public const string OwnDraw = "own draw";

    /// <summary>The state in which a plate's own draw stands as long as the plate is closed.</summary>
    public const string On = "on";

    /// <summary>The state of a device in the moment when it is switched on, if the part says what it draws then.</summary>
    public const string StartUp = "start-up";

    /// <summary>The state of a device that draws the most that it ever does at work, if the part says what that is.</summary>
    public const string Peak = "peak";

    /// <summary>Efficiency of an outlet that holds a voltage, where the part gives none (from memory of the trade).</summary>
    internal static readonly Ratio OutletEfficiency = Ratio.FromPercent(90);

    /// <summary>Makes the network. Its copper takes the temperature of the air when it is solved: the model does not heat a cable
    /// up.</summary>
    /// <param name="powered">The build.</param>
    /// <exception cref="WiringException">The feeds make no tree.</exception>
    public static WiringNetwork Of(PoweredBuild powered)
    {
        ArgumentNullException.ThrowIfNull(powered);
        return new BuildNetwork(powered).Network();
    }

    /// <summary>The states of a network's devices for the states of the build's devices.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="stateOf">The state of a device, by its name in the kit.</param>
    public static OrderedMap<string> States(PoweredBuild powered, Func<string, PowerState> stateOf)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(stateOf);
        var states = powered.Devices.Keys.Select(name => KeyValuePair.Create(name, Word(stateOf(name))))
            .Concat(powered.Splitters.Where(item => item.Value.Data.OwnDraw is not null)
                .Select(item => KeyValuePair.Create($"{item.Key} {OwnDraw}", On)));
        return powered is { Build.Plate: { } plate, Plate.Plate.OwnDraw: not null }
            ? new OrderedMap<string>(states.Append(new($"{plate} {OwnDraw}", On)))
            : new OrderedMap<string>(states);
    }

    /// <summary>The name of an outlet in the network.</summary>
    /// <param name="outlet">Its name on the part.</param>
    /// <param name="feed">The plate's or splitter's name in the kit.</param>
    public static string OutletName(string outlet, string feed) => $"outlet {outlet} of {feed}";

    /// <summary>The name in the network of the contacts of the socket in front of a thing that has no cable.</summary>
    /// <param name="thing">The thing's name in the kit.</param>
    public static string PlugName(string thing) => $"plug of {thing}";

    /// <summary>The name in the network of the cable in front of a thing, with the contacts at both its ends and those of the
    /// outlet's socket.</summary>
    /// <param name="thing">The thing's name in the kit.</param>
    public static string CableName(string thing) => $"cable of {thing}";

    internal static string Word(PowerState state) => state switch
    {
        PowerState.Off => Device.Off,
        PowerState.Standby => "standby",
        _ => "record",
    };
}
