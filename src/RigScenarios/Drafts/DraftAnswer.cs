using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>What can be said of a draft so far, however incomplete it is.</summary>
public sealed record DraftAnswer
{
    private static readonly Temperature RoomTemperature = Temperature.FromDegreesCelsius(20);

    /// <summary>The scenario to save; null while something is missing or does not add up.</summary>
    public Scenario? Scenario { get; init; }

    /// <summary>
    /// The one answer to what is complete so far, for a day of recording without a stop while there is none
    /// (<see cref="IsForDay"/>), and at 20 °C while the air is not
    /// known; null while there is no battery, or nothing that draws from it.
    /// </summary>
    public RigAnswer? Answer { get; init; }

    /// <summary>Whether the day of <see cref="Answer"/> is the draft's own.</summary>
    public bool IsForDay { get; init; }

    /// <summary>What can be moved along its mount, as it sits before the draft moves it; names are those of the
    /// scenario.</summary>
    public IReadOnlyList<MoveablePart> Moveable { get; init; } = [];

    /// <summary>The thing to move so that the battery sits further back: itself or what carries it; null where it can't be
    /// moved.</summary>
    public string? BatterySlide { get; init; }

    /// <summary>The keys of the questions that a full answer still needs.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>What does not add up, by the paths of the draft.</summary>
    public IReadOnlyList<Diagnostic> Problems { get; init; } = [];

    /// <summary>What feeds what, and why.</summary>
    public IReadOnlyList<WiringLine> Wiring { get; init; } = [];

    /// <summary>The power cables that can be chosen: values of "cable" with names for people.</summary>
    public IReadOnlyList<WiringChoice> Cables { get; init; } = [];

    /// <summary>Every figure that was assumed: of the things on the rig first, then of the battery's model.</summary>
    public IReadOnlyList<AssumedValue> Assumed { get; init; } = [];

    /// <summary>The answer so far, in plain words.</summary>
    public string Sentence { get; init; } = "";

    /// <summary>What to mind.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Mass and price of the things so far.</summary>
    public required RigTotals Totals { get; init; }

