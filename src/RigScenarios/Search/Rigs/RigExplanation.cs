using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>Why a front is what it is: looked for after it, in the time that is left.</summary>
internal sealed class RigExplanation(
    RigChoices model, RememberedChoices remembered, RigSearchOptions options, SearchDeadline deadline,
    CancellationToken cancellation)
{
    private readonly int money = model.Question.Best.Wishes.ToList().IndexOf(RigWish.LeastCost);

    /// <summary>Whether there was time for all of it.</summary>
    public bool IsWhole { get; private set; } = true;

    /// <summary>The entries of the front with their answers and what would stand in each place instead.</summary>
    public IReadOnlyList<RigPick> Picks(FrontResult front)
    {
        var picks = new List<RigPick>();
        foreach (var entry in front.Entries)
        {
            var pick = new RigPick(entry.Choice, [.. entry.Choices.Skip(1)], model.Figures(entry.Choice, cancellation),
                model.Answer(entry.Choice, cancellation).Answer!, model.Cost.Of(entry.Choice), model.Mass.Of(entry.Choice));
            picks.Add(picks.Count < options.MostExplained ? pick with { Others = Others(entry) } : pick);
        }
        return picks;
    }

    /// <summary>The steps of more money, for each wish but the cost itself.</summary>
    public IReadOnlyList<MoreMoney> MoreMoney(FrontResult front)
    {
        if (money < 0)
            return [];
        var entries = front.Entries.ToList();
        return
        [
            .. model.Question.Best.Wishes.Index().Where(wish => wish.Index != money).SelectMany(wish =>
                NextGain.Along(front, money, wish.Index).Where(step => step.From is not null)
                    .Select(step => new MoreMoney(wish.Item, entries.IndexOf(step.From!), entries.IndexOf(step.To), step.Extra,
                        step.Gain))),
        ];
    }

    /// <summary>What the next 100 buy beyond the cheapest rig.</summary>
    public IReadOnlyList<NextHundred> NextHundred(FrontResult front)
    {
        const double hundred = 100;
        if (money < 0 || front.Entries.Count == 0)
            return [];
        var entries = front.Entries.ToList();
        var cheapest = entries.Min(entry => double.IsNaN(entry.Goals[money]) ? double.PositiveInfinity : entry.Goals[money]);
        return double.IsInfinity(cheapest) ? [] :
        [
            .. model.Question.Best.Wishes.Index().Where(wish => wish.Index != money)
                .Select(wish => NextGain.Within(front, money, wish.Index, cheapest, hundred) is { From: not null, Gain: > 0 } next
                    ? new NextHundred(wish.Item, entries.IndexOf(next.To), next.Extra, next.Gain)
                    : new NextHundred(wish.Item, null, 0, 0)),
        ];
    }

    /// <summary>What each must adds to the least cost. What fits together is no wish, and the budget is what it costs.</summary>
    public IReadOnlyList<MustPrice> MustPrices()
    {
        if (money < 0)
            return [];
        var all = Least(model.AskedMusts);
        return
        [
            .. model.AskedMusts.Where(must => must is not (RigMust.Fits or RigMust.Budget))
                .Select(must => new MustPrice(must, all - Least(model.AskedMusts.Where(other => other != must)))),
        ];
    }

    /// <summary>Which musts do not go together, and what the others would cost without each of them.</summary>
    public RigConflict Conflict()
    {
        var found = Conflicts.Find(remembered, Options(), cancellation);
        IsWhole &= found.IsComplete;
        return new(
        [
            .. found.Sets.Select(set => set.Musts.Select(must => model.AskedMusts[must]).ToList())
                .Zip(found.Sets, (musts, set) => new ConflictingMusts(musts, set.IsMinimal,
                    [.. musts.Select(must => money < 0 ? null : Least(model.AskedMusts.Where(other => other != must)))])
                {
                    Nearest = musts is [var only] ? Nearest(only) : null,
                }),
        ], found.IsComplete);
    }

    private RigNearMiss? Nearest(RigMust must) => must switch
    {
        RigMust.Budget when money >= 0 && Cheapest([RigMust.Fits]) is { } cheapest => new(cheapest.Choice,
            RigSearchWords.TooDear(model.Cost.Of(cheapest.Choice), model.Currency)),
        RigMust.Fits or RigMust.Mass or RigMust.Budget => null,
        _ => model.Nearest(must),
    };

    /// <summary>The least cost under some musts; null where nothing holds them, or nobody knows.</summary>
    private double? Least(IEnumerable<RigMust> musts) => Cheapest(musts)?.Goals[0];

    private FrontEntry? Cheapest(IEnumerable<RigMust> musts)
    {
        if (Left() is { Seconds: <= 0.01 })
        {
            IsWhole = false;
            return null;
        }
        var numbers = musts.Select(must => model.AskedMusts.ToList().IndexOf(must)).ToList();
        var found = OneChoice.Least(remembered, money, numbers, Options(), cancellation);
        IsWhole &= found.IsProven;
        return found.IsProven ? found.Entry : null;
    }

    private List<OtherPart> Others(FrontEntry entry)
    {
        var others = new List<OtherPart>();
        foreach (var place in Enumerable.Range(0, model.Slots.Count).Where(place => model.Slots[place].Candidates.Count > 1))
        {
            if (deadline.IsOver)
            {
                IsWhole = false;
                break;
            }
            others.Add(Other(entry, place));
        }
        return others;
    }

    /// <summary>Of the other candidates that hold every must the one that is best in the first wish that tells them apart; where
    /// none does, of those that fail fewest the one that is most like what stands there.</summary>
    private OtherPart Other(FrontEntry entry, int place)
    {
        var others = Enumerable.Range(0, model.Slots[place].Candidates.Count).Where(one => one != entry.Choice[place])
            .Select(one => (Candidate: one, Choice: entry.Choice.With(place, one))).ToList();
        var fitting = others.Where(other => model.GoesTogether(other.Choice))
            .Select(other => Compared(entry, place, other)).ToList();
        if (fitting.Count == 0)
            return new OtherPart(place, null, null, [], [], WhyNone(entry.Choice, place, others[0].Candidate));
        var holding = fitting.Where(other => other.Fails.Count == 0).ToList();
        return holding.Count > 0
            ? holding.OrderBy(other => other.Differences, Comparer<IReadOnlyList<double>>.Create(InOrder)).First()
            : fitting.OrderBy(other => other.Figures!.Refused is null ? other.Fails.Count : int.MaxValue)
                .ThenBy(other => Apart(other, fitting)).First();
    }

    /// <summary>How far a candidate is from what stands there, each wish counted by the one that is farthest in it.</summary>
    private static double Apart(OtherPart other, List<OtherPart> all) => other.Differences.Index().Sum(difference =>
        all.Max(one => Math.Abs(one.Differences[difference.Index])) is > 0 and var most
            ? Math.Abs(difference.Item) / most : 0);

    private OtherPart Compared(FrontEntry entry, int place, (int Candidate, Choice Choice) other)
    {
        // The goals of a front are those of the model, with its sums in them.
        var figures = model.Figures(other.Choice, cancellation);
        var goals = remembered.Evaluate(other.Choice, cancellation).Goals;
        return new(place, other.Candidate, figures, [.. model.AskedMusts.Select(must => (must, Why(must, other.Choice, figures)))
            .Where(must => must.Item2.Length > 0)], [.. goals.Zip(entry.Goals, (then, now) => then - now)], "");
    }

    private string Why(RigMust must, Choice choice, RigFigures figures) => must switch
    {
        RigMust.Mass => model.Mass.Of(choice) is { } grams && grams <= model.MostGrams ? ""
            : RigSearchWords.TooHeavy(model.Mass.Of(choice)),
        RigMust.Budget => model.Cost.Of(choice) is { } cost && cost <= model.Question.Best.Musts.Budget!.Value.Amount ? ""
            : RigSearchWords.TooDear(model.Cost.Of(choice), model.Currency),
        _ => figures.Failing[(int)must],
    };

    private string WhyNone(Choice choice, int place, int candidate) =>
        model.Fits.Reason(place, candidate) is { Length: > 0 } alone ? alone
            : Enumerable.Range(0, model.Slots.Count).Where(other => other != place)
                .Select(other => model.Fits.Reason(place, candidate, other, choice[other]))
                .First(reason => reason.Length > 0);

    /// <summary>What is not known comes last.</summary>
    private static int InOrder(IReadOnlyList<double> one, IReadOnlyList<double> other) =>
        one.Zip(other, (first, second) => (double.IsNaN(first) ? double.PositiveInfinity : first)
            .CompareTo(double.IsNaN(second) ? double.PositiveInfinity : second)).FirstOrDefault(order => order != 0);

    private FrontOptions Options() => new() { TimeLimit = Left(), Clock = options.Clock, Enough = options.Enough };

    private Duration? Left() => deadline.Left is { } left
        ? Duration.FromSeconds(Math.Max(0.01, left.TotalSeconds)) : null;
}
