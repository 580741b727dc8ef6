using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>The question of the best rig as a search sees it: money and mass are sums, what fits is told by the parts, everything
/// else comes from the one answer.</summary>
public sealed class RigChoices : IChoiceModel
{
    private readonly RigEvaluation evaluation;

    /// <summary>Prepares the search of a question.</summary>
    /// <param name="question">The question.</param>
    public RigChoices(BestRigQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        Question = question;
        Fits = new(question);
        Currency = RigPrices.Currency(question);
        evaluation = new(question);
        var things = RigPrices.Things(question.Scenario, question.Best.Build);
        decimal? Price(Scenario scenario, string thing) => RigPrices.Of(scenario, thing, question.Terms);
        Unpriced = [.. things.Where(thing => IsFixed(thing) && Price(question.Scenario, thing) is null)];
        Cost = Sum(things, Price);
        Mass = Sum(MassThings(), MassOf);
        Slots = [.. question.Places.Select(place => new ChoiceSlot(place.Name,
            [.. place.Candidates.Select(candidate => candidate.Name)]))];
        Goals = [.. question.Best.Wishes.Select(Goal)];
        AskedMusts = [.. Enum.GetValues<RigMust>().Where(IsAsked)];
        Musts = [.. AskedMusts.Select(Must)];
    }

    /// <summary>The question.</summary>
    public BestRigQuestion Question { get; }

    /// <summary>Which candidates fit.</summary>
    public RigFits Fits { get; }

    /// <summary>The currency of all prices; null where none is known.</summary>
    public string? Currency { get; }

    /// <summary>Money, in the currency of the prices. The rest of the build is in it, but for what has no price.</summary>
    public ChoiceSum Cost { get; }

    /// <summary>Mass of the rig in grams, without head and tripod.</summary>
    public ChoiceSum Mass { get; }

    /// <summary>Things of the build outside the slots that have no price, by their names in the kit: whatever costs are told are
    /// "at least" then.</summary>
    public IReadOnlyList<string> Unpriced { get; }

    /// <summary>What each of <see cref="Musts"/> asks.</summary>
    public IReadOnlyList<RigMust> AskedMusts { get; }

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceSlot> Slots { get; }

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceGoal> Goals { get; }

    /// <inheritdoc/>
    public IReadOnlyList<ChoiceMust> Musts { get; }

    /// <summary>How often days were run so far.</summary>
    public int Runs => evaluation.Runs;

    /// <summary>The slots, by their numbers, on which the days rest: choices alike in them share one run.</summary>
    internal IReadOnlySet<int> Powered => evaluation.Powered;

    /// <inheritdoc/>
    public bool IsCompatible(int slot, int candidate) => Fits.Reason(slot, candidate).Length == 0;

    /// <inheritdoc/>
    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        Fits.Reason(slotA, candidateA, slotB, candidateB).Length == 0;

