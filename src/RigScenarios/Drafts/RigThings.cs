using RigScenarios.Parts;

namespace RigScenarios.Drafts;

/// <summary>One thing of the rig as the form shows it.</summary>
/// <param name="Name">Its name in the kit.</param>
/// <param name="Question">The key of the question that it answers.</param>
/// <param name="Part">The id of its part.</param>
/// <param name="Group">The group of the build in which it stands.</param>
internal sealed record RigThing(string Name, string Question, string Part, ThingGroup Group);

/// <summary>Where a thing stands in a build.</summary>
internal enum ThingGroup
{
    Device,
    Battery,
    Plate,
    Regulator,
    Splitter,
    Carried,
}

/// <summary>The things of a build, each with the question that it answers.</summary>
internal static class RigThings
{
    /// <summary>All things of a given rig that are in its kit, in the order of the questions.</summary>
    public static IReadOnlyList<RigThing> Of(GivenRig given)
    {
        var build = given.Build;
        var things = new List<RigThing>();
        void Add(string name, ThingGroup group)
        {
            if (name.Length > 0 && given.Scenario.Kit.TryGetValue(name, out var item)
                && !things.Exists(thing => thing.Name == name))
                things.Add(new RigThing(name, QuestionOf(given, group, item.Part), item.Part, group));
        }

        foreach (var name in build.Devices.Keys)
            Add(name, ThingGroup.Device);
        Add(build.Battery.Item, ThingGroup.Battery);
        if (build.Plate is { } plate)
            Add(plate, ThingGroup.Plate);
        foreach (var name in build.Regulators.Keys)
            Add(name, ThingGroup.Regulator);
        foreach (var name in build.Splitters.Keys)
            Add(name, ThingGroup.Splitter);
        foreach (var name in build.Carries)
            Add(name, ThingGroup.Carried);
        return [.. things.OrderBy(thing => RigQuestions.IndexOf(thing.Question))];
    }

    /// <summary>The thing of that name; null where it isn't on the rig.</summary>
    public static RigThing? Find(GivenRig given, string name) => Of(given).FirstOrDefault(thing => thing.Name == name);

    /// <summary>The name of the camera; null while there is none.</summary>
    public static string? Camera(GivenRig given) =>
        Of(given).FirstOrDefault(thing => thing.Question == RigQuestions.Camera)?.Name;

    /// <summary>Where something that answers a question stands in a build.</summary>
    public static ThingGroup GroupOf(string question, Part part) => question switch
    {
        "battery" => ThingGroup.Battery,
        "plate" => ThingGroup.Plate,
        "regulator" => ThingGroup.Regulator,
        "head" or "legs" => ThingGroup.Carried,
        "lens" or "other" => part switch
        {
            // A motor controller passes power on only where the build says so; else it is a device like any other.
            { Power: not null } => ThingGroup.Device,
            { Splitter: not null } => ThingGroup.Splitter,
            _ => ThingGroup.Carried,
        },
        _ => ThingGroup.Device,
    };

    private static string QuestionOf(GivenRig given, ThingGroup group, string id)
    {
        var kind = given.FindPart(id)?.Kind;
        return group switch
        {
            ThingGroup.Battery => "battery",
            ThingGroup.Plate => "plate",
            ThingGroup.Regulator => "regulator",
            ThingGroup.Splitter => "other",
            ThingGroup.Carried => kind is PartKind.Lens or PartKind.LensAdapter or PartKind.Head or PartKind.Tripod
                ? RigQuestions.For(kind.Value).Key : "other",
            _ => kind is PartKind.Support && OwnPart.IsOwn(given.Scenario, id) ? RigQuestions.Device
                : kind is PartKind.Body or PartKind.Monitor or PartKind.Transmitter or PartKind.Motor
                    or PartKind.MotorController ? RigQuestions.For(kind.Value).Key : "other",
        };
    }
}
