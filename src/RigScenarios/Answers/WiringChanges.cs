using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Cables, outlets, regulators and plates on the way to what is past a limit or stops for want of voltage.</summary>
internal sealed class WiringChanges
{
    /// <summary>Finer than anybody cuts a cable.</summary>
    private const double LengthStepMetres = 0.05;

    private readonly RigAnswer now;
    private readonly Scenario scenario;
    private readonly Build build;
    private readonly List<string> onTheWay;
    private readonly List<string> moveable;
    private readonly bool wantsVoltage;

    private WiringChanges(RigAnswer now)
    {
        (this.now, scenario, build) = (now, now.Scenario, now.TheBuild);
        var passed = now.Of(QuestionKind.Wiring)!.Limits.Where(limit => limit.HasForce
            && (limit.IsPassed || StatedErrors.IsClose(limit))
            && QuestionRules.CountsForWiring(limit)).Select(limit => limit.Element);
        var stopped = now.Simulation.Devices.Values.Select(device => device.FirstStop?.Reason)
            .Where(reason => reason?.Kind == StopKind.ShortOfVoltage).Select(reason => reason!.Element!).ToList();
        wantsVoltage = stopped.Count > 0 || now.Of(QuestionKind.Wiring)!.Limits.Any(limit => limit.IsPassed
            && limit.Worst is ElectricPotential);
        var targets = passed.Concat(stopped).Distinct().SelectMany(Things).Distinct().ToList();
        onTheWay = [.. targets.SelectMany(WayUp).Distinct()];
        moveable = [.. targets.Concat(LinkLookup.Fed(build).Where(item => targets.Contains(item.FedBy ?? build.StandardFeed))
            .Select(item => item.Name)).Distinct().Where(name => Path(name) is not null)];
    }

    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        var changes = new WiringChanges(now);
        return [.. changes.Cables(), .. changes.Shorter(), .. changes.Outlets(), .. changes.Regulators(), .. changes.Plates()];
    }

    /// <summary>What is behind an element of the network: a thing of the build, or those on an outlet.</summary>
    private IEnumerable<string> Things(string element) =>
        LinkLookup.Fed(build).Where(item => item.Name == element || BuildWiring.CableName(item.Name) == element
            || (item.Outlet is not null && BuildWiring.OutletName(item.Outlet, item.FedBy ?? build.StandardFeed) == element))
                .Select(item => item.Name)
            .Concat(element == build.Plate ? [element] : []);

    private IEnumerable<string> WayUp(string thing)
    {
        for (string? at = thing; at is not null && at != Build.BatteryFeed; at = at == build.Plate ? null : LinkLookup.Fed(build)
            .FirstOrDefault(item => item.Name == at) is { Name: not null } link ? link.FedBy ?? build.StandardFeed : null)
            yield return at;
    }

    /// <summary>The path of a thing that is fed; null for what is none.</summary>
    private string? Path(string thing) =>
        build.Regulators.ContainsKey(thing) ? $"builds.{now.Build}.regulators.{thing}"
        : build.Splitters.ContainsKey(thing) ? $"builds.{now.Build}.splitters.{thing}"
        : build.Devices.ContainsKey(thing) ? $"builds.{now.Build}.devices.{thing}" : null;

    private IEnumerable<RigChange> Cables()
    {
        foreach (var thing in onTheWay)
        {
            if (Path(thing) is not { } path || !now.Powered.Links.TryGetValue(thing, out var link) || link.Cable is not { } cable)
                continue;
            foreach (var (id, other) in scenario.PartIds.Select(id => (id, scenario.FindPart(id)!))
                .Where(other => other.Item2.Cable is { } better && better != cable && IsBetter(better, cable)))
            {
                var reach = other.Cable!.Length < cable.Length ? $"{other.Cable.Length.Meters:0.##} m reach" : null;
                var free = scenario.Kit.FirstOrDefault(item => item.Value.Part == id
                    && Uses(item.Key) + Count(thing) <= item.Value.Count).Key;
                var name = free ?? FreeName(id);
                var settings = new List<FieldSetting>();
                if (free is null)
                    settings.Add(new($"kit.{name}",
                        BatteryChanges.Group(("part", id), ("count", Count(thing) > 1 ? $"{Count(thing)}" : null))));
                settings.Add(new($"{path}.cable", name));
                yield return new(
                    $"{(free is null ? $"Take a {Lower(other.Name)}" : $"Take the kit's {LimitSentences.Element(name)}")} to "
                        + $"the {LimitSentences.Element(thing)}", settings, free is null
                        ? ChangeEffort.Buy : ChangeEffort.FromKit, $"cable of {thing}")
                {
                    Provided = reach,
                    Price = free is null && other.Buy is { } one ? one with { Amount = one.Amount * Count(thing) } : null,
                };
            }
        }
    }

    /// <summary>Rated for more, or shorter where a voltage is short; less than half as long reaches nowhere near as
    /// far.</summary>
    private bool IsBetter(CableData other, CableData now) => other.Length >= 0.5 * now.Length
        && ((other.RatedCurrent ?? ElectricCurrent.Zero) > (now.RatedCurrent ?? ElectricCurrent.Zero)
            || (wantsVoltage && other.Length < now.Length));

    /// <summary>The same cable cut shorter: for voltage only, for its rating stays what it is.</summary>
    private IEnumerable<RigChange> Shorter()
    {
        if (!wantsVoltage)
            yield break;
        foreach (var thing in onTheWay)
        {
            if (!now.Powered.Links.TryGetValue(thing, out var link) || link is not { Cable: { } cable, CableName: { } name }
                || Uses(name) > Count(thing) || scenario.Kit.Values.Count(item => item.Part == scenario.Kit[name].Part) > 1)
                continue;
            foreach (var part in (double[])[0.75, 0.5])
            {
                var metres = Math.Floor(part * cable.Length.Meters / LengthStepMetres) * LengthStepMetres;
                if (metres >= 2 * LengthStepMetres)
                {
                    yield return new($"Have the {LimitSentences.Element(name)} to the {LimitSentences.Element(thing)} cut to "
                        + $"{metres:0.##} m (it is {cable.Length.Meters:0.##} m)",
                        [new($"parts.{scenario.Kit[name].Part}.cable.length",
                            BatteryChanges.Text(Math.Round(metres * 1000), "mm"))], ChangeEffort.FromKit,
                            $"cable of {thing}") { Provided = $"{metres:0.##} m reach" };
                }
            }
        }
    }

    /// <summary>Another outlet of what feeds a thing, or of the plate or a splitter.</summary>
    private IEnumerable<RigChange> Outlets()
    {
        foreach (var thing in moveable)
        {
            var at = LinkLookup.Fed(build).First(item => item.Name == thing);
            var feedNow = at.FedBy ?? build.StandardFeed;
            var voltage = at.Outlet is null ? null : LinkLookup.Outlets(build, feedNow, scenario.PartOf)
                .TryGetValue(at.Outlet, out var outlet) ? outlet.Voltage : null;
            foreach (var feed in build.Splitters.Keys.Prepend(build.Plate).OfType<string>()
                .Where(feed => !WayUp(feed).Contains(thing)))
            {
                foreach (var (name, data) in LinkLookup.Outlets(build, feed, scenario.PartOf))
                {
                    var plugs = LinkLookup.Fed(build).Where(item => (item.FedBy ?? build.StandardFeed) == feed
                        && item.Outlet == name && item.Name != thing).Sum(item => Count(item.Name));
                    if ((feed == feedNow && name == at.Outlet) || data.Voltage?.Volts != voltage?.Volts
                        || plugs + Count(thing) > data.Sockets)
                        continue;
                    var settings = new List<FieldSetting> { new($"{Path(thing)}.outlet", name) };
                    if (feed != feedNow)
                        settings.Insert(0, new($"{Path(thing)}.fed-by", feed));
                    yield return new($"Plug the {LimitSentences.Element(thing)} into outlet {name} of the "
                        + $"{LimitSentences.Element(feed)}", settings, ChangeEffort.Nothing, $"outlet of {thing}")
                    {
                        Provided = feed == feedNow ? null : now.Powered.Links.TryGetValue(thing, out var link)
                            && link.Cable is { } cable ? $"its {cable.Length.Meters:0.##} m cable reaches" : "its cable reaches",
                    };
                }
            }
        }
    }

    private IEnumerable<RigChange> Regulators()
    {
        foreach (var thing in onTheWay.Where(build.Regulators.ContainsKey))
        {
            var data = now.Powered.Regulators[thing].Data;
            foreach (var (id, other) in scenario.PartIds.Select(id => (id, scenario.FindPart(id)!))
                .Where(other => other.Item2.Regulator is { } better
                && (better.InputMinimum < data.InputMinimum || better.MaximumCurrent > data.MaximumCurrent)
                    && Math.Abs(better.OutputVoltage.Volts - data.OutputVoltage.Volts) < 1))
                yield return new($"Take a {Lower(other.Name)} for the {LimitSentences.Element(thing)}",
                    [new($"kit.{thing}.part", id)], ChangeEffort.Buy, $"regulator {thing}") { Price = other.Buy };
        }
    }

    private IEnumerable<RigChange> Plates()
    {
        if (build.Plate is not { } plate || now.Powered.Plate?.Plate is not { } data || !onTheWay.Contains(plate))
            yield break;
        foreach (var (id, other) in scenario.PartIds.Select(id => (id, scenario.FindPart(id)!))
            .Where(other => other.Item2.Plate is { } better && other.Item1 != scenario.Kit[plate].Part && IsOfClass(better, data)
            && ((better.SwitchOffVoltage ?? ElectricPotential.Zero) < data.SwitchOffVoltage
                || (better.MaximumCurrent ?? ElectricCurrent.Zero) > data.MaximumCurrent)))
            yield return new($"Take a {Lower(other.Name)} in place of the battery plate", [new($"kit.{plate}.part", id)],
                ChangeEffort.Buy, "plate") { Price = other.Buy };
    }

    /// <summary>Whether a plate holds batteries of the same voltage: its guard acts near that of the other, or it has
    /// none.</summary>
    private static bool IsOfClass(PlateData other, PlateData now) =>
        other.SwitchOffVoltage is not { } guard || now.SwitchOffVoltage is not { } present
            || Math.Abs(guard.Volts - present.Volts) < 0.2 * present.Volts;

    private int Count(string thing) => build.Devices.TryGetValue(thing, out var device) ? device.Count : 1;

    private int Uses(string cable) => LinkLookup.Fed(build).Where(item => item.Cable == cable).Sum(item => Count(item.Name));

    private string FreeName(string id) => Enumerable.Range(1, 100).Select(number => number == 1 ? id : $"{id}-{number}")
        .First(name => !scenario.Kit.ContainsKey(name));

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