    /// <inheritdoc/>
    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation)
    {
        var figures = evaluation.Of(choice, cancellation);
        return new([.. Question.Best.Wishes.Select(wish => Figure(wish, choice, figures))],
            [.. AskedMusts.Select(must => (bool?)(must switch
            {
                RigMust.Mass => Mass.Of(choice) is { } mass ? mass <= MostGrams : null,
                RigMust.Budget => Cost.Of(choice) is { } cost ? cost <= Question.Best.Musts.Budget!.Value.Amount : null,
                _ => figures.Holds(must),
            }))]);
    }

    /// <summary>What the answer says of a choice.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public RigFigures Figures(Choice choice, CancellationToken cancellation = default) => evaluation.Of(choice, cancellation);

    /// <summary>The whole answer to a choice; null with the reason where its parts make no sound rig.</summary>
    /// <param name="choice">The choice.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public (Answers.RigAnswer? Answer, string Refused) Answer(Choice choice, CancellationToken cancellation = default) =>
        evaluation.Answer(choice, cancellation);

    /// <summary>Of the choices that were run and fail a must the one that fails it least; null where none does.</summary>
    internal RigNearMiss? Nearest(RigMust must) => evaluation.Nearest(must);

    /// <summary>Whether every two candidates of a choice fit each other, and each the build.</summary>
    /// <param name="choice">The choice.</param>
    public bool GoesTogether(Choice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return Enumerable.Range(0, Slots.Count).All(a => IsCompatible(a, choice[a])
            && Enumerable.Range(a + 1, Slots.Count - a - 1).All(b => IsCompatible(a, choice[a], b, choice[b])));
    }

    /// <summary>A wish as a figure that shall be small; NaN where it is not known.</summary>
    private double Figure(RigWish wish, Choice choice, RigFigures figures) => wish switch
    {
        RigWish.LeastCost => (double?)Cost.Of(choice) ?? double.NaN,
        RigWish.LeastMass => (double?)Mass.Of(choice) ?? double.NaN,
        RigWish.LongestDay => -figures.Reserve?.Hours ?? double.NaN,
        _ => -figures.Least?.Share ?? double.NaN,
    };

    private ChoiceGoal Goal(RigWish wish) => wish switch
    {
        RigWish.LeastCost => new(RigSearchWords.Wish(wish)) { Sum = Cost },
        RigWish.LeastMass => new(RigSearchWords.Wish(wish)) { Sum = Mass },
        RigWish.LongestDay => new(RigSearchWords.Wish(wish)) { DependsOn = [.. evaluation.Powered.Order()] },
        _ => new(RigSearchWords.Wish(wish)),
    };

    private ChoiceMust Must(RigMust must) => must switch
    {
        RigMust.Mass => new(RigSearchWords.Must(Question, must)) { Sum = Mass, AtMost = MostGrams },
        RigMust.Budget => new(RigSearchWords.Must(Question, must))
        {
            Sum = Cost, AtMost = Question.Best.Musts.Budget!.Value.Amount,
        },
        RigMust.Lasts => new(RigSearchWords.Must(Question, must)) { DependsOn = [.. evaluation.Powered.Order()] },
        RigMust.Flies => new(RigSearchWords.Must(Question, must)) { DependsOn = [.. evaluation.Batteries.Order()] },
        _ => new(RigSearchWords.Must(Question, must)),
    };

    private bool IsAsked(RigMust must) => Question.Best.Musts is var musts && must switch
    {
        RigMust.Lasts => musts.Lasts is not null,
        RigMust.Flies => musts.Flies is not null,
        RigMust.Balances => musts.Balances,
        RigMust.Holds => musts.Holds,
        RigMust.Mass => musts.Mass is not null,
        RigMust.Budget => musts.Budget is not null,
        _ => true,
    };

    /// <summary>The most that the rig may weigh, in grams.</summary>
    internal decimal MostGrams => Grams(Question.Best.Musts.Mass!.Value);

    private bool IsFixed(string thing) => Question.Places.All(place => place.Replaces != thing);

    /// <summary>What is weighed: whatever is on the rig now. What stands beside it weighs nothing on it, whichever part it
    /// is.</summary>
    private List<string> MassThings() => [.. Question.Start.Things.Distinct().Except(Question.Start.OffRig)
        .Where(thing => Question.Scenario.PartOf(thing)?.Kind is not (PartKind.Head or PartKind.Tripod or PartKind.Charger))];

    private decimal? MassOf(Scenario scenario, string thing) => scenario.PartOf(thing)?.Mass is not { } mass ? null
        : Grams(mass) * (Question.Start.Devices.TryGetValue(thing, out var device) ? device.Count : 1);

    /// <summary>To a milligram: finer than any scale, and exact from there on.</summary>
    private static decimal Grams(Mass mass) => Math.Round((decimal)mass.Grams, 3);

    private ChoiceSum Sum(IReadOnlyList<string> things, Func<Scenario, string, decimal?> of) =>
        new([.. Question.Places.Select(place => (IReadOnlyList<decimal?>)
            [.. place.Candidates.Select(candidate => candidate.IsEmpty || !things.Contains(place.Replaces) ? 0
                : of(ChosenRig.With(Question.Scenario, Question.Best.Build, place, candidate), place.Replaces))])],
            things.Where(IsFixed).Sum(thing => of(Question.Scenario, thing) ?? 0));
}
