using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Chooses another part for a thing of the rig.</summary>
public static class Choosing
{
    /// <summary>A listed part. A thing that another build uses too stays as it is there; this build gets one of a new
    /// name.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">The thing's name in the kit.</param>
    /// <param name="part">The id of the part.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing or part, or the part can't stand there.</exception>
    public static EditedRig Listed(GivenRig given, string thing, string part)
    {
        var there = TakingAway.Find(given, thing);
        var question = RigQuestions.Find(there.Question)!;
        return Put(given, there, part, Listed(given, question, part), null);
    }

    /// <summary>One's own figures, which are still to be given.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">The thing's name in the kit.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing.</exception>
    public static EditedRig Own(GivenRig given, string thing)
    {
        var there = TakingAway.Find(given, thing);
        if (OwnPart.IsOwn(given.Scenario, there.Part) && !KitNames.IsElsewhere(given, thing))
            return new EditedRig(given, thing);
        var part = KitNames.NewOwn(RigQuestions.Find(there.Question)!);
        return Put(given, there, null, part, part);
    }

    internal static Part Listed(GivenRig given, RigQuestion question, string id)
    {
        var part = given.FindPart(id) ?? throw Refused.Because("part", $"There is no part \"{id}\" in the list.",
            "a part of the list", NearestName.To(id, given.AllParts.Select(item => item.Key)));
        var fits = question.PartKinds.Contains(part.Kind) && question.Key switch
        {
            "lens" or "head" or "legs" or "other" => true,
            "battery" => part.Battery is not null,
            "plate" => part.Plate is not null,
            "regulator" => part.Regulator is not null,
            _ => part.Power is not null,
        };
        return fits ? part : throw Refused.Because("part",
            $"{part.Name} is a {Word(part.Kind)}; it can't stand here.", string.Join(", ", question.PartKinds.Select(Word)));
    }

    private static string Word(PartKind kind) => ChoiceFormat<PartKind>.Word(kind).Replace('-', ' ');

    private static EditedRig Put(GivenRig given, RigThing thing, string? id, Part part, Part? own)
    {
        var (scenario, build, name) = (given.Scenario, given.Build, thing.Name);
        var before = scenario;
        if (KitNames.IsElsewhere(given, name) && id != thing.Part)
        {
            name = KitNames.Free(scenario, name);
            build = Placing.Renamed(build, thing.Name, name);
            scenario = Renamed(scenario, given.Frame, thing, name);
        }
        if (own is not null)
        {
            id = KitNames.OwnId(name);
            scenario = scenario with { Parts = scenario.Parts.With(id, own) };
        }
        var group = RigThings.GroupOf(thing.Question, part);
        if (group != thing.Group && thing.Question == "other")
            build = Placing.With(Placing.Without(build, name), name, group, essential: false);
        if (group == ThingGroup.Plate || group == ThingGroup.Splitter)
            build = Placing.WithoutLostOutlets(build, name, part.Plate?.Outlets ?? part.Splitter?.Outlets
                ?? OrderedMap<OutletData>.Empty);
        scenario = scenario with
        {
            Kit = scenario.Kit.With(name, new KitItem(id!, scenario.Kit.TryGetValue(name, out var item) ? item.Count
                : thing.Group == ThingGroup.Device ? build.Devices[name].Count : 1)),
            Builds = scenario.Builds.With(given.Frame.Build, build),
        };
        // Own figures that nothing has any more go.
        if (OwnPart.IsOwn(before, thing.Part) && scenario.Kit.Values.All(other => other.Part != thing.Part))
            scenario = scenario with { Parts = scenario.Parts.Without(thing.Part) };
        return new EditedRig(given.With(scenario), name);
    }

    /// <summary>The scenario in which the day and the batteries speak of the thing of the new name too.</summary>
    private static Scenario Renamed(Scenario scenario, RigFrame frame, RigThing thing, string name)
    {
        if (thing.Group == ThingGroup.Battery)
            scenario = scenario with { Batteries = new(scenario.Batteries.Select(battery => KeyValuePair.Create(battery.Key,
                battery.Value.Item == thing.Name ? battery.Value with { Item = name } : battery.Value))) };
        if (!scenario.Days.TryGetValue(frame.Day, out var day))
            return scenario;
        return scenario with { Days = scenario.Days.With(frame.Day, day with
        {
            Blocks = new OrderedMap<Days.DayBlock>(day.Blocks.Select(block => KeyValuePair.Create(block.Key,
                block.Value.States.TryGetValue(thing.Name, out PowerState state)
                    ? block.Value with { States = block.Value.States.With(name, state) } : block.Value))),
        }) };
    }
}
