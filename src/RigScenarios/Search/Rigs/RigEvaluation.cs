using System.Collections.Concurrent;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>
/// Runs choices through the one answer. The days are run once for all choices that are alike in what carries current; what only
/// weighs something is then put on that answer, as a part is that was moved.
/// </summary>
public sealed class RigEvaluation
{
    /// <summary>Answers with their runs are large; figures, which are kept by the search, are not.</summary>
    private const int MostKept = 400;

    private readonly BestRigQuestion question;
    private readonly ConcurrentDictionary<Choice, (RigAnswer? Answer, string Refused)> runs = new();
    private readonly ConcurrentDictionary<Choice, (string Why, string AskFirst)> flights = new();
    private readonly Lock comparing = new();
    private readonly Dictionary<RigMust, (double Shortfall, RigNearMiss Miss)> nearest = [];
    private int ran;

    /// <summary>Prepares for a question.</summary>
    /// <param name="question">The question.</param>
    public RigEvaluation(BestRigQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        this.question = question;
        var (scenario, build) = (question.Scenario, question.Start);
        var batteries = scenario.Batteries.Values.Concat(scenario.InternalBatteries.Values).Select(battery => battery.Item)
            .Concat(scenario.HotSwap is { } pack ? [pack.Pack.Item] : []).Append(build.Battery.Item).ToHashSet();
        var powered = batteries.Concat(build.Devices.Keys).Concat(build.Regulators.Keys).Concat(build.Splitters.Keys)
            .Concat(build.Cables).Concat(build.Plate is { } plate ? [plate] : []).ToHashSet();
        Powered = Numbers(powered);
        Batteries = Numbers(batteries);
    }

    /// <summary>The places, by their numbers, on which the days rest: whatever carries current.</summary>
    public IReadOnlySet<int> Powered { get; }

    /// <summary>The places, by their numbers, in which batteries stand.</summary>
    public IReadOnlySet<int> Batteries { get; }

    /// <summary>How often days were run; for a note on the work.</summary>
    public int Runs => Volatile.Read(ref ran);

