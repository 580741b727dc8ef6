using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>A figure or thing that a full answer still needs.</summary>
/// <param name="Path">The path of its field.</param>
/// <param name="Label">What is asked for.</param>
public sealed record MissingField(string Path, string Label);

/// <summary>
/// The whole scenario that is made of what somebody gave: figures of own parts assumed, listed parts copied, the wiring
/// proposed. Everything that was added is marked in it, so that <see cref="Opening"/> finds what was given again.
/// </summary>
internal sealed class Completion
{
    private readonly GivenRig given;
    private readonly RigFrame frame;
    private readonly List<string> marks = [];
    private readonly HashSet<string> filled = new(StringComparer.Ordinal);
    private readonly List<MissingField> missing = [];
    private readonly List<string> leftOut = [];
    private readonly List<Diagnostic> problems = [];

    private Completion(GivenRig given)
    {
        (this.given, frame) = (given, given.Frame);
        Whole = given.Scenario with
        {
            Builds = given.Scenario.Builds.With(frame.Build, given.Build),
            Days = given.Scenario.Days.With(frame.Day, given.Day),
        };
    }

    /// <summary>The scenario with everything that is given, complete or not.</summary>
    public Scenario Whole { get; private set; }

    /// <summary>The scenario with what is complete, for an answer so far.</summary>
    public Scenario Counted { get; private set; } = new();

    /// <summary>What feeds what.</summary>
    public ProposedWiring Wiring { get; private set; } = null!;

    /// <summary>The things, by their names in the kit, that are not in <see cref="Counted"/>.</summary>
    public IReadOnlyList<string> LeftOut => leftOut;

    /// <summary>What is still needed.</summary>
    public IReadOnlyList<MissingField> Missing => missing;

    /// <summary>What is wrong, by the paths of the file.</summary>
    public IReadOnlyList<Diagnostic> Problems => problems;

    /// <summary>Completes what is given.</summary>
    public static Completion Of(GivenRig given)
    {
        var completion = new Completion(given);
        completion.Parts();
        completion.AskForThings();
        completion.Wire();
        completion.Whole = UsualFigures.In(given, completion.Whole, completion.marks, completion.filled);
        completion.Mark();
        completion.Counted = CountedRig.Of(completion.Whole, completion.frame.Build, completion.leftOut);
        completion.Check();
        return completion;
    }

    private Build Build => Whole.Builds[frame.Build];

    private void Parts()
    {
        var parts = new OrderedDictionary<string, Part>(StringComparer.Ordinal);
        foreach (var (id, part) in given.Scenario.Parts)
        {
            var isOwn = id.StartsWith(OwnPart.IdStart, StringComparison.Ordinal);
            parts[id] = isOwn && GivenTree.Find(given.Tree, $"parts.{id}") is { } node ? OwnPart.Complete(node) : part;
            foreach (var field in parts[id].Assumed)
                filled.Add($"parts.{id}.{field}");
        }
        foreach (var id in given.Scenario.Kit.Values.Select(item => item.Part).Where(id => given.Scenario.FindPart(id) is null))
        {
            if (frame.Library.TryGetValue(id, out var listed))
                parts.TryAdd(id, listed);
        }
        Whole = Whole with { Parts = InOrder(parts, frame.Before?.Parts) };
    }

    /// <summary>Those that stood there before keep their order; new ones come after them.</summary>
    private static OrderedMap<Part> InOrder(IReadOnlyCollection<KeyValuePair<string, Part>> parts, OrderedMap<Part>? before) =>
        before is null ? new(parts) : new(before.Keys.Where(id => parts.Any(part => part.Key == id))
            .Select(id => parts.First(part => part.Key == id)).Concat(parts.Where(part => !before.ContainsKey(part.Key))));

