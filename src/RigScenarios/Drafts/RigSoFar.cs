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

/// <summary>What can be said of a rig so far, however incomplete what is given of it is.</summary>
public sealed record RigSoFar
{
    private static readonly Temperature RoomTemperature = Temperature.FromDegreesCelsius(20);

    /// <summary>The scenario to save; null while something is missing or does not add up.</summary>
    public Scenario? Scenario { get; init; }

    /// <summary>
    /// The one answer to what is complete so far, for a day of recording without a stop while there is none
    /// (<see cref="IsForDay"/>), and at 20 °C while the air is not known; null while there is no battery, or nothing that draws
    /// from it.
    /// </summary>
    public RigAnswer? Answer { get; init; }

    /// <summary>Whether the day of <see cref="Answer"/> is the rig's own.</summary>
    public bool IsForDay { get; init; }

    /// <summary>What can be moved along its mount, as it sits now; names are those of the kit.</summary>
    public IReadOnlyList<MoveablePart> Moveable { get; init; } = [];

    /// <summary>The thing to move so that the battery sits further back: itself or what carries it; null where it can't be
    /// moved.</summary>
    public string? BatterySlide { get; init; }

    /// <summary>What a full answer still needs, by the paths of the file.</summary>
    public IReadOnlyList<MissingField> Missing { get; init; } = [];

    /// <summary>What does not add up, by the paths of the file.</summary>
    public IReadOnlyList<Diagnostic> Problems { get; init; } = [];

    /// <summary>What feeds what, and why.</summary>
    public IReadOnlyList<WiringLine> Wiring { get; init; } = [];

    /// <summary>The power cables that can be chosen: names in the kit or ids of listed parts, with names for people.</summary>
    public IReadOnlyList<WiringChoice> Cables { get; init; } = [];

    /// <summary>Every figure that was assumed: of the things on the rig first, then of the battery's model.</summary>
    public IReadOnlyList<AssumedValue> Assumed { get; init; } = [];

    /// <summary>The answer so far, in plain words.</summary>
    public string Sentence { get; init; } = "";

    /// <summary>What to mind.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Mass and price of the things so far.</summary>
    public required RigTotals Totals { get; init; }

    /// <summary>What can be said of what is given.</summary>
    /// <param name="given">What is given.</param>
    /// <param name="known">The answer to a rig that differs in places only, whose day is not run again; null to run the
    /// day.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static RigSoFar Of(GivenRig given, RigAnswer? known = null, CancellationToken cancellation = default) =>
        Of(given, run: true, known, cancellation);

    /// <summary>The whole scenario that is made of what is given.</summary>
    /// <param name="given">What is given.</param>
    /// <exception cref="ScenarioProblemsException">It is incomplete or does not add up; the paths are those of the
    /// file.</exception>
    public static Scenario WholeOf(GivenRig given)
    {
        var now = Of(given, run: false, null, CancellationToken.None);
        return now.Scenario ?? throw new ScenarioProblemsException(
            [.. now.Problems.Where(problem => problem.Severity == Severity.Error),
            .. now.Missing.Select(field => new Diagnostic(Severity.Error, "", TextPlace.None, field.Path,
                $"{field.Label}: still to be answered."))]);
    }

    /// <summary>What a full answer still needs, by the paths of the file.</summary>
    public static IReadOnlyList<MissingField> MissingOf(GivenRig given) => Completion.Of(given).Missing;

    private static RigSoFar Of(GivenRig given, bool run, RigAnswer? known, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(given);
        var frame = given.Frame;
        var whole = Completion.Of(given);
        var build = whole.Counted.Builds[frame.Build];
        var now = new RigSoFar
        {
            Missing = whole.Missing,
            Problems = [.. whole.Problems.Select(RigProblem.Of)],
            Wiring = whole.Wiring.Lines,
            Cables = RigCables.Choices(given),
            Assumed = [.. build.Things.Distinct().Where(name => whole.Counted.Kit.ContainsKey(name))
                .Select(name => whole.Counted.Kit[name].Part).Distinct()
                .SelectMany(id => PartAssumptions.Of(id, whole.Counted.FindPart(id)!, _ => true))],
            Totals = RigTotals.Of(whole.Counted, frame.Build),
        };
        if (build.Battery.Item.Length == 0 || build.Devices.Count == 0)
            return now with { Sentence = RigWords.NothingYet(whole.Missing, whole.Problems, frame) };

        var scenario = whole.Counted;
        var (noBlocks, noAir) = (scenario.Days[frame.Day].Blocks.Count == 0,
            scenario.Days[frame.Day] is { Ambient: null, AmbientPoints.Count: 0 } && scenario.Conditions.Ambient is null);
        if (noBlocks || noAir)
            scenario = Stopgap(scenario, frame.Day, noBlocks, noAir);
        var isWhole = whole.Missing.Count == 0 && whole.Problems.All(problem => problem.Severity == Severity.Warning);
        now = now with
        {
            Moveable = RigPlaces.Moveable(scenario, frame.Build),
            BatterySlide = RigPlaces.BatterySlide(scenario, frame.Build),
            Scenario = isWhole ? whole.Whole : null,
        };
        var log = new ReadLog("");
        PartCheck.Run(scenario.Parts, "parts", log);
        ScenarioCheck.Run(scenario, log);
        if (log.HasErrors)
            return now with { Sentence = RigWords.WrongSoFar(log.Problems.Select(RigProblem.Of)) };
        if (!run)
            return now;

        RigAnswer answer;
        try
        {
            scenario = scenario.AskedOn(frame.Today);
            answer = known?.Moved(scenario) ?? RigAnswer.Of(scenario, frame.Build, [frame.Day], null, null, cancellation);
        }
        catch (ScenarioProblemsException wrong)
        {
            // A voltage that only the wiring as a whole makes too high: nothing is run then.
            return now with { Problems = [.. now.Problems, .. wrong.Problems.Select(RigProblem.Of)], Scenario = null,
                Sentence = RigWords.WrongSoFar(wrong.Problems.Select(RigProblem.Of)) };
        }
        return now with
        {
            Answer = answer,
            IsForDay = !noBlocks,
            Assumed = [.. now.Assumed.Concat(answer.Assumed).DistinctBy(value => (value.Field, value.Value))],
            Sentence = RigWords.Answer(answer, [.. whole.LeftOut.Select(name => given.PartOf(name)?.Name ?? name)], noBlocks,
                noAir),
            Cautions = [.. RigWords.Cautions(scenario, build), .. AnswerCautions.Of(answer)],
        };
    }

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
