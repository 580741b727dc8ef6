using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What must hold between the question of the best rig and the rest of its scenario.</summary>
internal static class BestRigCheck
{
    /// <summary>Checks the question; every problem goes to the log.</summary>
    public static void Run(Scenario scenario, ReadLog log)
    {
        if (scenario.BestRig is not { } best)
            return;
        for (var index = 0; index < best.Days.Count; index++)
        {
            if (!scenario.Days.ContainsKey(best.Days[index]))
                log.Error($"best-rig.days.{index + 1}", $"The scenario has no day \"{best.Days[index]}\".",
                    string.Join(", ", scenario.Days.Keys.Take(30)), log.Nearest(best.Days[index], scenario.Days.Keys));
        }
        foreach (var wish in best.Wishes.GroupBy(wish => wish).Where(group => group.Count() > 1))
            log.Error("best-rig.wishes", $"\"{ChoiceFormat<RigWish>.Word(wish.Key)}\" stands in the list twice.");
        if (best.Upgrade is not null && best.Wishes.All(wish => wish == RigWish.LeastCost))
            log.Error("best-rig.upgrade",
                "The purchases of some years need a wish to serve, and there is none but \"least-cost\".",
                "a wish such as \"longest-day\" in \"best-rig.wishes\"");
        if (best.Slots.Count == 0 && !log.HasErrorIn("best-rig.slots"))
            log.Error("best-rig.slots", "There is no slot.", "what may be replaced, such as \"battery: {kind: battery}\"");
        if (!scenario.Builds.TryGetValue(best.Build, out var build))
        {
            if (best.Build.Length > 0)
                log.Error("best-rig.build", $"The scenario has no build \"{best.Build}\".",
                    string.Join(", ", scenario.Builds.Keys.Take(30)), log.Nearest(best.Build, scenario.Builds.Keys));
            return;
        }
        foreach (var (name, slot) in best.Slots)
            CheckSlot(scenario, build, best, name, slot, log);
        foreach (var twice in best.Slots.Keys.GroupBy(best.ReplacedBy).Where(group => group.Count() > 1))
            log.Error($"best-rig.slots.{twice.Last()}", $"\"{twice.Key}\" is replaced by two slots: {string.Join(", ", twice)}.",
                "one slot for each thing");
    }

    private static void CheckSlot(Scenario scenario, Build build, BestRig best, string name, RigSlot slot, ReadLog log)
    {
        var (at, thing) = ($"best-rig.slots.{name}", best.ReplacedBy(name));
        if (!build.Things.Contains(thing))
        {
            var things = build.Things.Distinct().ToList();
            log.Error(slot.Replaces is null ? at : $"{at}.replaces", slot.Replaces is null
                    ? $"The build \"{best.Build}\" has no \"{thing}\", and the slot does not say what it replaces."
                    : $"The build \"{best.Build}\" has no \"{thing}\".",
                string.Join(", ", things.Take(40)), log.Nearest(thing, things));
            return;
        }
        if (scenario.PartOf(thing) is not { } now)
            return;
        var kind = ChoiceFormat<PartKind>.Word(now.Kind);
        if (slot.Kind is { } wanted && wanted != now.Kind)
            log.Error($"{at}.kind",
                $"\"{thing}\" ({now.Name}) is a {kind}: parts of another kind can't stand in its place.", kind);
        for (var index = 0; index < slot.Parts.Count; index++)
        {
            var (path, id) = ($"{at}.parts.{index + 1}", slot.Parts[index]);
            if (scenario.FindPart(id) is not { } part)
                log.Error(path, $"There is no part \"{id}\" in this file or its parts files.", null,
                    log.Nearest(id, scenario.PartIds));
            else if (part.Kind != now.Kind)
                log.Error(path, $"\"{id}\" is a {ChoiceFormat<PartKind>.Word(part.Kind)}, and \"{thing}\" is a {kind}.",
                    $"the id of a {kind}");
        }
        for (var index = 0; index < slot.FromKit.Count; index++)
            ScenarioCheck.KitName(scenario, slot.FromKit[index], $"{at}.from-kit.{index + 1}", part => part.Kind == now.Kind,
                $"a {kind}", log);
        if (slot.MayStayEmpty && WhyNeeded(build, thing) is { } why)
            log.Error($"{at}.may-stay-empty", $"\"{thing}\" can't be left out: {why}.", "no");
    }

    /// <summary>Why a build can't do without one of its things, in words; null if it can.</summary>
    private static string? WhyNeeded(Build build, string thing)
    {
        if (build.Battery.Item == thing)
            return "it is the build's battery";
        if (build.Plate == thing)
            return "the battery sits on it";
        if (build.Cables.Contains(thing))
            return "what hangs on it would be fed without one";
        if (LinkLookup.Fed(build).Where(item => item.FedBy == thing).Select(item => item.Name).FirstOrDefault() is { } fed)
            return $"it feeds \"{fed}\"";
        if (build.Regulators.ContainsKey(thing) || build.Splitters.ContainsKey(thing))
            return null;
        return build.Places.Where(place => place.Value.On == thing).Select(place => place.Key).FirstOrDefault() is { } carried
            ? $"\"{carried}\" sits on it" : null;
    }
}
