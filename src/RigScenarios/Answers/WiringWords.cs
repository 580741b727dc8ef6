using RigScenarios.Batteries;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words what fails first in a day's wiring.</summary>
public static class WiringWords
{
    /// <summary>Beside every answer about wiring.</summary>
    public static readonly string Polarity =
        "Which contact is positive is not told here for any connector: measure it with a meter before you plug anything in.";

    /// <summary>The answer in one sentence or two.</summary>
    public static string Answer(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        if (wiring.Failure is { } failure)
            return $"{DropsOut(wiring, failure)}{Besides(wiring)}";
        var charge = wiring.Run.Charge.Percent;
        return wiring.Run.PackEndCause switch
        {
            EndCause.TimeLimit when Passed(wiring).Count > 0 => $"Nothing drops out on this day.{Besides(wiring)}",
            EndCause.TimeLimit => $"Nothing in the wiring fails on this day. {Nearest(wiring)}",
            EndCause.PowerLimit => $"{When(wiring, wiring.Run.EndTime)}what the devices ask for cannot be delivered any more: through these cables, from this battery, the voltages collapse, with {charge:0} % of the charge left. That is not the battery's cut-off; less load at once or less resistance helps.",
            _ => $"{When(wiring, wiring.Run.EndTime)}the battery itself ends the day ({wiring.Run.EndCause}), with {charge:0} % of the charge left. The wiring does not fail before it. {Nearest(wiring)}",
        };
    }

    /// <summary>The limits that are passed: currents, and voltages that dip below a minimum for a moment; the worst first.</summary>
    public static IReadOnlyList<WiringFinding> Passed(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        return [.. wiring.Findings.Where(finding => finding.Margin.DecimalFractions < 0 && (!finding.IsVoltage || finding.Case != LoadCase.Steady))];
    }

