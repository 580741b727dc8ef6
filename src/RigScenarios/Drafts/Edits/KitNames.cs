using RigScenarios.Builds;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>The names of things in the kit, and who speaks of them.</summary>
internal static class KitNames
{
    /// <summary>A name that nothing of the kit has.</summary>
    public static string Free(Scenario scenario, string wish)
    {
        var name = wish;
        for (var number = 2; scenario.Kit.ContainsKey(name) || name == Build.BatteryFeed && wish != Build.BatteryFeed
            || scenario.Parts.ContainsKey(OwnPart.IdStart + name); number++)
            name = $"{wish}-{number}";
        return name;
    }

    /// <summary>Whether another build has a thing.</summary>
    public static bool IsElsewhere(GivenRig given, string name) =>
        given.Scenario.Builds.Any(build => build.Key != given.Frame.Build && build.Value.Things.Contains(name));

    /// <summary>The scenario without a thing of the kit that nothing speaks of any more, and without its part.</summary>
    public static Scenario Dropped(Scenario scenario, string name)
    {
        if (!scenario.Kit.TryGetValue(name, out var item) || IsSpokenOf(scenario, name))
            return scenario;
        scenario = scenario with { Kit = scenario.Kit.Without(name) };
        return scenario.Parts.ContainsKey(item.Part) && scenario.Kit.Values.All(other => other.Part != item.Part)
            ? scenario with { Parts = scenario.Parts.Without(item.Part) } : scenario;
    }

    /// <summary>The day without what it says of a thing that has left the kit.</summary>
    public static Scenario WithoutStates(Scenario scenario, RigFrame frame, string name) =>
        scenario.Kit.ContainsKey(name) || !scenario.Days.TryGetValue(frame.Day, out var day)
            || day.Blocks.Values.All(block => !block.States.ContainsKey(name)) ? scenario
        : scenario with { Days = scenario.Days.With(frame.Day, day with
        {
            Blocks = new(day.Blocks.Select(block => KeyValuePair.Create(block.Key,
                block.Value with { States = block.Value.States.Without(name) }))),
        }) };

    /// <summary>The id that a part of own figures gets.</summary>
    public static string OwnId(string name) => OwnPart.IdStart + name;

    /// <summary>What a part of own figures is called until somebody names it.</summary>
    public static Part NewOwn(RigQuestion question) =>
        new() { Kind = question.OwnKind, Name = $"My {question.Key.Replace('-', ' ')}" };

    /// <summary>Whether a word can be a name.</summary>
    public static bool IsName(string word) => MapFormat<Part>.IsName(word);

    private static bool IsSpokenOf(Scenario scenario, string name) =>
        scenario.Builds.Values.Any(build => build.Things.Contains(name))
        || scenario.Days.Values.Count(day => day.Blocks.Values.Any(block => block.States.ContainsKey(name))) > 1
        || scenario.Journeys.Values.Any(journey => journey.Batteries.Contains(name) || journey.Packed.ContainsKey(name))
        || scenario.Batteries.Values.Any(battery => battery.Item == name)
        || scenario.HotSwap?.Pack.Item == name || scenario.InternalBatteries.ContainsKey(name);
}