    /// <summary>What the answer says of a choice.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public RigFigures Of(Choice choice, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(choice);
        // What rests on the days alone is told of them even where something else of the choice makes no rig, so that it is the
        // same for all choices that share their days.
        var days = DaysOf(choice, cancellation);
        var (answer, refused) = Answer(choice, cancellation);
        var figures = new RigFigures
        {
            Refused = answer is null ? refused : null,
            Headline = answer is null ? "" : AnswerSentences.Headline(answer),
            Verdict = answer?.Verdict ?? Verdict.Fails,
            Questions = answer is null ? [] : AnswerSentences.Questions(answer),
            Reserve = days.Answer is { NothingArrives: false } ran ? ran.Tightest.Reserve.Time : null,
            IsReserveLowerBound = days.Answer?.Tightest.Reserve.IsLowerBound ?? false,
            ReserveShare = days.Answer is null ? null : ShareLeft(days.Answer),
            Least = answer is null ? null : LeastOf(answer), Mass = answer is null ? null : MassOf(answer),
            AskFirst = IsAsked(RigMust.Flies) ? Flight(choice, cancellation).AskFirst : "",
            Failing = [.. Enum.GetValues<RigMust>().Select(must => must switch
            {
                RigMust.Fits => refused,
                RigMust.Lasts when IsAsked(must) => days.Answer is null ? days.Refused : WhyNotLasting(days.Answer),
                RigMust.Flies when IsAsked(must) => Flight(choice, cancellation).Why,
                RigMust.Balances or RigMust.Holds when IsAsked(must) && answer is null => refused,
                RigMust.Balances when IsAsked(must) => WhyNot(answer!, QuestionKind.Balance),
                RigMust.Holds when IsAsked(must) => WhyNot(answer!, QuestionKind.Wiring) is { Length: > 0 } wiring
                    ? wiring : question.Best.Musts.StandCounts ? WhyNot(answer!, QuestionKind.Stand) : "",
                _ => "",
            })],
        };
        figures = figures with { Shortfalls = RigShortfall.Of(question.Best.Musts, answer, figures) };
        Compare(choice, figures);
        return figures;
    }

    /// <summary>Of the choices that were run and fail a must the one that fails it least; null where none does.</summary>
    /// <param name="must">A must that the answer tells.</param>
    internal RigNearMiss? Nearest(RigMust must)
    {
        lock (comparing)
            return nearest.TryGetValue(must, out var found) ? found.Miss : null;
    }

    private void Compare(Choice choice, RigFigures figures)
    {
        lock (comparing)
        {
            foreach (var (number, shortfall) in figures.Shortfalls.Index().Where(one => one.Item > 0))
            {
                var must = (RigMust)number;
                if (!nearest.TryGetValue(must, out var known) || shortfall < known.Shortfall
                    || (shortfall == known.Shortfall && choice.CompareTo(known.Miss.Choice) < 0))
                    nearest[must] = (shortfall, new(choice, figures.Failing[number]));
            }
        }
    }

    /// <summary>The whole answer to a choice; null with the reason where its parts make no sound rig.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    public (RigAnswer? Answer, string Refused) Answer(Choice choice, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(choice);
        var scenario = question.With(choice);
        if (Problem(scenario) is { } problem)
            return (null, problem);
        var days = DaysOf(choice, cancellation);
        return days.Answer is null ? days : (days.Answer.Moved(scenario), "");
    }

    /// <summary>The answer to the choice with everything that carries no current as it is now, so that choices that differ only
    /// in that share one run.</summary>
    private (RigAnswer? Answer, string Refused) DaysOf(Choice choice, CancellationToken cancellation)
    {
        var alike = new Choice(choice.Select((candidate, place) => Powered.Contains(place) ? candidate : 0));
        if (runs.TryGetValue(alike, out var run))
            return run;
        run = Run(alike, cancellation);
        Interlocked.Increment(ref ran);
        if (runs.Count >= MostKept)
            runs.Clear();
        runs.TryAdd(alike, run);
        return run;
    }

    private (RigAnswer? Answer, string Refused) Run(Choice alike, CancellationToken cancellation)
    {
        var scenario = question.With(alike);
        if (Problem(scenario) is { } problem)
            return (null, problem);
        try
        {
            return (RigAnswer.Of(scenario, question.Best.Build, question.Days,
                AnswerOptions.EndOnly with { Today = question.Today }, cancellation: cancellation), "");
        }
        catch (ScenarioProblemsException exception)
        {
            return (null, exception.Problems[0].Problem);
        }
    }

    private static string? Problem(Scenario scenario)
    {
        var log = new ReadLog("");
        ScenarioCheck.Run(scenario, log);
        return log.Problems.FirstOrDefault(problem => problem.Severity == Severity.Error)?.Problem;
    }

    /// <summary>Whether a question asks for something that only the answer knows.</summary>
    private bool IsAsked(RigMust must) => must switch
    {
        RigMust.Lasts => question.Best.Musts.Lasts is not null,
        RigMust.Flies => question.Best.Musts.Flies is not null,
        RigMust.Balances => question.Best.Musts.Balances,
        RigMust.Holds => question.Best.Musts.Holds,
        _ => false,
    };

    private string WhyNot(RigAnswer answer, QuestionKind kind)
    {
        var verdict = answer.Of(kind)!.Verdict;
        return verdict == Verdict.Holds || (verdict == Verdict.Close && question.Best.Musts.CloseWillDo) ? ""
            : AnswerSentences.Questions(answer).First(line => line.Kind == kind).Words;
    }

    private string WhyNotLasting(RigAnswer answer)
    {
        if (WhyNot(answer, QuestionKind.Power) is { Length: > 0 } words)
            return words;
        var must = question.Best.Musts.Lasts!;
        if (must.Reserve is { } share && !(ShareLeft(answer) >= share))
            return RigSearchWords.TooLittleLeft(ShareLeft(answer), share);
        return must.ReserveTime is { } time && answer.Tightest.Reserve.Time < time
            ? RigSearchWords.TooShort(answer.Tightest.Reserve.Time, time) : "";
    }

    /// <summary>The batteries of the build, and all that take turns, as spare ones of one traveller.</summary>
    private (string Why, string AskFirst) Flight(Choice choice, CancellationToken cancellation)
    {
        var alike = new Choice(choice.Select((candidate, place) => Batteries.Contains(place) ? candidate : 0));
        return flights.GetOrAdd(alike, _ =>
        {
            const string flight = "cabin";
            var scenario = question.With(alike, Batteries);
            IReadOnlyList<string> batteries = [.. new[] { question.Start.Battery.Item }
                .Concat(scenario.Batteries.Values.Select(battery => battery.Item)).Distinct()];
            var day = question.Today ?? RuleEditions.All[^1].From;
            var answer = ScenarioTravel.Answer(scenario with
            {
                Journeys = new([KeyValuePair.Create(flight, new JourneyPlan { Batteries = batteries })]),
            }, flight, day, cancellation);
            var ask = answer.Approvals.Any()
                ? RigSearchWords.NeedsApproval(answer.Approvals.Select(line => line.Line.Battery.Title)) : "";
            return (answer.Left.Count > 0 ? RigSearchWords.StaysBehind(answer.Left)
                : question.Best.Musts.Flies == FliesMust.WithoutAsking ? ask : "", ask);
        });
    }

    private static Ratio? ShareLeft(RigAnswer answer)
    {
        if (!answer.Simulation.Completes || answer.NothingArrives)
            return null;
        var taken = answer.EachDayBeginsAnew ? answer.Simulation.Days[answer.Tightest.Day - 1].FromPacks
            : answer.Simulation.FromPacks;
        var all = taken + answer.Tightest.Reserve.Energy;
        return all.Joules > 0 ? Ratio.FromDecimalFractions(answer.Tightest.Reserve.Energy / all) : null;
    }

    /// <summary>Of the limits that count for a verdict the one with the least share left. A figure to compare with, by which
    /// something is "close", is none.</summary>
    private static Limit? LeastOf(RigAnswer answer) =>
        answer.Questions.Select(one => one.Least is not { HasForce: false } ? one.Least
                : one.Limits.FirstOrDefault(limit => limit.HasForce)).OfType<Limit>()
            .Where(limit => limit is { HasForce: true, Share: not null }).MinBy(limit => limit.Share);

    private static Mass? MassOf(RigAnswer answer) =>
        answer.Balance is { Rig.WithoutMass.Count: 0 } balance ? balance.Mass.Mass : null;

    private HashSet<int> Numbers(HashSet<string> things) =>
        [.. Enumerable.Range(0, question.Places.Count).Where(place => things.Contains(question.Places[place].Replaces))];
}
