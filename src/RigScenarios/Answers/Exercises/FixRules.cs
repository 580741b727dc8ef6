using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>A change that a solution may not make.</summary>
/// <param name="Path">The field.</param>
/// <param name="Why">Why not, in a sentence.</param>
public sealed record RefusedChange(string Path, string Why);

/// <summary>
/// What of an exercise is given and what a solution may change: the kit, how it is fed and where it sits, the batteries' state,
/// and what is left on for nothing. The day, the air, what is shot and what parts are stays.
/// </summary>
internal static class FixRules
{
    private const string Given = "The day, the air and what else surrounds the rig are given.";

    private const string PartsGiven = "What a part is, weighs, draws and costs is given; take another part instead.";

    private const string DrawsGiven = "What a device draws, how many there are and which are essential is given.";

    private const string PlaceGiven = "Only how far forward a thing sits on its mount may be changed.";

    /// <summary>The changes that are refused; none where all are allowed.</summary>
    public static IReadOnlyList<RefusedChange> Broken(Exercise exercise, Scenario solution)
    {
        var build = exercise.Rig.Build;
        if (!solution.Builds.TryGetValue(build, out var made))
            return [new($"builds.{build}", "The exercise is about this build.")];
        var rig = exercise.Rig.TheBuild;
        return
        [
            .. ChangedFields.Between(exercise.Rig.Scenario, solution)
                .Select(change => (change.Path, Why: Why(change.Path.Split('.'), build, exercise.Rig.Scenario)))
                .Where(change => change.Why is not null).Select(change => new RefusedChange(change.Path, change.Why!)),
            .. Missing(rig, made, build), .. States(exercise, solution), .. Places(made, rig, build),
            .. Parts(exercise, solution), .. Conditions(exercise, solution, made),
        ];
    }

    /// <summary>Whether a solution may change a field at all; what it may be changed to is another question.</summary>
    public static bool MayChange(Exercise exercise, string path) =>
        Why(path.Split('.'), exercise.Rig.Build, exercise.Rig.Scenario) is null;

    private static string? Why(string[] steps, string build, Scenario rig) => steps switch
    {
        ["title" or "note" or "parts-from", ..] or ["kit", ..] => null,
        ["builds", var name, ..] => name == build ? WhyOfBuild(steps[2..], rig.Builds[build])
            : "The exercise is about one build.",
        ["batteries", var name, "heat-factor" or "runtime-known-to" or "fitted-from" or "maximum-charge-current"] =>
            rig.Batteries.ContainsKey(name) ? Given : null,
        ["batteries", ..] => null,
        ["swaps", "swap-time" or "restart" or "allowed"] => Given,
        ["swaps", ..] => null,
        // Looked at by themselves: what counts is whether a device runs, however it is written.
        ["days", _, "blocks", _, "states" or "others", ..] or ["days", _, "blocks", _, "cycle", "reset-states", ..] => null,
        ["parts", ..] => PartsGiven,
        _ => Given,
    };

    private static string? WhyOfBuild(string[] steps, Build rig) => steps switch
    {
        ["title"] or ["assumed", ..] or ["plate"] or ["regulators" or "splitters", ..] or ["carries"] => null,
        ["battery", "load-scale" or "runtime-known-to" or "fitted-from"] => DrawsGiven,
        ["battery", ..] => null,
        ["devices", _, "fed-by" or "outlet" or "cable"] => null,
        ["devices", var name, ..] => rig.Devices.ContainsKey(name) ? DrawsGiven : null,
        ["places", var name, var field] => field == "forward" || !rig.Things.Contains(name) ? null : PlaceGiven,
        ["on-head", "plate-at" or "counterbalance-at"] => null,
        ["on-legs", "height" or "foot-radius" or "ballast" or "ballast-height"] => null,
        _ => Given,
    };

    private static IEnumerable<RefusedChange> Missing(Build rig, Build made, string build) =>
    [
        .. rig.Devices.Keys.Where(name => !made.Devices.ContainsKey(name))
            .Select(name => new RefusedChange($"builds.{build}.devices.{name}", "No device may be left at home.")),
        .. rig.Carries.Except(made.Carries).Select(name => new RefusedChange($"builds.{build}.carries",
            $"The {LimitSentences.Element(name)} may not be left at home.")),
    ];

