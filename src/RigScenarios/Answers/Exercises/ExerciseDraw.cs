using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>
/// Looks for causes that belong together: each alone makes the rig fail, so that each must be found; together it fails, and
/// without any one of them it fails less; with the key it is as good as it was.
/// </summary>
internal sealed class ExerciseDraw(RigAnswer sound, int seed, int causes, IProgress<double>? progress,
    CancellationToken cancellation)
{
    /// <summary>Sets that are run at most; each is a handful of answers.</summary>
    private const int MostSets = 60;

    /// <summary>What counts as less: two answers that differ by a hundredth are told apart by nobody.</summary>
    private const double Less = 0.98;

    private readonly List<(PlantedCause Cause, RigAnswer Alone)> found = [];

    public Exercise Run()
    {
        var all = CausesToTry.Of(sound, new SeededSequence(seed));
        var sets = 0;
        foreach (var (at, way) in all.Index())
        {
            progress?.Report((double)at / all.Count);
            if (Mildest(way) is not { } single)
                continue;
            found.Add(single);
            foreach (var set in SetsWithTheLast())
            {
                if (sets++ >= MostSets)
                    break;
                if (Together(set, all) is { } exercise)
                    return exercise;
            }
        }
        throw new ScenarioProblemsException([new Diagnostic(Severity.Error, "", TextPlace.None, $"builds.{sound.Build}",
            $"Of {all.Count} things that could be made wrong on this rig, no {causes} were found of which each alone makes it "
                + "fail.", causes > 1 ? "fewer causes, another build, or days that leave less in reserve"
                    : "another build, or days that leave less in reserve")]);
    }

    /// <summary>The mildest degree that alone makes the rig fail; null where none does.</summary>
    private (PlantedCause, RigAnswer)? Mildest(CauseToTry way)
    {
        foreach (var cause in way.MildFirst)
        {
            if (cause.Repair is not { Effort: ChangeEffort.Buy, Price: null }
                && Answer(sound.Scenario, cause.Settings) is { Verdict: Verdict.Fails } alone)
                return (cause, alone);
        }
        return null;
    }

    private IEnumerable<IReadOnlyList<(PlantedCause Cause, RigAnswer Alone)>> SetsWithTheLast()
    {
        IEnumerable<IReadOnlyList<(PlantedCause, RigAnswer)>> Choose(int size, int before)
        {
            if (size == 0)
                return [[]];
            return Enumerable.Range(0, before).SelectMany(at => Choose(size - 1, at)
                .Select(rest => (IReadOnlyList<(PlantedCause, RigAnswer)>)[.. rest, found[at]]));
        }
        return Choose(causes - 1, found.Count - 1)
            .Select(rest => (IReadOnlyList<(PlantedCause, RigAnswer)>)[.. rest, found[^1]]);
    }

    private Exercise? Together(IReadOnlyList<(PlantedCause Cause, RigAnswer Alone)> set, IReadOnlyList<CauseToTry> all)
    {
        var planted = set.Select(one => one.Cause).ToList();
        var spare = CausesToTry.Decoys(sound, all, planted);
        if (Answer(sound.Scenario, [.. spare, .. planted.SelectMany(cause => cause.Settings)])
            is not { Verdict: Verdict.Fails } rig)
            return null;
        var without = new List<RigAnswer>();
        foreach (var cause in planted)
        {
            if (Answer(rig.Scenario, cause.Repair.Settings) is not { } better || !FailsLess(better, rig))
                return null;
            without.Add(better);
        }
        var key = planted.SelectMany(cause => cause.Repair.Settings).ToList();
        var price = Price(planted);
        if (Answer(rig.Scenario, key) is not { } repaired || price.Several)
            return null;
        var exercise = new Exercise
        {
            Seed = seed, Sound = sound, Rig = rig, Repaired = repaired, Causes = planted,
            Alone = [.. set.Select(one => one.Alone)], Without = without, KeyCost = price.Sum,
            Budget = price.Sum is { } sum ? sum with { Amount = Rounded(sum.Amount) } : null,
        };
        var check = ExerciseCheck.Of(exercise, repaired.Scenario, cancellation);
        return check.IsSolved ? exercise : null;
    }

    private RigAnswer? Answer(Scenario scenario, IReadOnlyList<FieldSetting> settings)
    {
        cancellation.ThrowIfCancellationRequested();
        try
        {
            var changed = ScenarioPath.SetAll(scenario, settings.Select(setting => (setting.Path, setting.Value)));
            return RigAnswer.Of(changed, sound.Build, sound.Days, sound.Options, cancellation: cancellation);
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // A change that makes no sound scenario (a plug that does not fit, a voltage too high) is none.
            return null;
        }
    }

    /// <summary>Whether no question is further off, and one is nearer.</summary>
    internal static bool FailsLess(RigAnswer then, RigAnswer now)
    {
        var pairs = then.Questions.Select(question => (Then: question, Now: now.Of(question.Kind))).ToList();
        return pairs.TrueForAll(pair => pair.Now is { } before && pair.Then.Verdict <= before.Verdict
                && pair.Then.Shortfall <= before.Shortfall + 1e-9)
            && pairs.Exists(pair => pair.Then.Verdict < pair.Now!.Verdict
                || (pair.Then.Verdict == Verdict.Fails && pair.Then.Shortfall < Less * pair.Now.Shortfall));
    }

    /// <summary>What the repairs cost together; null for nothing. Several currencies make no sum.</summary>
    private static (Money? Sum, bool Several) Price(IReadOnlyList<PlantedCause> planted)
    {
        var prices = planted.Select(cause => cause.Repair.Price).OfType<Money>().ToList();
        return (prices.Count == 0 ? null : new Money(prices.Sum(price => price.Amount), prices[0].Currency),
            prices.Select(price => price.Currency).Distinct().Count() > 1);
    }

    // Room for a repair that is a little dearer than the key's, and a round figure that does not give its price away.
    private static decimal Rounded(decimal amount)
    {
        var step = amount < 200 ? 20m : 50m;
        return Math.Ceiling(amount * 1.1m / step) * step;
    }
}
