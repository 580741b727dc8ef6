using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Wiring;

/// <summary>Lists the elements of a build's network: what a plate or splitter is becomes several of them.</summary>
internal sealed class BuildNetwork(PoweredBuild powered)
{
    private readonly List<WiringElement> elements = [];

    public WiringNetwork Network()
    {
        if (powered.Build.Plate is { } plate)
            Plate(plate, powered.Plate?.Plate ?? new PlateData());
        foreach (var (name, splitter) in powered.Splitters)
            Splitter(name, splitter);
        foreach (var (name, regulator) in powered.Regulators)
            Regulator(name, regulator);
        foreach (var (name, device) in powered.Devices)
        {
            elements.Add(new Device(name, Feed(name, device.FedBy, device.Count), Draws(name, device))
            {
                MinimumVoltage = Given(device.Voltage?.Minimum),
                MaximumVoltage = Given(device.Voltage?.Maximum),
                Essential = device.Essential,
            });
        }

        return new WiringNetwork(elements);
    }

    /// <summary>The voltage at which the powers of a device hold: that of the regulator or outlet it hangs on, else the battery's
    /// label.</summary>
    private double NominalVolts(string name, string fedBy)
    {
        while (true)
        {
            if (powered.Links.TryGetValue(name, out var link) && link.OutletData?.Voltage is { } held)
                return held.Volts;
            if (powered.Regulators.TryGetValue(fedBy, out var regulator))
                return regulator.Data.OutputVoltage.Volts;
            if (!powered.Splitters.TryGetValue(fedBy, out var splitter))
                return powered.Battery.Battery!.Voltage.Volts;
            (name, fedBy) = (fedBy, splitter.FedBy);
        }
    }

    private void Plate(string name, PlateData plate)
    {
        var above = Feed(name, Build.BatteryFeed, 1);
        if (plate.ContactResistance is { Ohms: > 0 } contacts)
        {
            elements.Add(new Wire($"contacts of {name}", above, contacts));
            above = elements[^1].Name;
        }

        elements.Add(new LowVoltageSwitch(name, above, Given(plate.SwitchOffVoltage)) 
        {
            MaximumCurrent = plate.MaximumCurrent, Fuse = plate.Fuse,
        });
        Own(name, plate.OwnDraw);
        Outlets(name, plate.Outlets);
    }

    private void Splitter(string name, PoweredSplitter splitter)
    {
        elements.Add(new Wire(name, Feed(name, splitter.FedBy, 1), ElectricResistance.Zero)
        {
            MaximumCurrent = splitter.Data.MaximumCurrent,
            Fuse = splitter.Data.Fuse,
        });
        Own(name, splitter.Data.OwnDraw);
        Outlets(name, splitter.Data.Outlets);
    }

    private void Own(string name, Power? own)
    {
        if (own is { } draw)
            elements.Add(new Device($"{name} {BuildWiring.OwnDraw}", name, new([new(BuildWiring.On, DeviceDraw.OfPower(draw))])));
    }

    // Empty ones too, so that each limit of the part is looked at: they carry nothing. One that holds a voltage takes nothing
    // with nothing on it.
    private void Outlets(string feed, OrderedMap<OutletData> outlets)
    {
        foreach (var (outlet, data) in outlets)
        {
            var name = BuildWiring.OutletName(outlet, feed);
            elements.Add(data.Voltage is { } held
                ? new Regulator(name, feed, held)
                {
                    Efficiency = data.Efficiency ?? BuildWiring.OutletEfficiency,
                    InputMinimum = Given(data.InputMinimum),
                    MaximumOutput = data.MaximumCurrent,
                    CurrentKind = LimitKind.Current,
                    Fuse = data.Fuse,
                }
                : new Wire(name, feed, ElectricResistance.Zero) { MaximumCurrent = data.MaximumCurrent, Fuse = data.Fuse });
        }
    }

