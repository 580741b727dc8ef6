using MathNet.Numerics.RootFinding;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Looks for changes that keep the wiring from failing: each one is run through the day, none is a rule of thumb.</summary>
internal sealed class WiringFixes(Scenario scenario, WiringOfDay wiring, CancellationToken cancellation)
{
    // What is to be left above a device's least voltage, V: some 1 % of a 12 V class inlet (our choice).
    private const double SpareVolts = 0.1;

    // Finer than anybody cuts a cable, m.
    private const double LengthStep = 0.05;

    private static readonly Duration Worthwhile = Duration.FromMinutes(1);

    private readonly double full = wiring.Pack.Pack.SeriesGroups * wiring.Pack.Pack.OpenCircuitVoltage.Points[^1].Voltage.Volts;

    /// <summary>Those that bring most first.</summary>
    public IReadOnlyList<WiringFix> All()
    {
        var fixes = new List<WiringFix>();
        if (wiring.Failure is { } failure)
        {
            fixes.AddRange(CablesAbove(failure.Element).SelectMany(thing => Cable(failure.Element, thing)));
            fixes.AddRange(OtherRegulator(failure.Element));
        }
        fixes.AddRange(wiring.Findings.Where(finding => finding is { IsVoltage: false, Margin.DecimalFractions: < 0 }).SelectMany(OtherOutlet));
        return [.. fixes.OrderByDescending(fix => fix.ReachesEnd).ThenByDescending(fix => fix.Gain.Seconds).Take(6)];
    }

    private bool Reaches(WiringResult run) => run.PackEndCause == EndCause.TimeLimit && run.BuildRuntime.Seconds >= wiring.Day.Length.Seconds - 1;

    private WiringResult Run(PoweredBuild changed) =>
        ScenarioWiring.Run(changed, BuildWiring.Of(changed, wiring.Ambient), wiring.Pack.Pack, wiring.Day, wiring.Ambient, 0, cancellation);

    private WiringFix? Worth(string words, PoweredBuild changed)
    {
        var run = Run(changed);
        var gain = run.BuildRuntime - wiring.Run.BuildRuntime;
        return gain >= Worthwhile ? new WiringFix(words, gain, Reaches(run)) : null;
    }

    /// <summary>The things whose cables carry the current of an element, the nearest first.</summary>
    private IEnumerable<string> CablesAbove(string element)
    {
        var byName = wiring.Network.Elements.ToDictionary(one => one.Name, StringComparer.Ordinal);
        for (var at = byName[element]; ; at = byName[at.FedBy])
        {
            if (new WiringPlace(wiring.Powered, at.Name) is { Cable: not null, Thing: { } thing })
                yield return thing;
            if (at.FedBy is null)
                yield break;
        }
    }

