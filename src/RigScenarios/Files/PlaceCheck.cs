using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What must hold between the places of a build.</summary>
internal static class PlaceCheck
{
    /// <summary>Between pad and hands, mm: with less the hands would have to pull without bound.</summary>
    private const double LeastLever = 1;

    /// <summary>Checks the places of a build; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, Build build, string at, ReadLog log)
    {
        // A thing whose part is not known is told once, at its part, and not at all places where it is named.
        var onRig = build.Things
            .Where(name => scenario.PartOf(name)?.Kind is not (PartKind.Head or PartKind.Tripod or PartKind.Charger))
            .ToHashSet(StringComparer.Ordinal);
        // A thing of the kit that this build leaves off stays in the list: leaving it off is a what-if, not a mistake.
        foreach (var (i, name) in build.Beside.Index()
            .Where(thing => !onRig.Contains(thing.Item) && !scenario.Kit.ContainsKey(thing.Item)))
            log.Error($"{at}.beside.{i + 1}", $"This build has no \"{name}\" that could be on the rig or beside it.",
                string.Join(", ", onRig.Take(30)), log.Nearest(name, onRig));
        foreach (var (name, place) in build.Places.Where(place => build.OffRig.Contains(place.Key)))
            log.Warning($"{at}.places.{name}", $"\"{name}\" is beside the rig, so its place is not used.");
        onRig.ExceptWith(build.OffRig);
        foreach (var (name, place) in build.Places.Where(place => !build.OffRig.Contains(place.Key)))
            CheckPlace(scenario, name, place, onRig, $"{at}.places.{name}", log);
        Rings(build, at, log);
        if (build.OnShoulder is { Pad: { } pad, Hands: { } hands } && Math.Abs((pad - hands).Millimeters) < LeastLever)
            log.Error($"{at}.on-shoulder.hands",
                "Pad and hands are at the same place along the lens, so the hands have no lever.",
                $"two places at least {LeastLever:0} mm apart");
        if (build.OnHead is { CounterbalanceAt: { } set }
            && build.Carries.Select(scenario.PartOf)
            .FirstOrDefault(part => part?.Kind == PartKind.Head)?.Head is { CounterbalanceSteps.Count: > 0 } head
            && !head.CounterbalanceSteps.Contains(set))
            log.Warning($"{at}.on-head.counterbalance-at",
                $"The head has no step of {set.NewtonMeters:G6} N·m; its steps are "
                    + $"{string.Join(", ", head.CounterbalanceSteps.Select(step => $"{step.NewtonMeters:G6}"))} N·m.");
    }

    private static void CheckPlace(Scenario scenario, string name, PlaceInUse place, HashSet<string> onRig,
        string path, ReadLog log)
    {
        if (!onRig.Contains(name))
        {
            // A thing of the kit that this build leaves off keeps its place: leaving it off is a what-if, not a mistake.
            if (scenario.PartOf(name) is { Kind: not (PartKind.Head or PartKind.Tripod or PartKind.Charger) })
            {
                log.Warning(path, $"\"{name}\" is in the kit but not on this build, so its place is not used.");
                return;
            }
            var why = scenario.Kit.ContainsKey(name)
                ? $"\"{name}\" holds the rig up and is not on it: how the build sits on it stands in \"on-head\" and \"on-legs\"."
                : $"This build has no \"{name}\".";
            log.Error(path, why, string.Join(", ", onRig.Take(30)), log.Nearest(name, onRig));
            return;
        }
        if (place.On is { } on && !onRig.Contains(on))
            log.Error($"{path}.on", $"There is no \"{on}\" on this rig to carry it.",
                string.Join(", ", onRig.Where(other => other != name).Take(30)), log.Nearest(on, onRig));
        if (place.AtEnd && (place.On is null || scenario.PartOf(place.On) is { Kind: not PartKind.Arm }))
            log.Error($"{path}.at-end", "Only an arm has a far end to sit at.", "\"on\" with the name of an arm");
        if (place.SlidesFrom is null != place.SlidesTo is null)
            log.Error($"{path}.{(place.SlidesFrom is null ? "slides-from" : "slides-to")}",
                "A thing that slides needs both ends of its stretch.", "\"slides-from: -190 mm\" and \"slides-to: -60 mm\"");
        if (place is { SlidesFrom: { } from, SlidesTo: { } to } && from > to)
            log.Error($"{path}.slides-from",
                $"The rear end ({from.Millimeters:G6} mm) is ahead of the front end ({to.Millimeters:G6} mm).");
        if (scenario.PartOf(name) is { Mass: null })
            log.Warning(path, $"\"{name}\" has no mass in its parts file, so its place changes nothing.");
    }

    private static void Rings(Build build, string at, ReadLog log)
    {
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var name in build.Places.Keys.Where(name => !told.Contains(name)))
        {
            var chain = new List<string> { name };
            while (build.Places.TryGetValue(chain[^1], out var place) && place.On is { } on && chain.Count <= build.Places.Count)
            {
                chain.Add(on);
                if (on != name)
                    continue;
                told.UnionWith(chain);
                log.Error($"{at}.places.{name}.on",
                    $"Things carry each other in a ring: {string.Join(" on ", chain)}. Nothing carries them.");
                break;
            }
        }
    }
}