    private void AskForThings()
    {
        foreach (var thing in RigThings.Of(given))
        {
            var part = Whole.FindPart(thing.Part);
            var needed = part is null || !OwnPart.IsOwn(Whole, thing.Part) ? [] : LabelQuestions.Of(thing.Question)
                .Where(figure => figure.Needed.Contains(thing.Question))
                .Select(figure => new MissingField($"parts.{thing.Part}.{figure.Path}", $"{part.Name}: {figure.Label}"))
                .Where(field => !filled.Contains(field.Path) && !given.Has(field.Path)).ToList();
            missing.AddRange(needed.Where(field => !missing.Contains(field)));
            if (part is null || needed.Count > 0 || !Fits(thing, part))
                leftOut.Add(thing.Name);
        }
    }

    private bool Fits(RigThing thing, Part part) => thing.Group switch
    {
        ThingGroup.Battery => part.Battery is not null,
        ThingGroup.Plate => part.Plate is not null,
        ThingGroup.Regulator => part.Regulator is not null,
        ThingGroup.Splitter => part.Splitter is not null,
        ThingGroup.Device => part.Power is not null || Build.Devices[thing.Name].Power is not null,
        _ => true,
    };

    private void Wire()
    {
        Wiring = ProposedWiring.Of(given, CountedRig.Of(Whole, frame.Build, leftOut));
        Whole = Whole with
        {
            Parts = new(Whole.Parts.Concat(Wiring.Scenario.Parts.Where(part => !Whole.Parts.ContainsKey(part.Key)))),
            Kit = new(Whole.Kit.Concat(Wiring.Scenario.Kit.Where(item => !Whole.Kit.ContainsKey(item.Key)))),
        };
        foreach (var name in Wiring.Added)
        {
            marks.Add($"regulators.{name}");
            if (!given.Scenario.Kit.ContainsKey(name))
                marks.Add($"kit.{name}");
            Change(Build with { Regulators = Build.Regulators.With(name, new RegulatorInUse()) });
        }
        foreach (var (name, device) in Build.Devices.Where(device => FeedOf("devices", device.Key, device.Value.FedBy)))
            Change(Build with { Devices = Build.Devices.With(name, device with { FedBy = Feed("devices", name) }) });
        foreach (var (name, splitter) in Build.Splitters.Where(item => FeedOf("splitters", item.Key, item.Value.FedBy)))
            Change(Build with { Splitters = Build.Splitters.With(name, splitter with { FedBy = Feed("splitters", name) }) });
        foreach (var (name, regulator) in Build.Regulators.Where(item => FeedOf("regulators", item.Key, item.Value.FedBy)))
            Change(Build with { Regulators = Build.Regulators.With(name, regulator with { FedBy = Feed("regulators", name) }) });
        // What can't be fed yet is left open, which is not what an open feed of a file means.
        foreach (var (name, _, _, _) in LinkLookup.Fed(given.Build).Where(item => item.FedBy is null
            && !Wiring.Feeds.ContainsKey(item.Name)))
        {
            var group = Build.Devices.ContainsKey(name) ? "devices" : Build.Splitters.ContainsKey(name) ? "splitters"
                : "regulators";
            if (!WasOpen(group, name))
                marks.Add($"{group}.{name}.fed-by");
        }
        foreach (var line in Wiring.Lines.Where(line => line.FedBy.Length == 0))
        {
            leftOut.Add(line.Thing);
            problems.Add(new Diagnostic(Severity.Error, "", TextPlace.None, frame.InBuild($"devices.{line.Thing}.fed-by"),
                line.Why, line.Choices.Count == 0 ? null : string.Join(", ", line.Choices.Select(choice => choice.Value))));
        }
    }

    private void Change(Build build) => Whole = Whole with { Builds = Whole.Builds.With(frame.Build, build) };

    /// <summary>Whether a feed is to be written: it is proposed, or a file that left it open means the standard one.</summary>
    private bool FeedOf(string group, string name, string? feed) =>
        Wiring.Feeds.TryGetValue(name, out var proposed) && (feed is null || (feed == proposed && WasOpen(group, name)
            && feed == Build.StandardFeed));

    private string? Feed(string group, string name)
    {
        var feed = Wiring.Feeds[name];
        if (feed == Build.StandardFeed && WasOpen(group, name))
            return null;
        // All of a proposed regulator is marked.
        if (!marks.Contains($"{group}.{name}"))
            marks.Add($"{group}.{name}.fed-by");
        return feed;
    }

