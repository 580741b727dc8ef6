using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>Drafts and parts that the tests of this folder share.</summary>
internal static class Drafting
{
    /// <summary>The parts that come with the program.</summary>
    public static OrderedMap<Part> Library { get; } = new(Repository.PartsFiles.SelectMany(PartsFile.Read));

    public static IReadOnlyList<Scenario> Scenarios { get; } = [.. Repository.ScenarioFiles.Select(ScenarioFile.Read)];

    /// <summary>Every build with every day of the demo scenarios.</summary>
    public static IReadOnlyList<(Scenario Scenario, string Build, string Day)> Pairs { get; } =
        [.. Scenarios.SelectMany(scenario => scenario.Builds.Keys
            .SelectMany(build => scenario.Days.Keys.Select(day => (scenario, build, day))))];

    public static RigDraft Small { get; } = RigDraft.Blank with
    {
        Things = OrderedMap<DraftThing>.Empty
            .With("camera", new DraftThing { Role = RigRole.Camera, Part = "compact-body-b", Essential = true })
            .With("battery", new DraftThing { Role = RigRole.Battery, Part = "brick-190wh" })
            .With("plate", new DraftThing { Role = RigRole.Plate, Part = "plate-guarded" })
            .With("monitor", new DraftThing { Role = RigRole.Monitor, Part = "monitor-5in" }),
    };

    public static DraftAnswer Answer(RigDraft draft, Scenario? before = null, string build = "rig", string day = "day") =>
        DraftAnswer.Of(draft, before, Library, build, day, TestContext.Current.CancellationToken);

    public static RigDraft With(this RigDraft draft, string name, DraftThing thing) =>
        draft with { Things = draft.Things.With(name, thing) };

    public static RigDraft Without(this RigDraft draft, string name) => draft with { Things = draft.Things.Without(name) };
}