    /// <summary>A finding in one sentence: limit, load, moment.</summary>
    public static string Finding(WiringOfDay wiring, WiringFinding finding)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(finding);
        var left = Math.Round(finding.Margin.Percent) + 0.0;
        return $"{Capital(wiring.NameOf(finding.Element))}, {finding.Limit}: {finding.Load} of {finding.Allowed}, {(left >= 0 ? $"{left:0} % left" : $"{-left:0} % {(finding.IsVoltage ? "below" : "past")} it")} ({Moment(wiring, finding)}).";
    }

    /// <summary>When a finding is at its worst, and what draws then: "09:40, Takes; camera, monitor in record".</summary>
    public static string Moment(WiringOfDay wiring, WiringFinding finding)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(finding);
        return $"{Clock(wiring, finding.At)}, {BlockTitle(wiring, finding.Block)}; {finding.States}";
    }

    /// <summary>What is left to a limit, in whole percent: "17 %".</summary>
    public static string Left(WiringFinding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        var percent = Math.Round(finding.Margin.Percent);
        return $"{(percent == 0 ? 0 : percent):0} %";
    }

    /// <summary>The same for a narrow place: when, and the block, or what draws for a moment.</summary>
    public static string ShortMoment(WiringOfDay wiring, WiringFinding finding)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        ArgumentNullException.ThrowIfNull(finding);
        return $"{Clock(wiring, finding.At)}, {(finding.Case == LoadCase.Steady ? BlockTitle(wiring, finding.Block) : finding.States)}";
    }

    /// <summary>A fix with what it brings.</summary>
    public static string Fix(WiringFix fix)
    {
        ArgumentNullException.ThrowIfNull(fix);
        return fix.Gain.Minutes < 1 ? fix.Words : $"{fix.Words} Then it runs {(fix.ReachesEnd ? "to the end of the day" : $"{DayWords.Length(fix.Gain)} longer")}.";
    }

    /// <summary>A moment as clock time, or from the start of the day where it has no clock.</summary>
    public static string Clock(WiringOfDay wiring, Duration at)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        return wiring.Day.Starts is { } starts ? starts.Add(TimeSpan.FromMinutes(Math.Round(at.Minutes))).ToString("HH:mm", null) : $"after {DayWords.Length(at)}";
    }

    /// <summary>The title of a block by its number.</summary>
    public static string BlockTitle(WiringOfDay wiring, int block)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        var (name, of) = wiring.Day.Blocks.ElementAt(block);
        return of.Title ?? name;
    }

    /// <summary>What the answer knows nothing of, because the file doesn't say.</summary>
    public static IReadOnlyList<string> NotKnown(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        var unlinked = wiring.Powered.Regulators.Keys.Concat(wiring.Powered.Splitters.Keys).Concat(wiring.Powered.Devices.Keys)
            .Where(thing => !wiring.Powered.Links.TryGetValue(thing, out var link) || link.Cable is null).Select(wiring.NameOf).ToList();
        var lines = new List<string>();
        if (unlinked.Count > 0)
            lines.Add($"No power cable is given for {string.Join(", ", unlinked)}: joined without resistance, so their real voltage is lower.");
        var unknown = wiring.Powered.Devices.Where(device => device.Value.Voltage?.Minimum is null).Select(device => wiring.NameOf(device.Key)).ToList();
        if (unknown.Count > 0)
            lines.Add($"The least voltage is not known of {string.Join(", ", unknown)}: never taken to drop out.");
        var usual = wiring.Powered.Links.Where(link => link.Value.Cable is { ConnectorResistance: null }).Select(link => wiring.NameOf(BuildWiring.CableName(link.Key))).ToList();
        if (usual.Count > 0)
            lines.Add($"10 mΩ is taken for each connector (from memory of the trade) of {string.Join(", ", usual)}. Worn ones have more: measure the drop at a known current.");
        return lines;
    }

    /// <summary>How far off the times may be, and what that rests on.</summary>
    public static string Prediction(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        var coldest = wiring.Moments.Count == 0 ? wiring.Ambient : wiring.Moments.MinBy(moment => moment.Pack.Kelvins)!.Pack;
        var error = ExpectedError.At(coldest);
        return $"Predicted, not measured: expect the times {PredictionWords.Of(error)}. Cables and contacts are as good as the file says they are.";
    }

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<string> Cautions(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        var cautions = new List<string> { Prediction(wiring) };
        if (wiring.Findings.Any(finding => finding.Margin.DecimalFractions < 0 && !finding.IsVoltage))
            cautions.Add("Something is loaded beyond what its maker allows. Change that before you use it: cables and connectors get hot, and a limiter may switch the rig off.");
        if (wiring.Findings.Any(finding => finding is { IsVoltage: true, Case: not LoadCase.Steady, Margin.DecimalFractions: < 0 }))
            cautions.Add("For moments a voltage dips below what a device needs. The run does not act on moments: the device may restart, or hold over it.");
        if (wiring.Findings.Any(finding => finding.Case == LoadCase.StartUp))
            cautions.Add("A start-up lasts only moments. Whether an outlet or a guard acts on it stands in its papers, if anywhere; try it before the day.");
        cautions.Add(Polarity);
        cautions.Add("A full battery of four cells in series stands at 16.8 V. Read on each device what it takes before it is plugged in.");
        cautions.Add("A fuse protects the cable behind it, not the device. Fit only the fuse that the maker names; never bridge one. A cable that is warm, coiled or has a loose plug comes out of use.");
        cautions.Add("Figures from parts that you described, for one battery. The makers' limits come first; lithium batteries: never work around their protection.");
        return cautions;
    }

    private static string DropsOut(WiringOfDay wiring, DropOut failure)
    {
        var before = wiring.Worst;
        var what = wiring.NameOf(failure.Element);
        var element = wiring.Network[wiring.Network.NumberOf(failure.Element)];
        var (least, verb) = element switch
        {
            LowVoltageSwitch guard => (guard.OpensBelow, "switches everything off"),
            Regulator regulator => (regulator.InputMinimum, "stops"),
            Device device => (device.MinimumVoltage, "drops out"),
            _ => (null, "stops"),
        };
        var stopped = wiring.Run.Devices.Where(item => item.Value.Because == failure.Element && item.Key != failure.Element && wiring.Powered.Devices.ContainsKey(item.Key)).Select(item => wiring.NameOf(item.Key)).ToList();
        var with = stopped.Count == 0 ? "" : $" and takes {string.Join(", ", stopped)} with it";
        var charge = (before?.Charge ?? wiring.Run.Charge).Percent;
        var why = before is null ? "" : Lost(wiring, before, failure.Element);
        return $"{When(wiring, failure.At)}the {what} {verb}{with} while the battery still has {charge:0} % of its charge: its own inlet falls below the {least?.Volts ?? 0:0.##} V that it needs{why}.";
    }

    /// <summary>Where the voltage went between the battery and an element.</summary>
    private static string Lost(WiringOfDay wiring, WiringMoment moment, string element)
    {
        var elements = wiring.Network.Elements.ToDictionary(one => one.Name, StringComparer.Ordinal);
        var drops = new List<(string Name, double Volts)>();
        for (var at = elements[element].FedBy; at is not null && elements[at] is not Regulator; at = elements[at].FedBy)
        {
            var here = moment.Point.Elements[at];
            drops.Add((at, here.Inlet.Volts - (here.Outlet?.Volts ?? here.Inlet.Volts)));
        }
        var source = moment.Point.Elements[element].Inlet.Volts + drops.Sum(drop => drop.Volts);
        var most = drops.OrderByDescending(drop => drop.Volts).FirstOrDefault();
        return drops.Sum(drop => drop.Volts) < 0.05
            ? $"; the battery itself is down to {source:0.0} V under this load"
            : $", for of the {source:0.0} V at its source {drops.Sum(drop => drop.Volts):0.0} V are lost on the way, most of it ({most.Volts:0.0} V) in the {wiring.NameOf(most.Name)}";
    }

    private static string Besides(WiringOfDay wiring)
    {
        var passed = Passed(wiring);
        return passed.Count == 0 ? "" : $" {(passed.Count == 1 ? "One limit is" : $"{passed.Count} limits are")} passed on the way, worst: {Lower(Finding(wiring, passed[0]))}";
    }

    // Where the battery ends the day, its own limits are told already.
    private static string Nearest(WiringOfDay wiring) =>
        wiring.Findings.FirstOrDefault(finding => finding.Element != WiringFinding.Battery || wiring.Run.PackEndCause == EndCause.TimeLimit) is { } first
            ? $"Nearest to a limit: {Lower(Finding(wiring, first))}"
            : "No limit of it is known.";

    private static string When(WiringOfDay wiring, Duration at)
    {
        double end = 0;
        var title = "";
        foreach (var (name, block) in wiring.Day.Blocks)
        {
            title = block.Title ?? name;
            end += block.Length.Seconds;
            if (at.Seconds < end - 1e-3)
                break;
        }
        return $"{(wiring.Day.Starts is null ? "After" : "At")} {(wiring.Day.Starts is null ? DayWords.Length(at) : Clock(wiring, at))}, in \"{title}\", ";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
