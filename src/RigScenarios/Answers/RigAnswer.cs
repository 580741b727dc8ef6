using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Costs;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using RigScenarios.Travel;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>
/// The answer: "will it work?", for one build of a scenario and its days. Everything that any face says of them is read from
/// here, and words for it are
/// made by <see cref="AnswerSentences"/>; <see cref="WouldWork"/> says what would change a "no".
/// </summary>
/// <remarks>
/// A face shows, in this order: <see cref="AnswerSentences.Headline"/>, a line for each of
/// <see cref="AnswerSentences.Questions"/>, the sets of <see cref="WouldWork"/> in the words of <see cref="WouldWorkSentences"/>
/// (on a page after the answer, for they take many runs), and <see cref="AnswerCautions"/>: together the first screenful. Below
/// it the
/// details of each question (<see cref="AnswerDetails"/>) and the three assumptions that move it most
/// (<see cref="LeadingAssumptions"/>). For programs: <see cref="AnswerShape"/>. A face about one question shows that question's
/// part and the same headline.
/// </remarks>
public sealed record RigAnswer
{
    /// <summary>The scenario.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The build's short name.</summary>
    public required string Build { get; init; }

    /// <summary>The days' short names, in their order.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>What it was asked with.</summary>
    public required AnswerOptions Options { get; init; }

    /// <summary>The build with its parts.</summary>
    public required PoweredBuild Powered { get; init; }

    /// <summary>The plan of the days.</summary>
    public required DayPlan Plan { get; init; }

    /// <summary>How the days went.</summary>
    public required SimulationResult Simulation { get; init; }

    /// <summary>How it balances and stands; null where nothing of it has a mass.</summary>
    public required BuildBalance? Balance { get; init; }

    /// <summary>The journeys that are planned.</summary>
    public required IReadOnlyList<PlannedJourney> Journeys { get; init; }

    /// <summary>The batteries that do not get to the days, because a journey before them leaves them behind. The days are run
    /// without them: what <see cref="Plan"/> holds is what arrives.</summary>
    public required IReadOnlyList<StayingBattery> Staying { get; init; }

    /// <summary>Whether no battery gets there at all; the days are then run with all of them, so that the other questions have an
    /// answer, and the question of power fails.</summary>
    public required bool NothingArrives { get; init; }

    /// <summary>The same days at the ends of what the batteries' ages may be; null where no life is told.</summary>
    /// <remarks>Run when somebody asks: a day that fails by the middle of its ages fails whatever their spread is.</remarks>
    public AgeSpread? AgeSpread => SpreadOfAges.Value;

    /// <summary>What <see cref="AgeSpread"/> is worked out by, once for all copies of the answer.</summary>
    internal Lazy<AgeSpread?> SpreadOfAges { get; init; } = new(() => null);

    /// <summary>What it costs now; null where the scenario says nothing of money.</summary>
    public KitCost? Cost { get; init; }

    /// <summary>What it costs over the years to come; null where the scenario says nothing of money. Worked out when somebody
    /// asks.</summary>
    public CostAhead? CostAhead => Answers.CostAhead.Of(this);

    /// <summary>The questions, in their order; travel only where a journey is planned, cost only where something is said of
    /// money.</summary>
    public required IReadOnlyList<AnswerQuestion> Questions { get; init; }

    /// <summary>Figures of parts that their files mark as assumed and the days rest on, each once.</summary>
    public IReadOnlyList<AssumedValue> PartsAssumed =>
        [.. Plan.Days.SelectMany(day => PartAssumptions.In(Scenario, TheBuild, day)).DistinctBy(value => value.Field)];

    /// <summary>How far the time hangs on how fast the batteries lose their own heat; null where none is cold.</summary>
    public WarmthDoubt? Warmth { get; init; }

    /// <summary>What rest or warmth would give back to the battery that stopped; null where nothing worth a word.</summary>
    public ComesBack? ComesBack { get; init; }

    /// <summary>The worst of the questions' verdicts.</summary>
    public Verdict Verdict => Questions.Select(question => question.Verdict).Worst();

    /// <summary>The build.</summary>
    public Build TheBuild => Powered.Build;

    /// <summary>The reserve after the last block.</summary>
    public Reserve Reserve => Simulation.Reserve;