    private void Regulator(string name, PoweredRegulator regulator)
    {
        elements.Add(new Regulator(name, Feed(name, regulator.FedBy, 1), regulator.Data.OutputVoltage)
        {
            Efficiency = regulator.Data.Efficiency.DecimalFractions > 0 ? regulator.Data.Efficiency : Ratio.FromPercent(100),
            OwnDraw = regulator.Data.OwnDraw ?? Power.Zero,
            LossPerAmpere = regulator.Data.LossPerAmpere ?? ElectricPotential.Zero,
            LossResistance = regulator.Data.LossPerAmpereSquared ?? ElectricResistance.Zero,
            InputMinimum = Given(regulator.Data.InputMinimum),
            InputMaximum = Given(regulator.Data.InputMaximum),
            MaximumOutput = regulator.Data.MaximumCurrent,
            CurrentKind = LimitKind.OutputCurrent,
        });
    }

    /// <summary>
    /// The element that feeds a thing; its cable, and the contacts of its socket, are put in before it. Several devices of a kind
    /// have a cable each, side by
    /// side.
    /// </summary>
    private string? Feed(string name, string fedBy, int count)
    {
        var link = powered.Links.TryGetValue(name, out var found) ? found : null;
        var above = fedBy == Build.BatteryFeed ? null : link?.Outlet is { } outlet
            ? BuildWiring.OutletName(outlet, fedBy) : fedBy;
        if (powered.Cables.TryGetValue(name, out var given))
        {
            elements.Add(new Wire(BuildWiring.CableName(name), above, given));
            return elements[^1].Name;
        }

        var socket = link?.OutletData?.ContactResistance ?? ElectricResistance.Zero;
        if (link?.Cable is not { } cable)
        {
            if (socket.Ohms <= 0)
                return above;
            elements.Add(new Wire(BuildWiring.PlugName(name), above, socket / count));
            return elements[^1].Name;
        }

        var contacts = 2 * (cable.ConnectorResistance ?? CableData.UsualConnector);
        elements.Add(new Wire(BuildWiring.CableName(name), above, (contacts + socket) / count)
        {
            Copper = new Cable(Conductor.Of(cable.Gauge), cable.Length).CopperAt20 / count,
            MaximumCurrent = count * cable.RatedCurrent,
            CurrentKind = LimitKind.RatedCurrent,
            Fuse = cable.Fuse is { } fuse ? fuse with { Rating = count * fuse.Rating } : null,
        });
        return elements[^1].Name;
    }

    private OrderedMap<DeviceDraw> Draws(string name, PoweredDevice device)
    {
        var nominal = device.Draw.Load is null or LoadKind.Power ? 0 : NominalVolts(name, device.FedBy);
        var draws = new List<KeyValuePair<string, DeviceDraw>>();
        foreach (var (state, one) in new[] { (PowerState.Off, device.Draw.Off), (PowerState.Standby, device.Draw.Standby),
            (PowerState.Record, device.Draw.Record) })
        {
            if (one is not null)
                draws.Add(new(BuildWiring.Word(state), Draw(device.DrawIn(state))));
        }

        if (device.Draw.StartUp is { } start)
            draws.Add(new(BuildWiring.StartUp, Draw(device.Count * start.Power)));
        if (device.Draw.Peak is { } peak)
            draws.Add(new(BuildWiring.Peak, Draw(device.Count * peak)));
        return new OrderedMap<DeviceDraw>(draws);

        DeviceDraw Draw(Power power) => device.Draw.Load switch
        {
            LoadKind.Current => new DeviceDraw { ConstantCurrent = ElectricCurrent.FromAmperes((double)power.Watts / nominal) },
            LoadKind.Resistance =>
                new DeviceDraw { Conductance = ElectricConductance.FromSiemens((double)power.Watts / (nominal * nominal)) },
            _ => DeviceDraw.OfPower(power),
        };
    }

    private static ElectricPotential? Given(ElectricPotential? voltage) => voltage is { Volts: > 0 } ? voltage : null;
}
