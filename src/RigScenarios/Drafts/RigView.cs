namespace RigScenarios.Drafts;

/// <summary>One thing of a rig as a form lists it.</summary>
/// <param name="Name">Its name in the kit.</param>
/// <param name="Question">The key of the question that it answers.</param>
/// <param name="Part">The id of a listed part; null where it is one of own figures.</param>
/// <param name="Own">The id of the part of own figures; null where it is listed.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Figures">Its part in a few words.</param>
/// <param name="Count">The path of how many there are; null where there is one.</param>
public sealed record ThingInView(string Name, string Question, string? Part, string? Own, string Title, string Figures,
    string? Count);

/// <summary>A rig as a form lists it.</summary>
/// <param name="Things">Its things, in the order of the questions.</param>
/// <param name="Camera">The camera's name in the kit; null while there is none.</param>
/// <param name="Battery">The battery's.</param>
/// <param name="Charger">The charger's name; null while there is none.</param>
public sealed record RigView(IReadOnlyList<ThingInView> Things, string? Camera, string? Battery, string? Charger)
{
    /// <summary>The view of what is given.</summary>
    public static RigView Of(GivenRig given)
    {
        ArgumentNullException.ThrowIfNull(given);
        var things = RigThings.Of(given).Select(thing =>
        {
            var isOwn = OwnPart.IsOwn(given.Scenario, thing.Part);
            var part = given.FindPart(thing.Part);
            return new ThingInView(thing.Name, thing.Question, isOwn ? null : thing.Part, isOwn ? thing.Part : null,
                part?.Name ?? thing.Part, part is null || isOwn ? "" : PartInWords.Of(part).ToString(),
                thing.Group == ThingGroup.Device ? given.Frame.InBuild($"devices.{thing.Name}.count") : null);
        }).ToList();
        return new RigView(things, RigThings.Camera(given),
            things.Find(thing => thing.Question == "battery")?.Name, given.Scenario.Chargers.Keys.FirstOrDefault());
    }
}
