using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Where the things of a draft sit: what was moved is put into the scenario, and found there again.</summary>
internal static class DraftPlaces
{
    // A hundredth of a millimetre is the rounding of a text and no move.
    private static readonly Length Same = Length.FromMillimeters(0.051);

    /// <summary>The things of a build that slide and whose places the scenario gives.</summary>
    public static OrderedMap<Length> In(Scenario scenario, string build) =>
        new(Moveable(scenario, build).Where(part => !part.IsUsual)
            .Select(part => KeyValuePair.Create(part.Name, Length.FromMillimeters(Math.Round(part.At.Millimeters, 3)))));

    /// <summary>What of a build can be moved; nothing where nothing of it has a mass yet.</summary>
    public static IReadOnlyList<MoveablePart> Moveable(Scenario scenario, string build) =>
        Rig(scenario, build) is { } rig ? MovedPlaces.Of(rig) : [];

    /// <summary>The thing that the battery moves with, itself or what carries it; null where it can't be moved.</summary>
    public static string? BatterySlide(Scenario scenario, string build)
    {
        if (Rig(scenario, build) is not { } rig)
            return null;
        var slides = rig.Moveable.Select(part => part.Key).ToHashSet(StringComparer.Ordinal);
        string? name = rig.Build.Battery.Item;
        for (var steps = 0; name is not null && !slides.Contains(name) && steps <= rig.Places.Count; steps++)
            name = rig.Places.TryGetValue(name, out var place) ? place.On : null;
        return name is not null && slides.Contains(name) ? name : null;
    }

    /// <summary>The scenario with what the draft moved. Beyond the end of its mount a thing stands at the end, and a warning says
    /// so.</summary>
    /// <param name="scenario">The scenario with the draft's things in it.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="draft">The draft.</param>
    /// <param name="renamed">Things of the draft that have another name in the scenario.</param>
    /// <param name="problems">Warnings go here.</param>
    public static Scenario Apply(Scenario scenario, string build, RigDraft draft,
        IReadOnlyDictionary<string, string> renamed, List<Diagnostic> problems)
    {
        if (draft.Places.Count == 0 || Rig(scenario, build) is not { } rig)
            return scenario;
        var slides = MovedPlaces.Of(rig).ToDictionary(part => part.Name, StringComparer.Ordinal);
        var moved = new List<KeyValuePair<string, Length>>();
        foreach (var (name, forward) in draft.Places)
        {
            // What is not on the rig any more, or sits where nothing slides, was moved on another rig than this one.
            if (!slides.TryGetValue(renamed.GetValueOrDefault(name, name), out var part) || (forward - part.At).Abs() < Same)
                continue;
            moved.Add(new(part.Name, forward));
            if (forward < part.Range.Least - Same || forward > part.Range.Greatest + Same)
            {
                var end = forward < part.Range.Least ? part.Range.Least : part.Range.Greatest;
                problems.Add(new Diagnostic(Severity.Warning, "", Scenarios.TextPlace.None, $"places.{name}",
                    $"{part.Title} slides from {part.Range.Least.Millimeters:0} to {part.Range.Greatest.Millimeters:0} mm "
                        + $"now; {forward.Millimeters:0} mm is beyond that, so it is taken at {end.Millimeters:0} mm."));
            }
        }
        return MovedPlaces.Moved(scenario, build, rig, moved);
    }

    /// <summary>The places of a build after things came and went: those of what is gone, and of what sat on it, are
    /// forgotten.</summary>
    /// <param name="old">The places before.</param>
    /// <param name="wasThere">What was on the rig before.</param>
    /// <param name="names">What of that is still there, each with its name now.</param>
    public static OrderedMap<PlaceInUse> Kept(
        OrderedMap<PlaceInUse> old, IReadOnlySet<string> wasThere, IReadOnlyDictionary<string, string> names)
    {
        bool IsGone(string? name) => name is not null && wasThere.Contains(name) && !names.ContainsKey(name);
        string Now(string name) => names.GetValueOrDefault(name, name);
        if (!old.Any(place => IsGone(place.Key) || IsGone(place.Value.On) || Now(place.Key) != place.Key
            || (place.Value.On is { } on && Now(on) != on)))
            return old;
        return new(old.Where(place => !IsGone(place.Key) && !IsGone(place.Value.On))
            .Select(place => KeyValuePair.Create(Now(place.Key),
                place.Value.On is { } on ? place.Value with { On = Now(on) } : place.Value)));
    }

    private static BuildInPlace? Rig(Scenario scenario, string build)
    {
        try
        {
            return scenario.Builds.TryGetValue(build, out var chosen) ? ScenarioBalance.InPlace(chosen, build, scenario) : null;
        }
        catch (ScenarioProblemsException)
        {
            // What is wrong with the places is told by the check of the scenario.
            return null;
        }
    }
}
