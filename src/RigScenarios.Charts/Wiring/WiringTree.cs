using System.Globalization;
using System.Text.RegularExpressions;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Charts.Wiring;

/// <summary>A box of the drawing.</summary>
/// <param name="Element">Its name in the network.</param>
/// <param name="FedBy">What feeds it in the network.</param>
/// <param name="Depth">How far from the battery, boxes only.</param>
/// <param name="Parent">The number of the box above; -1 for the battery.</param>
/// <param name="Name">Its name for people.</param>
/// <param name="Volts">Voltage at its inlet in words; "off" where there is none.</param>
/// <param name="Amperes">Current into it in words.</param>
/// <param name="Margin">The least margin in words; empty where no limit is known.</param>
/// <param name="Cable">The cable in front of it, in words; null where none is given.</param>
/// <param name="IsCableWeakest">Whether that cable is the weakest of all.</param>
/// <param name="IsWeakest">Whether it is the weakest of all.</param>
/// <param name="IsOff">Whether it is dead or draws nothing.</param>
internal sealed record WiringBox(
    string Element, string? FedBy, int Depth, int Parent, string Name, string Volts, string Amperes, string Margin, string? Cable,
    bool IsCableWeakest, bool IsWeakest, bool IsOff);

/// <summary>What a drawing of the wiring shows: wires with a resistance become lines, everything else boxes.</summary>
internal sealed partial class WiringTree
{
    private const string Battery = "battery";
    private readonly WiringView view;
    private readonly WiringNetwork network;
    private readonly OperatingPoint moment;

    public WiringTree(WiringView view)
    {
        this.view = view;
        network = view.Answer.Simulation.Network;
        moment = view.Worst?.At
            ?? throw new ArgumentException("Nothing could be delivered at any moment, so there is nothing to draw.",
            nameof(view));
        Boxes.Add(new WiringBox(
            Battery, null, 0, -1, Battery, Volts(moment.Terminals), Amperes(moment.Current), Margin(Battery), null, false,
            view.Weakest == Battery, false));
        Below(null, 0, null);
    }

    public List<WiringBox> Boxes { get; } = [];

    /// <summary>What the mark of the weakest means.</summary>
    public string WeakestWords => view.WeakestWords;

    public string Alternative =>
        $"Tree of the wiring from the battery to {view.Answer.Powered.Devices.Count} devices, as it is {view.MomentWords}. "
        + string.Join(" ", Boxes.Select(box => $"{box.Name}: {(box.IsOff ? "off" : $"{box.Volts}, {box.Amperes}")}"
            + $"{(box.Margin.Length > 0 ? $", {box.Margin}" : "")}{(box.Cable is { } cable ? $", behind {cable}" : "")}"
            + $"{(box.IsWeakest || box.IsCableWeakest ? $" ({WeakestWords})" : "")}."));

    private void Below(string? feed, int parent, Wire? through)
    {
        foreach (var element in network.Elements.Where(one => one.FedBy == feed))
        {
            // A wire that loses something is a line to what comes behind it.
            if (element is Wire { Resistance.Ohms: > 0 } wire && network.Elements.Any(one => one.FedBy == wire.Name))
            {
                Below(wire.Name, parent, wire);
                continue;
            }
            if (IsOwnDraw(element))
                continue;
            var at = moment.Elements[element.Name];
            var off = at.Inlet.Volts <= 0 || (element is Device && at.Current.Amperes <= 0);
            var volts = at.Inlet.Volts <= 0 ? "off" : Volts(at.Inlet);
            if (element is Regulator && at.OutputCurrent is { } output && at.Inlet.Volts > 0)
                volts += $" \u2192 {Volts(at.Outlet!.Value)}, {Amperes(output)}";
            Boxes.Add(new WiringBox(element.Name, element.FedBy, Boxes[parent].Depth + 1, parent,
                WiringView.NameOf(element.Name) + OwnDraw(element), volts, off ? "" : Amperes(at.Current), Margin(element.Name),
                through is null ? null : Cable(through), through?.Name == view.Weakest && view.Weakest is not null,
                element.Name == view.Weakest, off));
            Below(element.Name, Boxes.Count - 1, null);
        }
    }

    private string Cable(Wire wire)
    {
        var at = moment.Elements[wire.Name];
        var link = view.Answer.Powered.Links.FirstOrDefault(item => BuildWiring.CableName(item.Key) == wire.Name).Value;
        var made = link?.Cable is { } cable
            ? $" ({view.CableOf(wire.Name)}, {cable.Gauge}, {Number(cable.Length.Meters, "0.##")} m)" : "";
        var margin = Margin(wire.Name);
        var lost = at.Inlet.Volts <= 0
            ? " off" : $" {Number(at.Inlet.Volts - at.Outlet!.Value.Volts)} V and {Number((double)at.Loss.Watts)} W lost";
        return Together($"{WiringView.NameOf(wire.Name)}{made}:{lost}{(margin.Length > 0 ? $"; {margin}" : "")}");
    }

    // What a plate or splitter draws itself stands in its own box.
    private bool IsOwnDraw(WiringElement element) => element is Device && element.FedBy is { } feed
        && element.Name == $"{feed} {BuildWiring.OwnDraw}" && !view.Answer.Powered.Devices.ContainsKey(element.Name);

    private string OwnDraw(WiringElement element) =>
        network.Elements.FirstOrDefault(one => one.FedBy == element.Name && IsOwnDraw(one)) is { } own
            && moment.Elements[own.Name] is { Current.Amperes: > 0 } at
            ? $" (takes {Number((double)at.Power.Watts, "0.##")}\u00a0W itself)" : "";

    private string Margin(string element) => Together(view.Left(element));

    private static string Volts(ElectricPotential volts) => Together($"{Number(volts.Volts)} V");

    private static string Amperes(ElectricCurrent amperes) => Together($"{Number(amperes.Amperes)} A");

    private static string Number(double value, string format = "0.00") => value.ToString(format, CultureInfo.InvariantCulture);

    // A number and its unit stay on one line.
    private static string Together(string text) => NumberBeforeUnit().Replace(text, "\u00a0");

    [GeneratedRegex(@"(?<=\d) (?=[VAWmK%])|(?<=[V%]) (?=left|over|under)|(?<=AWG) ", RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex NumberBeforeUnit();
}
