using RigScenarios.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts.Edits;

/// <summary>Moves a thing along its mount.</summary>
public static class Moving
{
    /// <summary>The rig with a thing moved; beyond the end of its mount it stands at the end.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">The thing's name in the kit.</param>
    /// <param name="forward">How far forward it sits on what carries it, as people write it: "-160 mm".</param>
    /// <exception cref="ScenarioProblemsException">The thing does not slide, or the distance can't be read.</exception>
    public static EditedRig To(GivenRig given, string thing, string forward)
    {
        ArgumentNullException.ThrowIfNull(given);
        if (!QuantityText.TryRead(forward, Length.Zero, "-160 mm", out var distance, out var problem))
            throw Refused.Because("forward", problem, "a length, such as \"-160 mm\"");
        var (whole, build) = (Completion.Of(given).Counted, given.Frame.Build);
        var rig = RigPlaces.InPlace(whole, build);
        var slides = rig is null ? [] : MovedPlaces.Of(rig).Select(part => part.Name).ToList();
        if (rig is null || !slides.Contains(thing))
            throw Refused.Because("thing", $"\"{thing}\" does not slide on its mount.", slides.Count == 0 ? null
                : string.Join(", ", slides), NearestName.To(thing, slides));
        var places = MovedPlaces.Moved(whole, build, rig, [KeyValuePair.Create(thing, (Length)distance)]).Builds[build].Places;
        return new EditedRig(given.With(given.Scenario with
        {
            Builds = given.Scenario.Builds.With(build, given.Build with { Places = places }),
        }), thing);
    }
}
