using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>
/// What somebody gave of a rig: an incomplete scenario, as the tree of its file with only the given figures in it. Text stands
/// in it as it was written, readable or not.
/// </summary>
public sealed class GivenRig
{
    private readonly HashSet<string> wrong;

    private GivenRig(MapNode tree, RigFrame frame, Scenario scenario, IReadOnlyList<Diagnostic> problems)
    {
        (Tree, Frame, Scenario, Problems) = (tree, frame, scenario, problems);
        wrong = [.. problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Path)];
    }

    /// <summary>The tree.</summary>
    public MapNode Tree { get; }

    /// <summary>What stands around it.</summary>
    public RigFrame Frame { get; }

    /// <summary>What of it could be read; whatever is missing or wrong is at its default there.</summary>
    public Scenario Scenario { get; }

    /// <summary>What is wrong or missing, as for a file.</summary>
    public IReadOnlyList<Diagnostic> Problems { get; }

    /// <summary>The build as far as it is given.</summary>
    public Build Build => Scenario.Builds.TryGetValue(Frame.Build, out var build) ? build : new Build();

    /// <summary>The day as far as it is given.</summary>
    public ShootingDay Day => Scenario.Days.TryGetValue(Frame.Day, out var day) ? day : new ShootingDay();

    /// <summary>Reads a tree.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="frame">What stands around it.</param>
    public static GivenRig Read(MapNode tree, RigFrame frame)
    {
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(frame);
        var log = new ReadLog("");
        ScenarioFormat.Whole.TryRead(tree, "", log, out var scenario);
        return new GivenRig(tree, frame,
            (scenario ?? new Scenario()) with { Library = frame.Before?.Library ?? OrderedMap<Part>.Empty }, log.Problems);
    }

    /// <summary>A new rig: nothing on it yet, a full battery, the first of the typical days.</summary>
    /// <param name="library">The parts to choose from.</param>
    /// <param name="today">The day on which it is asked (<see cref="RigFrame.Today"/>).</param>
    public static GivenRig Blank(OrderedMap<Part> library, DateOnly? today = null)
    {
        var frame = RigFrame.New(library) with { Today = today };
        var tree = new MapNode([], TextPlace.None);
        foreach (var (path, text) in (ReadOnlySpan<(string, string)>)[("title", "My rig"), (frame.InBuild("stance"), "tripod"),
            (frame.InBuild("battery.charge"), "100 %")])
            tree = GivenTree.With(tree, path, text);
        foreach (var path in (string[])["kit", frame.InBuild("devices")])
            tree = GivenTree.With(tree, path, new MapNode([], TextPlace.None));
        return Read(tree, frame).With(TypicalDays.All[0]);
    }

    /// <summary>What is given of a build and a day of a scenario: all of it without what is marked as assumed or
    /// proposed.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="frame">What stands around it.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such build or day.</exception>
    public static GivenRig Of(Scenario scenario, RigFrame frame)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(frame);
        _ = Chosen.From(scenario.Builds, frame.Build, "build", "builds");
        _ = Chosen.From(scenario.Days, frame.Day, "day", "days");
        return Read(Opening.Of(scenario, frame), frame);
    }

    /// <summary>The rig with a typical day in place of its own.</summary>
    public GivenRig With(TypicalDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        var camera = RigThings.Camera(this) ?? RigQuestions.Camera;
        return With(Scenario with { Days = Scenario.Days.With(Frame.Day, day.On(Day, camera)) });
    }

    /// <summary>The same, changed from one scenario to another.</summary>
    /// <param name="after">What <see cref="Scenario"/> is to be.</param>
    public GivenRig With(Scenario after) => Read((MapNode)GivenTree.Changed(Tree, ScenarioFormat.Whole.Write(Scenario),
        ScenarioFormat.Whole.Write(after)), Frame);

    /// <summary>The same with a text at a path; null or nothing clears it.</summary>
    public GivenRig With(string path, string? text) => Read(string.IsNullOrWhiteSpace(text)
        ? GivenTree.Without(Tree, path) : GivenTree.With(Tree, path, text.Trim()), Frame);

    /// <summary>
    /// The same rig without any other file, so that it can go anywhere: the parts that its file takes from parts files stand in
    /// it, but for those of the kit that the library lists the same way: they are added again when it is completed. What the form
    /// doesn't show of the file is in it; its remarks are not.
    /// </summary>
    public GivenRig Alone()
    {
        var alone = With(Scenario.SelfContained()).Tree;
        foreach (var (id, part) in Scenario.Library.Where(part => Scenario.Kit.Values.Any(item => item.Part == part.Key)))
        {
            if (!Scenario.Parts.ContainsKey(id) && Frame.Library.TryGetValue(id, out var listed)
                && TreeDifference.Same(PartFormat.Whole.Write(part), PartFormat.Whole.Write(listed)))
                alone = GivenTree.Without(alone, $"parts.{id}");
        }
        return Read(alone, Frame with { Before = null });
    }

    /// <summary>The text at a path; null where there is none.</summary>
    public string? TextAt(string path) => GivenTree.Text(Tree, path);

    /// <summary>The tree without where things sit, which has no part in a day.</summary>
    public MapNode WithoutPlaces => GivenTree.Without(GivenTree.Without(Tree, Frame.InBuild("places")),
        Frame.InBuild("on-head.slide-middle"));

    /// <summary>Whether there is a text at a path that can be read.</summary>
    internal bool Has(string path) => GivenTree.Text(Tree, path) is not null && !wrong.Contains(path);

    /// <summary>The part of that id: the scenario's own, or one that it refers to, else the library's.</summary>
    internal Part? FindPart(string id) =>
        Scenario.FindPart(id) ?? (Frame.Library.TryGetValue(id, out var part) ? part : null);

    /// <summary>The part behind a name in the kit; null if there is none.</summary>
    internal Part? PartOf(string kitName) => Scenario.Kit.TryGetValue(kitName, out var item) ? FindPart(item.Part) : null;

    /// <summary>All parts to choose from; those of the scenario go before the library's.</summary>
    internal IEnumerable<KeyValuePair<string, Part>> AllParts =>
        Scenario.Parts.Concat(Scenario.Library).Concat(Frame.Library).DistinctBy(item => item.Key);
}