    private bool WasOpen(string group, string name) =>
        frame.Before is { } before && before.Builds.TryGetValue(frame.Build, out var build) && group switch
        {
            "devices" => build.Devices.TryGetValue(name, out var device) && device.FedBy is null,
            "splitters" => build.Splitters.TryGetValue(name, out var splitter) && splitter.FedBy is null,
            _ => build.Regulators.TryGetValue(name, out var regulator) && regulator.FedBy is null,
        };

    private void Mark()
    {
        var kept = given.Build.Assumed.Where(mark => mark == BuildAssumptions.Batteries).ToList();
        List<string> all = [.. kept, .. marks];
        if (!all.SequenceEqual(Build.Assumed))
            Change(Build with { Assumed = all });
    }

    /// <summary>What the check of a file says of it. What only follows from something that is missing is not told too.</summary>
    private void Check()
    {
        var log = new ReadLog("");
        PartCheck.Run(Whole.Parts, "parts", log);
        // A slip in a part's name is told with the nearest one of all that can be chosen.
        ScenarioCheck.Run(Whole with { Library = new(Whole.Library.Concat(frame.Library
            .Where(part => !Whole.Library.ContainsKey(part.Key)))) }, log);
        if (RigThings.Camera(given) is null && (frame.Before is null || given.Build.Devices.Count == 0))
            missing.Insert(0, new MissingField(frame.InBuild("devices"), RigQuestions.All[0].Label));
        // Where a text can't be read, that is what is told.
        var told = given.Problems.Concat(log.Problems.Where(problem => !given.Problems.Any(other =>
            other.Problem != RecordFormat<Scenario>.Missing && (other.Path == problem.Path
                || other.Path.StartsWith(problem.Path + ".", StringComparison.Ordinal))))).ToList();
        missing.AddRange(from problem in told
                         let label = Required(problem.Path)
                         orderby problem.Path descending
                         where label is not null
                             && GivenTree.Find(given.Tree, problem.Path) is null or MapNode { Entries.Count: 0 }
                         select new MissingField(problem.Path, label));
        var order = missing.DistinctBy(field => field.Path).ToList();
        missing.Clear();
        missing.AddRange(order);
        problems.AddRange(told.Where(problem => !(problem.Problem == RecordFormat<Scenario>.Missing
            && filled.Contains(problem.Path)) && !Follows(problem)));
    }

    /// <summary>The label of the question at a path without which there is no full answer.</summary>
    private string? Required(string path) =>
        path == frame.InBuild("battery.item") || path == frame.InBuild("battery") ? given.Build.Battery.Item.Length > 0 ? null
            : RigQuestions.All[1].Label
        : RigFields.All.FirstOrDefault(field => field.Required && field.PathIn(frame) == path)?.Label;

    private bool Follows(Diagnostic problem)
    {
        var path = problem.Path;
        bool IsIn(string outer) => path == outer || path.StartsWith(outer + ".", StringComparison.Ordinal);
        if (missing.Exists(field => IsIn(field.Path) || field.Path.StartsWith(path + ".", StringComparison.Ordinal)))
            return true;
        // The state of a thing that is no device yet, as of the camera in a typical day.
        if (path.StartsWith(frame.InDay("blocks."), StringComparison.Ordinal)
            && path.Contains(".states.", StringComparison.Ordinal)
            && path[(path.LastIndexOf('.') + 1)..] is var state && (!Whole.Kit.ContainsKey(state) || leftOut.Contains(state)))
            return true;
        return RigThings.Of(given).Any(thing => leftOut.Contains(thing.Name) && OwnPart.IsOwn(Whole, thing.Part)
            && (IsIn(frame.InBuild($"devices.{thing.Name}")) || IsIn(frame.InBuild($"regulators.{thing.Name}"))
                || (thing.Group == ThingGroup.Battery && IsIn(frame.InBuild("battery.item")))
                || (thing.Group == ThingGroup.Plate && IsIn(frame.InBuild("plate")))
                || path.StartsWith($"parts.{thing.Part}.", StringComparison.Ordinal) && !given.Problems.Contains(problem)));
    }
}