    /// <summary>A device may be in a block what it was or what it would be on the sound rig, and nothing else.</summary>
    private static IEnumerable<RefusedChange> States(Exercise exercise, Scenario solution)
    {
        foreach (var (name, day) in exercise.Rig.Scenario.Days)
        {
            if (!solution.Days.TryGetValue(name, out var made))
                continue;
            foreach (var (at, block) in day.Blocks)
            {
                if (!made.Blocks.TryGetValue(at, out var now))
                    continue;
                var sound = exercise.Sound.Scenario.Days[name].Blocks[at];
                foreach (var device in exercise.Rig.TheBuild.Devices.Keys)
                {
                    if ((now.StateOf(device) != block.StateOf(device) && now.StateOf(device) != sound.StateOf(device))
                        || (now.StateInReset(device) != block.StateInReset(device)
                            && now.StateInReset(device) != sound.StateInReset(device)))
                        yield return new($"days.{name}.blocks.{at}.states.{device}",
                            "What is shot and watched is given: switch off only what is on for nothing.");
                }
            }
        }
    }

    private static IEnumerable<RefusedChange> Places(Build made, Build rig, string build) =>
        made.Places.Where(place => rig.Places.TryGetValue(place.Key, out var was) && !place.Value.Forward.Equals(was.Forward)
                && (place.Value.SlidesFrom is null || place.Value.Forward < place.Value.SlidesFrom
                    || place.Value.Forward > place.Value.SlidesTo))
            .Select(place => new RefusedChange($"builds.{build}.places.{place.Key}.forward", place.Value.SlidesFrom is { } from
                ? $"It slides from {from.Millimeters:0} to {place.Value.SlidesTo?.Millimeters:0} mm."
                : "It does not slide on its mount."));

    private static IEnumerable<RefusedChange> Parts(Exercise exercise, Scenario solution)
    {
        var rig = exercise.Rig.Scenario;
        foreach (var (name, item) in solution.Kit)
        {
            var (own, made) = (rig.FindPart(item.Part), solution.FindPart(item.Part));
            if (own is null || made is null || !ChangedFields.Same(own, made))
                yield return new($"kit.{name}.part", PartsGiven);
            else if (rig.PartOf(name) is { } was && was.Kind != made.Kind)
                yield return new($"kit.{name}.part", "A thing may be exchanged for another of its kind only.");
        }
    }

    private static IEnumerable<RefusedChange> Conditions(Exercise exercise, Scenario solution, Build made)
    {
        const double pocket = 20;
        var warmer = $"An inner pocket keeps it at {pocket:0} °C, and nothing on the set is warmer.";
        var warmest = Math.Max(pocket, exercise.Rig.TheBuild.Battery.StartTemperature?.DegreesCelsius ?? pocket);
        if (made.Battery.StartTemperature?.DegreesCelsius > warmest)
            yield return new($"builds.{exercise.Rig.Build}.battery.start-temperature",
                warmer);
        foreach (var (name, _) in solution.Batteries.Where(battery => battery.Value.StartTemperature?.DegreesCelsius > pocket
            || battery.Value.RestsAt?.DegreesCelsius > pocket))
            yield return new($"batteries.{name}", warmer);
        // Left out it would be set for the student, as well as can be.
        if ((exercise.Rig.TheBuild.OnHead?.PlateAt is not null && made.OnHead?.PlateAt is null)
            || (exercise.Rig.TheBuild.OnHead?.CounterbalanceAt is not null && made.OnHead?.CounterbalanceAt is null))
            yield return new($"builds.{exercise.Rig.Build}.on-head",
                "Say where the camera plate and the counterbalance are set.");
        var planned = exercise.Sound.Balance?.Supports.Stand?.FootRadius ?? made.OnLegs?.FootRadius;
        if (made.OnLegs?.FootRadius > planned)
            yield return new($"builds.{exercise.Rig.Build}.on-legs.foot-radius",
                $"The legs spread to {planned?.Millimeters:0} mm at most.");
    }
}