    /// <summary>The answer to a draft.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="before">The scenario that it will change; null for a new one.</param>
    /// <param name="library">The parts to choose from.</param>
    /// <param name="build">The build's short name in the scenario.</param>
    /// <param name="day">The day's short name in the scenario.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static DraftAnswer Of(RigDraft draft, Scenario? before, OrderedMap<Part> library, string build, string day,
        CancellationToken cancellation) =>
        Of(draft, before, library, build, day, run: true, known: null, cancellation);

    /// <summary>The answer to a draft whose day is known already, as while parts are moved: places have no part in the day, which
    /// is not run again.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="before">The scenario that it will change; null for a new one.</param>
    /// <param name="library">The parts to choose from.</param>
    /// <param name="build">The build's short name in the scenario.</param>
    /// <param name="day">The day's short name in the scenario.</param>
    /// <param name="known">The answer to a draft that differs in places only; null to run the day.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static DraftAnswer Of(RigDraft draft, Scenario? before, OrderedMap<Part> library, string build, string day,
        RigAnswer? known, CancellationToken cancellation) =>
        Of(draft, before, library, build, day, run: true, known, cancellation);

    internal static DraftAnswer Of(RigDraft draft, Scenario? before, OrderedMap<Part> library, string build, string day, bool run,
        RigAnswer? known, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(library);
        var rig = DraftRig.Of(draft, before, library, build);
        foreach (var (field, name) in (ReadOnlySpan<(string, string)>)[("build", build), ("day", day)])
        {
            if (!MapFormat<Build>.IsName(name))
                rig.Log.Error(field, $"\"{name}\" can't be the short name of a {field}.",
                    "lower-case letters, digits and hyphens, at most 60, such as \"rig\"");
        }
        var wiring = ProposedWiring.Of(rig);
        foreach (var line in wiring.Lines.Where(line => line.FedBy.Length == 0))
            rig.Log.Error($"things.{line.Thing}.fed-by", line.Why,
                line.Choices.Count == 0 ? null : string.Join(", ", line.Choices.Select(choice => choice.Value)));
        var missing = MissingIn(draft, rig).ToList();
        var problems = rig.Log.Problems.ToList();
        var answer = new DraftAnswer
        {
            Missing = missing,
            Problems = problems,
            Wiring = wiring.Lines,
            Cables = [.. rig.Cables.Choices.Select(choice => new WiringChoice(choice.Value,
                $"{choice.Part.Name} ({DraftCables.InWords(choice.Part.Cable!)})"))],
            Assumed = [.. rig.Things.SelectMany(thing => PartAssumptions.Of(thing.PartId, thing.Part, _ => true))
                .DistinctBy(value => value.Field)],
            Totals = RigTotals.Of(rig),
        };
        if (rig.Battery is not { } battery || !rig.Devices.Any(device => wiring.Feeds.ContainsKey(device.Name)))
            return answer with { Sentence = DraftWords.NothingYet(missing, problems) };

        var (scenario, renamed) = DraftScenario.Of(rig, wiring, build, day);
        answer =
            answer with { Wiring =
            [.. wiring.Lines.Select(line => line with { Element = renamed.GetValueOrDefault(line.Thing, line.Thing) })] };
        answer = answer with { Moveable = DraftPlaces.Moveable(scenario, build),
            BatterySlide = DraftPlaces.BatterySlide(scenario, build) };
        scenario = DraftPlaces.Apply(scenario, build, draft, renamed, problems);
        var whole = scenario;
        var (noBlocks, noAir) = (draft.Blocks.Count == 0, draft.Ambient is null && scenario.Conditions.Ambient is null);
        if (noBlocks || noAir)
            scenario = Stopgap(scenario, day, noBlocks, noAir);
        var log = new ReadLog("");
        PartCheck.Run(scenario.Parts, "parts", log);
        ScenarioCheck.Run(scenario, log);
        var told = log.Problems.Select(problem => DraftProblem.Of(problem, DraftPath.Of(problem.Path, rig, renamed, build, day)))
            .ToList();
        problems.AddRange(told);
        var complete = missing.Count == 0 && problems.TrueForAll(problem => problem.Severity == Severity.Warning);
        answer = answer with { Problems = problems, Scenario = complete ? whole : null };
        if (log.HasErrors)
            return answer with { Sentence = DraftWords.WrongSoFar(told) };
        if (!run)
            return answer;

        RigAnswer now;
        try
        {
            now = known?.Moved(scenario) ?? RigAnswer.Of(scenario, build, [day], null, null, cancellation);
        }
        catch (ScenarioProblemsException wrong)
        {
            // A voltage that only the wiring as a whole makes too high: nothing is run then.
            var found = wrong.Problems.Select(problem =>
                DraftProblem.Of(problem, DraftPath.Of(problem.Path, rig, renamed, build, day))).ToList();
            return answer with { Problems = [.. problems, .. found], Scenario = null, Sentence = DraftWords.WrongSoFar(found) };
        }
        return answer with
        {
            Answer = now,
            IsForDay = !noBlocks,
            Assumed = [.. answer.Assumed.Concat(now.Assumed).DistinctBy(value => (value.Field, value.Value))],
            Sentence = DraftWords.Answer(now, LeftOut(rig, wiring), noBlocks, noAir),
            Cautions = [.. DraftWords.Cautions(rig), .. AnswerCautions.Of(now)],
        };
    }

    /// <summary>A missing answer as a problem of the draft.</summary>
    internal static Diagnostic StillMissing(string key)
    {
        var question = RigQuestions.All.First(question => question.Key == key);
        return new Diagnostic(Severity.Error, "", TextPlace.None, question.Role is null ? key : "things",
            $"{question.Label}: still to be answered.");
    }

    private static IEnumerable<string> MissingIn(RigDraft draft, DraftRig rig)
    {
        if (!rig.Things.Any(thing => thing.Thing.Role == RigRole.Camera) && (rig.BuildBefore is null || !rig.Devices.Any()))
            yield return "camera";
        if (rig.Battery is null)
            yield return "battery";
        if (draft.Blocks.Count == 0)
            yield return "blocks";
        if (draft.Ambient is null && rig.Before?.Conditions.Ambient is null)
            yield return "ambient";
    }

    /// <summary>The things, by their names for people, that are not in the answer yet.</summary>
    private static List<string> LeftOut(DraftRig rig, ProposedWiring wiring) =>
    [
        .. from item in rig.Draft.Things
           let thing = rig.Find(item.Key)
           where thing is null || (thing.IsDevice && !wiring.Feeds.ContainsKey(item.Key))
           select thing?.Part.Name ?? (item.Value.Own is { Name.Length: > 0 } own ? own.Name : item.Key),
    ];

    /// <summary>The day as it is looked at until somebody describes it: recording without a stop, at room temperature.</summary>
    private static Scenario Stopgap(Scenario scenario, string dayName, bool noBlocks, bool noAir)
    {
        var day = scenario.Days[dayName];
        if (noBlocks)
            day = day with { Blocks = OrderedMap<DayBlock>.Empty.With("record",
                new DayBlock { Title = "Recording without a stop", Length = Duration.FromHours(8),
                Others = PowerState.Record }) };
        return scenario with { Days = scenario.Days.With(dayName, noAir ? day with { Ambient = RoomTemperature } : day) };
    }
}
