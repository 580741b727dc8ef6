using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Gives a thing its power cable.</summary>
public static class Cabling
{
    /// <summary>The rig with a cable in front of a thing.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">A device, splitter or regulator, also one that was only proposed.</param>
    /// <param name="cable">A cable of the kit by its name there, or a listed one by its part's id; empty for none.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing or cable.</exception>
    public static EditedRig With(GivenRig given, string thing, string cable)
    {
        given = Feeding.Proposed(given, thing);
        if (cable.Length == 0)
            return new EditedRig(Put(given, thing, null), thing);
        if (given.PartOf(cable)?.Cable is not null)
            return new EditedRig(Put(given, thing, cable), thing);
        if (given.FindPart(cable) is not { Cable: not null })
        {
            var choices = RigCables.Choices(given).Select(choice => choice.Value).ToList();
            throw Refused.Because("cable", $"There is no power cable \"{cable}\".",
                "a power cable of the list, or length and gauge of your own", NearestName.To(cable, choices));
        }
        // All of one listed kind are one thing of the kit.
        var name = given.Build.Cables.FirstOrDefault(used => given.Scenario.Kit.TryGetValue(used, out var item)
            && item.Part == cable) ?? KitNames.Free(given.Scenario, cable);
        var scenario = given.Scenario.Kit.ContainsKey(name) ? given.Scenario
            : given.Scenario with { Kit = given.Scenario.Kit.With(name, new KitItem(cable)) };
        return new EditedRig(Put(given.With(scenario), thing, name), thing);
    }

    /// <summary>The rig with a cable of one's own in front of a thing. One that something else hangs on too stays as it
    /// is.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">A device, splitter or regulator, also one that was only proposed.</param>
    /// <param name="length">From plug to plug, one way, as people write it.</param>
    /// <param name="gauge">The gauge of each conductor, as people write it.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing.</exception>
    public static EditedRig Own(GivenRig given, string thing, string? length, string? gauge)
    {
        given = Feeding.Proposed(given, thing);
        var was = LinkLookup.Fed(given.Build).First(item => item.Name == thing).Cable;
        var name = was is not null && IsOwn(given, was) && !IsShared(given, was) ? was : null;
        if (name is null)
        {
            name = KitNames.Free(given.Scenario, $"{thing}-cable");
            var part = new Part { Kind = PartKind.Cable, Name = $"Cable of {given.PartOf(thing)?.Name ?? thing}" };
            given = Put(given.With(given.Scenario with
            {
                Parts = given.Scenario.Parts.With(KitNames.OwnId(name), part),
                Kit = given.Scenario.Kit.With(name, new KitItem(KitNames.OwnId(name))),
            }), thing, name);
        }
        var at = $"parts.{given.Scenario.Kit[name].Part}.cable";
        return new EditedRig(given.With($"{at}.gauge", gauge).With($"{at}.length", length), thing);
    }

    /// <summary>A cable that nothing uses any more leaves the kit; there are as many of one as hang on it.</summary>
    private static GivenRig Put(GivenRig given, string thing, string? cable)
    {
        var was = LinkLookup.Fed(given.Build).First(item => item.Name == thing).Cable;
        given = Feeding.Change(given, thing, (fedBy, outlet, _) => (fedBy, outlet, cable));
        var scenario = was is null || was == cable ? given.Scenario : KitNames.Dropped(given.Scenario, was);
        if (cable is not null && scenario.Kit.TryGetValue(cable, out var item)
            && LinkLookup.Fed(given.Build).Where(fed => fed.Cable == cable).Sum(fed => given.Build.Devices.TryGetValue(fed.Name,
                out var device) ? device.Count : 1) is var needed && item.Count < needed)
            scenario = scenario with { Kit = scenario.Kit.With(cable, item with { Count = needed }) };
        return given.With(scenario);
    }

    private static bool IsOwn(GivenRig given, string name) =>
        given.Scenario.Kit.TryGetValue(name, out var item) && OwnPart.IsOwn(given.Scenario, item.Part);

    private static bool IsShared(GivenRig given, string name) => KitNames.IsElsewhere(given, name)
        || given.Build.Carries.Contains(name) || LinkLookup.Fed(given.Build).Count(item => item.Cable == name) > 1;
}
