using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>Rigs and parts that the tests of this folder share.</summary>
internal static class Drafting
{
    /// <summary>The parts that come with the program.</summary>
    public static OrderedMap<Part> Library { get; } = new(Repository.PartsFiles.SelectMany(PartsFile.Read));

    public static IReadOnlyList<Scenario> Scenarios { get; } = [.. Repository.ScenarioFiles.Select(ScenarioFile.Read)];

    /// <summary>Every build with every day of the demo scenarios.</summary>
    public static IReadOnlyList<(Scenario Scenario, string Build, string Day)> Pairs { get; } =
        [.. Scenarios.SelectMany(scenario => scenario.Builds.Keys
            .SelectMany(build => scenario.Days.Keys.Select(day => (scenario, build, day))))];

    public static GivenRig Blank { get; } = GivenRig.Blank(Library);

    public static GivenRig Small { get; } = Blank.And("camera", "compact-body-b").And("battery", "brick-190wh")
        .And("plate", "plate-guarded").And("monitor", "monitor-5in");

    /// <summary>What is given of a build and a day of a file.</summary>
    public static GivenRig Open(Scenario scenario, string build = "rig", string day = "day") =>
        GivenRig.Of(scenario, new RigFrame(scenario, Library, build, day));

    public static RigSoFar Answer(GivenRig given) => RigSoFar.Of(given, null, TestContext.Current.CancellationToken);

    /// <summary>The whole scenario.</summary>
    public static Scenario Whole(this GivenRig given) => RigSoFar.WholeOf(given);

    /// <summary>With one more listed part.</summary>
    public static GivenRig And(this GivenRig given, string question, string part) => Adding.Listed(given, question, part).Given;

    /// <summary>With one more thing of own figures; each figure is a path inside the part and its text.</summary>
    public static GivenRig AndOwn(this GivenRig given, string question, params (string Path, string Text)[] figures)
    {
        var added = Adding.Own(given, question);
        return figures.Aggregate(added.Given, (now, figure) => now.With($"parts.own-{added.Thing}.{figure.Path}", figure.Text));
    }

    public static GivenRig Choose(this GivenRig given, string thing, string part) => Choosing.Listed(given, thing, part).Given;

    public static GivenRig Without(this GivenRig given, string thing) => TakingAway.From(given, thing).Given;

    public static GivenRig Feed(this GivenRig given, string thing, string from) => Feeding.By(given, thing, from).Given;

    public static GivenRig Outlet(this GivenRig given, string thing, string outlet) =>
        Feeding.Outlet(given, thing, outlet).Given;

    public static GivenRig Cable(this GivenRig given, string thing, string cable) => Cabling.With(given, thing, cable).Given;

    public static GivenRig Cable(this GivenRig given, string thing, string length, string gauge) =>
        Cabling.Own(given, thing, length, gauge).Given;

    public static GivenRig Batteries(this GivenRig given, int? count) => Supplying.Batteries(given, count).Given;

    public static GivenRig Charger(this GivenRig given, string? bays) => Supplying.Charger(given, bays).Given;

    public static GivenRig Move(this GivenRig given, string thing, double millimetres) =>
        Moving.To(given, thing, FormattableString.Invariant($"{millimetres} mm")).Given;

    /// <summary>With a field of the form set, by its key.</summary>
    public static GivenRig Set(this GivenRig given, string key, string? text) =>
        given.With(RigFields.Of(key).PathIn(given.Frame), text);
}