    private IEnumerable<WiringFix> Cable(string element, string thing)
    {
        var link = wiring.Powered.Links[thing];
        var cable = link.Cable!;
        var name = wiring.NameOf(BuildWiring.CableName(thing));
        var threshold = wiring.Network[wiring.Network.NumberOf(element)] is { } one && Threshold(one) is { } volts ? volts : double.NaN;
        double Spare(Length length) => Lowest(With(thing, cable with { Length = length }), element) - threshold - SpareVolts;
        var now = cable.Length.Meters;
        if (now > 2 * LengthStep && Spare(Length.FromMeters(LengthStep)) >= 0)
        {
            var longest = Brent.TryFindRoot(metres => Spare(Length.FromMeters(metres)), LengthStep, now, 1e-3, 60, out var root) ? root : LengthStep;
            longest = Math.Max(LengthStep, Math.Floor(longest / LengthStep) * LengthStep);
            if (Worth($"Make the {name} at most {longest:0.##} m long (it is {now:0.##} m, {cable.Gauge}).", With(thing, cable with { Length = Length.FromMeters(longest) })) is { } shorter)
                yield return shorter;
        }
        else if (now > 2 * LengthStep && Worth($"Halve the {name} to {now / 2:0.##} m: later, but not to the battery's own end.", With(thing, cable with { Length = cable.Length / 2 })) is { } halved)
        {
            yield return halved;
        }
        var thicker = Thicker(cable.Gauge).ToList();
        if (thicker.Count == 0)
            yield break;
        var enough = thicker.Where(gauge => Lowest(With(thing, cable with { Gauge = gauge }), element) - threshold - SpareVolts >= 0).Select(gauge => (WireGauge?)gauge).FirstOrDefault();
        var taken = enough ?? thicker[^1];
        if (Worth($"Take {taken} instead of {cable.Gauge} for the {name}, as long as it is{(enough is null ? ": later, but not to the battery's own end" : "")}.", With(thing, cable with { Gauge = taken })) is { } thick)
            yield return thick;
    }

    /// <summary>The lowest voltage at an element's inlet over the day, if it went on below its threshold; V. Where nothing can be delivered: 0.</summary>
    private double Lowest(PoweredBuild changed, string element)
    {
        const double never = 0.05;
        var network = new WiringNetwork(BuildWiring.Of(changed, wiring.Ambient).Elements.Select(one => one.Name != element ? one : one switch
        {
            Device device => device with { MinimumVoltage = ElectricPotential.FromVolts(never) },
            Regulator regulator => regulator with { InputMinimum = ElectricPotential.FromVolts(never) },
            LowVoltageSwitch guard => guard with { OpensBelow = ElectricPotential.FromVolts(never) },
            _ => one,
        }));
        var run = ScenarioWiring.Run(changed, network, wiring.Pack.Pack, wiring.Day, wiring.Ambient, 0, cancellation);
        return run.PackEndCause == EndCause.PowerLimit ? 0 : run.Loads[element].LowestInlet?.Volts ?? 0;
    }

    private PoweredBuild With(string thing, CableData cable) =>
        wiring.Powered with { Links = wiring.Powered.Links.With(thing, wiring.Powered.Links[thing] with { Cable = cable }) };

    private static IEnumerable<WireGauge> Thicker(WireGauge gauge)
    {
        const int thickestWorn = 10;
        if (gauge.Awg is not { } number)
            return Conductor.MetricGauges.Where(area => area > gauge.Area).Select(area => WireGauge.Metric(area.SquareMillimeters));
        return Enumerable.Range(1, 18).Select(step => number - (2 * step)).Where(awg => awg >= thickestWorn).Select(WireGauge.American);
    }

    private IEnumerable<WiringFix> OtherRegulator(string element)
    {
        if (!wiring.Powered.Regulators.TryGetValue(element, out var now))
            yield break;
        var behind = wiring.Powered.Devices.Where(device => device.Value.FedBy == element).Select(device => device.Value.Voltage).ToList();
        var load = wiring.Run.Loads[element].OutputCurrent?.Amperes ?? 0;
        var wider = scenario.PartIds.Select(scenario.FindPart).Where(part => part?.Regulator is { } other
                && other.InputMinimum < now.Data.InputMinimum && other.InputMaximum.Volts >= full
                && (other.MaximumCurrent?.Amperes ?? double.PositiveInfinity) >= load
                && behind.TrueForAll(window => (window?.Minimum?.Volts ?? 0) <= other.OutputVoltage.Volts && other.OutputVoltage.Volts <= (window?.Maximum?.Volts ?? now.Data.OutputVoltage.Volts)))
            .OrderBy(part => part!.Regulator!.InputMinimum.Volts).FirstOrDefault();
        if (wider is { Regulator: { } data } && Worth($"Take a regulator with a wider input for the {wiring.NameOf(element)}: {wider.Name} runs down to {data.InputMinimum.Volts:0.##} V.",
            wiring.Powered with { Regulators = wiring.Powered.Regulators.With(element, now with { Data = data }) }) is { } fix)
            yield return fix;
    }

    private IEnumerable<WiringFix> OtherOutlet(WiringFinding finding)
    {
        if (new WiringPlace(wiring.Powered, finding.Element) is not { Outlet: { } outlet, Feed: { } feed })
            yield break;
        var load = finding.Current?.Amperes ?? 0;
        var fed = LinkLookup.Fed(wiring.Build).Where(item => (item.FedBy ?? wiring.Build.StandardFeed) == feed).ToList();
        var now = LinkLookup.Outlets(wiring.Build, feed, scenario.PartOf);
        var users = fed.Where(item => item.Outlet == outlet).ToList();
        // With several things on one outlet, what to move is the crew's to say.
        if (users.Count != 1)
            yield break;
        var plugs = wiring.Powered.Devices.TryGetValue(users[0].Name, out var device) ? device.Count : 1;
        var better = now.Where(other => fed.TrueForAll(item => item.Outlet != other.Key) && other.Value.Sockets >= plugs && other.Value.Voltage?.Volts == now[outlet].Voltage?.Volts
            && (other.Value.MaximumCurrent?.Amperes ?? double.PositiveInfinity) >= load && (other.Value.Fuse?.SteadyAt(wiring.Ambient).Amperes ?? double.PositiveInfinity) >= load).Select(other => other.Key).FirstOrDefault();
        if (better is not null)
            yield return new WiringFix($"Move the {wiring.NameOf(users[0].Name)} from outlet {outlet} to outlet {better} of the {wiring.NameOf(feed)}, which gives the {load:0.0} A.", Duration.Zero, Reaches(wiring.Run));
    }

    private static double? Threshold(WiringElement element) => element switch
    {
        LowVoltageSwitch guard => guard.OpensBelow?.Volts,
        Regulator regulator => regulator.InputMinimum?.Volts,
        Device device => device.MinimumVoltage?.Volts,
        _ => null,
    };
}
