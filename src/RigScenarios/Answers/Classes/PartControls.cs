using RigScenarios.Builds;

namespace RigScenarios.Answers.Classes;

/// <summary>What of the parts may be changed: what devices draw, which part is taken, where it is plugged in.</summary>
internal static class PartControls
{
    // More of them are no choice that somebody looks through on a tablet.
    private const int MostParts = 60;

    public static IEnumerable<ClassControl> Of(RigAnswer answer) => [.. Draws(answer), .. Outlets(answer), .. Parts(answer)];

    private static IEnumerable<ClassControl> Draws(RigAnswer answer)
    {
        foreach (var (name, device) in answer.TheBuild.Devices)
        {
            if (!answer.Scenario.Kit.TryGetValue(name, out var item) || answer.Scenario.FindPart(item.Part) is not { } part)
                continue;
            var (draw, path) = device.Power is { } own ? (own, $"builds.{answer.Build}.devices.{name}.power")
                : (part.Power, $"parts.{item.Part}.power");
            foreach (var (key, words, watts) in new[] { ("standby", "on standby", draw?.Standby),
                ("record", "while recording", draw?.Record) })
            {
                if (watts is { } known && (double)known.Watts > 0)
                    yield return ClassControls.Figure($"{path}.{key}", "What draws power",
                        $"{LimitSentences.Element(name)} {words}", "W", (double)known.Watts, 0,
                        Math.Min(Math.Ceiling(3 * (double)known.Watts), (double?)draw?.Peak?.Watts ?? double.MaxValue));
            }
        }
    }

    private static IEnumerable<ClassControl> Outlets(RigAnswer answer)
    {
        var build = answer.TheBuild;
        foreach (var (name, fedBy, outlet, _) in LinkLookup.Fed(build))
        {
            var feed = fedBy ?? build.StandardFeed;
            var outlets = LinkLookup.Outlets(build, feed, answer.Scenario.PartOf);
            if (outlet is null || outlets.Count < 2)
                continue;
            var group = build.Regulators.ContainsKey(name) ? "regulators" : build.Splitters.ContainsKey(name) ? "splitters"
                : "devices";
            yield return ClassControls.Choice($"builds.{answer.Build}.{group}.{name}.outlet", "Wiring",
                $"{LimitSentences.Element(name)}: outlet of the {LimitSentences.Element(feed)}", outlet,
                [.. outlets.Select(one => new ControlChoice(one.Key, one.Value.MaximumCurrent is { } most
                    ? $"{one.Key}, allows {most.Amperes:0.#} A" : one.Key))]);
        }
    }

    private static IEnumerable<ClassControl> Parts(RigAnswer answer)
    {
        var (build, scenario) = (answer.TheBuild, answer.Scenario);
        var items = build.Things.Concat(build.Cables).Append(build.Battery.Item)
            .Concat(scenario.Batteries.Values.Select(battery => battery.Item)).Distinct();
        foreach (var name in items.Where(scenario.Kit.ContainsKey))
        {
            var id = scenario.Kit[name].Part;
            if (scenario.FindPart(id) is not { } part)
                continue;
            List<ControlChoice> choices = [new(id, part.Name), .. scenario.PartIds.Where(other => other != id)
                .Select(other => (Id: other, Part: scenario.FindPart(other)!)).Where(other => other.Part.Kind == part.Kind)
                .Select(other => new ControlChoice(other.Id, other.Part.Name)).Take(MostParts)];
            if (choices.Count > 1)
                yield return ClassControls.Choice($"kit.{name}.part", "Which part", LimitSentences.Element(name), id, choices);
        }
    }
}
