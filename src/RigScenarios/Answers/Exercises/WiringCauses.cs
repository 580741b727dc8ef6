using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Answers.Exercises;

/// <summary>What makes a limit between battery and devices be passed: a weaker cable, an outlet for less.</summary>
internal static class WiringCauses
{
    private const string Look = "Look at the question of wiring: which outlet, fuse or cable carries more than it may?";

    public static IEnumerable<CauseToTry> Of(RigAnswer sound) => [.. Cables(sound), .. Outlets(sound)];

    private static IEnumerable<CauseToTry> Cables(RigAnswer sound)
    {
        var build = sound.TheBuild;
        foreach (var thing in LinkLookup.Fed(build).Where(item => item.Cable is not null
            && LinkLookup.Fed(build).Count(other => other.Cable == item.Cable) == 1))
        {
            var (name, part) = (thing.Cable!, sound.Scenario.PartOf(thing.Cable!)!);
            if (part.Cable is not { } cable)
                continue;
            var (slot, to) = ($"cable of {thing.Name}", LimitSentences.Element(thing.Name));
            yield return new(slot, QuestionKind.Wiring,
            [
                .. CausesToTry.Others(sound.Scenario, name).Where(other => other.Part.Cable is { RatedCurrent: { } rated } weaker
                        && weaker.Length >= 0.9 * cable.Length
                        && rated < (cable.RatedCurrent ?? ElectricCurrent.FromAmperes(double.PositiveInfinity)))
                    .OrderByDescending(other => other.Part.Cable!.RatedCurrent!.Value.Amperes)
                    .Select(other => CausesToTry.Replaced(sound, name, (slot, CauseKind.WeakCable), other.Id,
                        $"To the {to} goes a {other.Part.Name}, rated {other.Part.Cable!.RatedCurrent!.Value.Amperes:0.#} A"
                            + (cable.RatedCurrent is { } planned
                                ? $"; the {part.Name} that was planned is rated {planned.Amperes:0.#} A." : "."),
                        [Look, "Look at the cables: which one carries the current of several devices?",
                            $"Add up what the cable to the {to} carries when all record, and compare it with its rating."])),
            ]);
        }
    }

    private static IEnumerable<CauseToTry> Outlets(RigAnswer sound)
    {
        var (build, scenario) = (sound.TheBuild, sound.Scenario);
        foreach (var item in LinkLookup.Fed(build).Where(item => item.Outlet is not null))
        {
            var feed = item.FedBy ?? build.StandardFeed;
            var outlets = LinkLookup.Outlets(build, feed, scenario.PartOf);
            if (!outlets.TryGetValue(item.Outlet!, out var now) || now.MaximumCurrent is not { } allowed)
                continue;
            var (slot, thing) = ($"outlet of {item.Name}", LimitSentences.Element(item.Name));
            var path = build.Regulators.ContainsKey(item.Name) ? $"builds.{sound.Build}.regulators.{item.Name}.outlet"
                : build.Splitters.ContainsKey(item.Name) ? $"builds.{sound.Build}.splitters.{item.Name}.outlet"
                : $"builds.{sound.Build}.devices.{item.Name}.outlet";
            var from = LimitSentences.Element(feed);
            yield return new(slot, QuestionKind.Wiring,
            [
                .. outlets.Where(other => other.Key != item.Outlet && other.Value.Voltage?.Volts == now.Voltage?.Volts
                        && other.Value.MaximumCurrent < allowed
                        && LinkLookup.Fed(build).Count(plugged => (plugged.FedBy ?? build.StandardFeed) == feed
                            && plugged.Outlet == other.Key) < other.Value.Sockets)
                    .OrderByDescending(other => other.Value.MaximumCurrent!.Value.Amperes)
                    .Select(other => new PlantedCause
                    {
                        Slot = slot, Kind = CauseKind.WrongOutlet,
                        Words = $"The {thing} is plugged into outlet {other.Key} of the {from}, which allows "
                            + $"{other.Value.MaximumCurrent!.Value.Amperes:0.#} A.",
                        Settings = [new(path, other.Key)],
                        Repair = new($"Plug the {thing} into outlet {item.Outlet} of the {from}", [new(path, item.Outlet!)],
                            ChangeEffort.Nothing, slot),
                        Hints = [Look, $"Look at the outlets of the {from}: they do not all allow the same.",
                            $"Compare what the {thing} takes with what its outlet allows, and with the others beside it."],
                    }),
            ]);
        }
    }
}
