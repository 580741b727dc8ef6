using System.Globalization;
using System.Text.RegularExpressions;
using RigScenarios.Answers;
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
    string Element, string? FedBy, int Depth, int Parent, string Name, string Volts, string Amperes, string Margin, string? Cable, bool IsCableWeakest, bool IsWeakest, bool IsOff);

/// <summary>What a drawing of the wiring shows: wires with a resistance become lines, everything else boxes.</summary>
internal sealed partial class WiringTree
{
    private readonly WiringOfDay wiring;
    private readonly WiringMoment moment;
    private readonly string? weakest;

    private WiringTree(WiringOfDay wiring)
    {
        this.wiring = wiring;
        moment = wiring.Worst ?? throw new ArgumentException("Nothing could be delivered at any moment of the day, so there is no moment to draw.", nameof(wiring));
        weakest = wiring.Failure?.Element ?? (wiring.Findings.Count > 0 ? wiring.Findings[0].Element : null);
        Boxes.Add(new WiringBox(WiringFinding.Battery, null, 0, -1, "battery", Volts(moment.Point.Terminals), Amperes(moment.Point.Current),
            Margin(WiringFinding.Battery), null, false, weakest == WiringFinding.Battery, false));
        Below(null, 0, null);
    }

    public List<WiringBox> Boxes { get; } = [];

    /// <summary>What the mark of the weakest means.</summary>
    public string WeakestWords => wiring.Failure is not null ? "fails first" : wiring.Findings.Count > 0 && wiring.Findings[0].Margin.DecimalFractions < 0 ? "furthest past its limit" : "least left to its limit";

    public string Alternative =>
        $"Tree of the wiring from the battery to {wiring.Powered.Devices.Count} devices, {MomentWords(wiring)}. "
        + string.Join(" ", Boxes.Select(box => $"{box.Name}: {(box.IsOff ? "off" : $"{box.Volts}, {box.Amperes}")}{(box.Margin.Length > 0 ? $", {box.Margin}" : "")}{(box.Cable is { } cable ? $", behind {cable}" : "")}{(box.IsWeakest || box.IsCableWeakest ? $" ({WeakestWords})" : "")}."));

    public static WiringTree Of(WiringOfDay wiring) => new(wiring);

    /// <summary>"as it is at 22:20 in "Takes at the gate"".</summary>
    public static string MomentWords(WiringOfDay wiring) =>
        wiring.Worst is { } worst ? $"as it is {(wiring.Day.Starts is null ? "" : "at ")}{WiringWords.Clock(wiring, worst.At)} in \"{WiringWords.BlockTitle(wiring, worst.Block)}\"" : "at no moment";

    private void Below(string? feed, int parent, Wire? through)
    {
        foreach (var element in wiring.Network.Elements.Where(one => one.FedBy == feed))
        {
            // A wire that loses something is a line to what comes behind it.
            if (element is Wire { Resistance.Ohms: > 0 } wire && wiring.Network.Elements.Any(one => one.FedBy == wire.Name))
            {
                Below(wire.Name, parent, wire);
                continue;
            }
            if (IsOwnDraw(element))
                continue;
            var at = moment.Point.Elements[element.Name];
            var off = at.Inlet.Volts <= 0 || (element is Device && at.Current.Amperes <= 0);
            var volts = at.Inlet.Volts <= 0 ? "off" : Volts(at.Inlet);
            if (element is Regulator && at.OutputCurrent is { } output && at.Inlet.Volts > 0)
                volts += $" \u2192 {Volts(at.Outlet!.Value)}, {Amperes(output)}";
            Boxes.Add(new WiringBox(element.Name, element.FedBy, Boxes[parent].Depth + 1, parent, wiring.NameOf(element.Name) + OwnDraw(element), volts, off ? "" : Amperes(at.Current), Margin(element.Name),
                through is null ? null : Cable(through), through?.Name == weakest && weakest is not null, element.Name == weakest, off));
            Below(element.Name, Boxes.Count - 1, null);
        }
    }

    private string Cable(Wire wire)
    {
        var at = moment.Point.Elements[wire.Name];
        var link = wiring.Powered.Links.FirstOrDefault(item => BuildWiring.CableName(item.Key) == wire.Name).Value;
        var made = link?.Cable is { } cable ? $" ({cable.Gauge}, {Number(cable.Length.Meters, "0.##")} m)" : "";
        var margin = Margin(wire.Name);
        var lost = at.Inlet.Volts <= 0 ? " off" : $" {Number(at.Inlet.Volts - at.Outlet!.Value.Volts)} V and {Number((double)at.Loss.Watts)} W lost";
        return Together($"{wiring.NameOf(wire.Name)}{made}:{lost}{(margin.Length > 0 ? $"; {margin}" : "")}");
    }

    // What a plate or splitter draws itself stands in its own box.
    private bool IsOwnDraw(WiringElement element) => element is Device && element.FedBy is { } feed && element.Name == $"{feed} {BuildWiring.OwnDraw}" && !wiring.Powered.Devices.ContainsKey(element.Name);

    private string OwnDraw(WiringElement element) =>
        wiring.Network.Elements.FirstOrDefault(one => one.FedBy == element.Name && IsOwnDraw(one)) is { } own && moment.Point.Elements[own.Name] is { Current.Amperes: > 0 } at
            ? $" (takes {Number((double)at.Power.Watts, "0.##")}\u00a0W itself)" : "";

    private string Margin(string element)
    {
        var findings = wiring.Findings.Where(finding => finding.Element == element).ToList();
        if (findings.Count == 0)
            return "";
        var percent = Math.Round(findings[0].Margin.Percent);
        return Together(percent >= 0 ? $"{Number(percent, "0")} % left" : $"{Number(-percent, "0")} % {(findings[0].IsVoltage ? "short" : "past")}");
    }

    private static string Volts(ElectricPotential volts) => Together($"{Number(volts.Volts)} V");

    private static string Amperes(ElectricCurrent amperes) => Together($"{Number(amperes.Amperes)} A");

    private static string Number(double value, string format = "0.00") => value.ToString(format, CultureInfo.InvariantCulture);

    // A number and its unit stay on one line.
    private static string Together(string text) => NumberBeforeUnit().Replace(text, "\u00a0");

    [GeneratedRegex(@"(?<=\d) (?=[VAWm%])|(?<=%) (?=left|past|short)|(?<=AWG) ", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex NumberBeforeUnit();
}
