using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Power.Wiring;

/// <summary>The wiring of a build: its plate, regulators and devices, joined by its cables, and by perfect wires where it names none.</summary>
public static class BuildWiring
{
    /// <summary>The name of what a plate draws itself, after the plate's own name.</summary>
    public const string OwnDraw = "own draw";

    /// <summary>The state in which the plate's own draw stands as long as the plate is closed.</summary>
    public const string On = "on";

    /// <summary>Makes the network.</summary>
    /// <param name="powered">The build.</param>
    /// <exception cref="WiringException">The feeds make no tree.</exception>
    public static WiringNetwork Of(PoweredBuild powered)
    {
        ArgumentNullException.ThrowIfNull(powered);
        var elements = new List<WiringElement>();
        if (powered.Build.Plate is { } plateName)
        {
            var plate = powered.Plate?.Plate ?? new PlateData();
            elements.Add(new LowVoltageSwitch(plateName, Feed(plateName, Build.BatteryFeed), Given(plate.SwitchOffVoltage)) { MaximumCurrent = plate.MaximumCurrent });
            if (plate.OwnDraw is { } own)
                elements.Add(new Device($"{plateName} {OwnDraw}", plateName, new([new(On, DeviceDraw.OfPower(own))])));
        }

        foreach (var (name, regulator) in powered.Regulators)
        {
            elements.Add(new Regulator(name, Feed(name, regulator.FedBy), regulator.Data.OutputVoltage)
            {
                Efficiency = regulator.Data.Efficiency,
                OwnDraw = regulator.Data.OwnDraw ?? UnitsNet.Power.Zero,
                InputMinimum = Given(regulator.Data.InputMinimum),
                InputMaximum = Given(regulator.Data.InputMaximum),
                MaximumOutput = regulator.Data.MaximumCurrent,
            });
        }

        foreach (var (name, device) in powered.Devices)
        {
            elements.Add(new Device(name, Feed(name, device.FedBy), Draws(device))
            {
                MinimumVoltage = Given(device.Voltage?.Minimum),
                MaximumVoltage = Given(device.Voltage?.Maximum),
                Essential = device.Essential,
            });
        }

        return new WiringNetwork(elements);

        string? Feed(string name, string fedBy)
        {
            var above = fedBy == Build.BatteryFeed ? null : fedBy;
            if (!powered.Cables.TryGetValue(name, out var resistance))
                return above;
            elements.Add(new Wire($"cable of {name}", above, resistance));
            return elements[^1].Name;
        }
    }

    /// <summary>The states of a network's devices for the states of the build's devices.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="stateOf">The state of a device, by its name in the kit.</param>
    public static OrderedMap<string> States(PoweredBuild powered, Func<string, PowerState> stateOf)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(stateOf);
        var states = powered.Devices.Keys.Select(name => KeyValuePair.Create(name, Word(stateOf(name))));
        return powered is { Build.Plate: { } plate, Plate.Plate.OwnDraw: not null }
            ? new OrderedMap<string>(states.Append(new($"{plate} {OwnDraw}", On)))
            : new OrderedMap<string>(states);
    }

    private static OrderedMap<DeviceDraw> Draws(PoweredDevice device)
    {
        var draws = new List<KeyValuePair<string, DeviceDraw>>();
        foreach (var (state, one) in new[] { (PowerState.Off, device.Draw.Off), (PowerState.Standby, device.Draw.Standby), (PowerState.Record, device.Draw.Record) })
        {
            if (one is not null)
                draws.Add(new(Word(state), DeviceDraw.OfPower(device.DrawIn(state))));
        }

        return new OrderedMap<DeviceDraw>(draws);
    }

    private static string Word(PowerState state) => state switch
    {
        PowerState.Off => Device.Off,
        PowerState.Standby => "standby",
        _ => "record",
    };

    private static ElectricPotential? Given(ElectricPotential? voltage) => voltage is { Volts: > 0 } ? voltage : null;
}