    /// <summary>Every figure that nobody gave and that something of this rests on: those of parts that are marked as assumed,
    /// those of the batteries' models, those of places.</summary>
    public IReadOnlyList<AssumedValue> Assumed =>
    [
        .. PartsAssumed.Concat(BuildAssumptions.In(Scenario, TheBuild))
            .Concat(Simulation.Assumed.Values.SelectMany(values => values)).Concat(Balance?.Assumed ?? [])
            .DistinctBy(value => (value.Field, value.Value)),
    ];

    /// <summary>One of the questions; null where it is not asked.</summary>
    /// <param name="kind">Which.</param>
    public AnswerQuestion? Of(QuestionKind kind) => Questions.FirstOrDefault(question => question.Kind == kind);

    /// <summary>Answers for one build: one simulation, one look at balance, each planned journey.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">The days' short names, one after the other; all of the scenario if empty.</param>
    /// <param name="options">What is asked; null for the usual.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build or day, or something would see more than its greatest
    /// voltage: nothing is run then.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static RigAnswer Of(
        Scenario scenario, string build, IReadOnlyList<string> days, AnswerOptions? options = null,
        IProgress<double>? progress = null, CancellationToken cancellation = default) =>
        Of(scenario, build, days, options ?? new(), null, progress, cancellation);

    /// <summary>The same, where an answer to a scenario that differs in a few fields is known: what those fields have no part in
    /// is taken from it.</summary>
    internal static RigAnswer Of(
        Scenario scenario, string build,
        IReadOnlyList<string> days, AnswerOptions options, RigAnswer? known, IProgress<double>? progress,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        scenario = scenario.AskedOn(options.Today);
        IReadOnlyList<string> names = days.Count > 0 ? days : [.. scenario.Days.Keys];
        IReadOnlyList<PlannedJourney> journeys = known is not null && ReferenceEquals(known.Scenario.Kit, scenario.Kit)
            && ReferenceEquals(known.Scenario.Parts, scenario.Parts)
            && ReferenceEquals(known.Scenario.Journeys, scenario.Journeys)
            ? known.Journeys : PlannedJourney.All(scenario, options.Today, cancellation);
        var arriving = ArrivingBatteries.Of(scenario, build, options.EverythingArrives ? [] : journeys);
        var (powered, plan) = ScenarioPlan.Of(arriving.Scenario, build, names);
        var simulation = Told(build, () => DaySimulation.Run(powered, plan, new SimulationOptions(options.SeriesPoints),
            progress, cancellation));
        var balance = known is not null && ReferenceEquals(known.Scenario.Kit, scenario.Kit)
            && ReferenceEquals(known.Scenario.Parts, scenario.Parts)
            && known.TheBuild.Equals(powered.Build) ? known.Balance : BalanceOf(scenario, build);
        var answer = new RigAnswer
        {
            Scenario = scenario, Build = build, Days = names, Options = options, Powered = powered, Plan = plan,
            Simulation = simulation, Balance = balance, Journeys = journeys, Staying = arriving.Staying,
            NothingArrives = arriving.IsNothingLeft, Cost = CostQuestion.KitOf(scenario, build, names.Count),
            Questions = [], Tightest = (plan.Days.Count, simulation.Reserve),
        };
        answer = answer with
        {
            Tightest = TightestDay.Of(powered, plan, simulation, cancellation),
            SpreadOfAges = new(() => Told(build, () => AgeSpread.Of(powered, plan))),
        };
        answer = answer with
        {
            Warmth = WarmthDoubt.Of(answer, options.FollowsUp, cancellation),
            ComesBack = options.FollowsUp ? ComesBack.Of(powered, plan, simulation, cancellation) : null,
        };
        return answer with { Questions = [.. Asked(answer)] };
    }

    /// <summary>The same as if every battery got to the days: itself where every one does.</summary>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public RigAnswer WithEverything(CancellationToken cancellation = default) => Staying.Count == 0 ? this
        : Of(Scenario, Build, Days, Options with { EverythingArrives = true, SeriesPoints = 0 }, this, null, cancellation);

    /// <summary>
    /// The same build with parts moved along their mounts: places have no part in power, wiring and travel, so that only what
    /// rests on them is asked anew.
    /// </summary>
    /// <param name="places">What is moved, as <see cref="MovedPlaces"/> reads it.</param>
    /// <exception cref="ScenarioProblemsException">A part does not slide, or not so far.</exception>
    public RigAnswer Moved(string places) => Moved(MovedPlaces.Apply(Scenario, Build, places));

    /// <summary>The answer for a scenario that differs from this one's in nothing but places: the days are not run
    /// again.</summary>
    internal RigAnswer Moved(Scenario scenario)
    {
        var moved = this with { Scenario = scenario, Powered = PoweredBuild.From(scenario.Builds[Build], scenario.PartOf),
            Balance = BalanceOf(scenario, Build), Cost = CostQuestion.KitOf(scenario, Build, Days.Count) };
        return moved with { Questions = [.. Asked(moved)] };
    }

    private static IEnumerable<AnswerQuestion> Asked(RigAnswer answer)
    {
        var power = QuestionRules.Power(answer.Simulation, QuestionRules.Doubt(answer), answer.Options.Wish,
            answer.Tightest.Reserve, answer.SpreadOfAges);
        yield return answer.NothingArrives
            ? power with { Verdict = Verdict.Fails, Shortfall = answer.Plan.Days.Sum(day => day.Length.Hours) } : power;
        yield return QuestionRules.OfLimits(QuestionKind.Wiring, answer.Simulation.Limits,
            QuestionRules.CountsIn(answer.Simulation), AnswerSentences.WiringMissing(answer.Powered), limit =>
            !QuestionRules.IsHeld(answer.Powered, limit));
        yield return BalanceQuestions.Balance(answer.Balance);
        yield return BalanceQuestions.Stand(answer.Balance);
        if (answer.Journeys.Count > 0)
            yield return QuestionRules.Travel(answer.Journeys);
        if (answer.Cost is { } cost)
            yield return CostQuestion.Of(answer, cost);
    }

    /// <summary>The time over which the error of the prediction adds up: that of the last day where each day begins with charged
    /// batteries, else that of all days.</summary>
    internal Duration Working => EachDayBeginsAnew
        ? Plan.Days[Tightest.Day - 1].Length : Duration.FromSeconds(Plan.Days.Sum(day => day.Length.Seconds));

    /// <summary>Whether no charger is planned, so that every day begins as the first: charged overnight elsewhere.</summary>
    public bool EachDayBeginsAnew => Plan.DaysBeginAsTheFirst && Plan.Days.Count > 1;

    /// <summary>
    /// The day with the least reserve, counted from 1, with it. Where batteries go on from day to day the reserve is that of the
    /// last one; where every day begins
    /// as the first, each has its own, and an earlier one may be tighter.
    /// </summary>
    public required (int Day, Reserve Reserve) Tightest { get; init; }

    /// <summary>How a build balances; null where nothing of it has a mass.</summary>
    internal static BuildBalance? BalanceOf(Scenario scenario, string build)
    {
        try
        {
            return ScenarioBalance.Of(scenario, build);
        }
        catch (ScenarioProblemsException)
        {
            // Nothing of it has a mass: the balance is not known, and the rest of the answer stands.
            return null;
        }
    }

    /// <summary>A voltage that would destroy something is an error of the file, told before anything runs.</summary>
    /// <summary>Runs days; what is wrong with their plan or wiring is told as a problem of the scenario's field.</summary>
    /// <exception cref="ScenarioProblemsException">Something would see more than its greatest voltage, or swaps have no
    /// end.</exception>
    internal static T Told<T>(string build, Func<T> run)
    {
        try
        {
            return run();
        }
        catch (PlanBoundException problem)
        {
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, "swaps", problem.Message,
                "batteries that last longer, or a swap at a lower charge or voltage")]);
        }
        catch (WiringException problem)
        {
            throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, $"builds.{build}",
                problem.Message)]);
        }
    }
}

/// <summary>A journey that a scenario plans.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Answer">What the rules say of it; null where nobody says on which day it is.</param>
public sealed record PlannedJourney(string Name, TravelAnswer? Answer)
{
    /// <summary>Whether it comes after the days.</summary>
    public bool AfterDays { get; init; }

    /// <summary>All journeys of a scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="today">The day for a journey without a date; null leaves it without an answer.</param>
    /// <param name="cancellation">Stops it.</param>
    public static IReadOnlyList<PlannedJourney> All(Scenario scenario, DateOnly? today, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return
        [
            .. scenario.Journeys.Where(journey => scenario.BatteriesOn(journey.Value).Any())
                .Select(journey => new PlannedJourney(journey.Key, (journey.Value.Date ?? today) is { } day
                    ? ScenarioTravel.Answer(scenario, journey.Key, day, cancellation) : null)
                {
                    AfterDays = journey.Value.AfterDays,
                }),
        ];
    }
}
