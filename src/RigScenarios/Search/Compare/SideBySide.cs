using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Compare;

/// <summary>A rig of a comparison: a build of a scenario, answered for its days.</summary>
/// <param name="Name">Its short name, of its own among those that are compared.</param>
/// <param name="Answer">The one answer for it; nothing here is computed apart from it.</param>
public sealed record ComparedRig(string Name, RigAnswer Answer)
{
    /// <summary>Its name for people.</summary>
    public string Title => Answer.TheBuild.Title ?? Name;
}

/// <summary>One question for all rigs.</summary>
/// <param name="Kind">The question; null for all of them together.</param>
/// <param name="Verdicts">The verdict of each rig; null where it is not asked.</param>
/// <param name="Best">The rigs with the best verdict, by their places; empty where all have the same, or only one is
/// asked.</param>
public sealed record VerdictRow(QuestionKind? Kind, IReadOnlyList<Verdict?> Verdicts, IReadOnlyList<int> Best);

/// <summary>One figure for all rigs.</summary>
/// <param name="Kind">The figure.</param>
/// <param name="Goal">Which way it is wanted.</param>
/// <param name="Values">The figure of each rig.</param>
/// <param name="Differences">The difference of each to the base; of the base itself null.</param>
/// <param name="Best">The rigs that no other beats by more than the figures may be off, by their places; empty where none is
/// better than another, neither way is better, or a figure is not known.</param>
public sealed record FigureRow(FigureKind Kind, FigureGoal Goal, IReadOnlyList<FigureValue> Values,
    IReadOnlyList<FigureDifference?> Differences, IReadOnlyList<int> Best);

/// <summary>One limit of all rigs that have it.</summary>
/// <param name="Question">The question that it belongs to.</param>
/// <param name="Limits">The limit of each rig; null where the rig has no such thing.</param>
public sealed record LimitRow(QuestionKind Question, IReadOnlyList<Limit?> Limits);

/// <summary>
/// Rigs side by side: verdicts, figures, differences to a base with what they come from, and the limits that are passed or near.
/// "Better" is said only of a difference that is larger than the stated errors of both figures together; what both rest on alike
/// is left out of these.
/// </summary>
public sealed record SideBySide
{
    /// <summary>The rigs, two or more.</summary>
    public required IReadOnlyList<ComparedRig> Rigs { get; init; }

    /// <summary>The place of the base among them.</summary>
    public required int Base { get; init; }

    /// <summary>The verdicts: all questions together, then each.</summary>
    public required IReadOnlyList<VerdictRow> Verdicts { get; init; }

    /// <summary>The figures.</summary>
    public required IReadOnlyList<FigureRow> Figures { get; init; }

    /// <summary>The limits that are passed or near in any of them, the least left first.</summary>
    public required IReadOnlyList<LimitRow> Limits { get; init; }

    /// <summary>Whether all go through the same days; if not, a difference may be the days' and no rig's.</summary>
    public bool HaveSameDays => Rigs.All(rig => rig.Answer.Plan.Days.SequenceEqual(Rigs[Base].Answer.Plan.Days));

    /// <summary>Puts rigs side by side.</summary>
    /// <param name="rigs">The rigs, two or more, each with a name of its own.</param>
    /// <param name="base">The place of the base among them.</param>
    /// <param name="splits">Whether differences are split: those that are no sums take up to 62 runs for each rig.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">There are fewer than two rigs, two have the same name, or the base is none of
    /// them.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SideBySide Of(IReadOnlyList<ComparedRig> rigs, int @base = 0, bool splits = true,
        IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(rigs);
        if (rigs.Count < 2)
            throw new ArgumentException($"There are {rigs.Count} rigs; accepted: two or more.", nameof(rigs));
        if (rigs.GroupBy(rig => rig.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new ArgumentException($"Two rigs are named \"{twice.Key}\"; each needs a name of its own.", nameof(rigs));
        if (@base < 0 || @base >= rigs.Count)
            throw new ArgumentException($"The base is number {@base}; accepted: 0 to {rigs.Count - 1}.", nameof(@base));
        var answers = rigs.Select(rig => rig.Answer).ToList();
        var rows = ComparedFigure.For(answers).Select(figure => FigureRows.Of(figure, answers, @base)).ToList();
        if (splits)
            rows = FigureRows.Split(rows, answers, @base, progress, cancellation);
        return new()
        {
            Rigs = rigs, Base = @base, Figures = rows, Limits = LimitRows.Of(answers),
            Verdicts = [Row(null), .. Enum.GetValues<QuestionKind>().Where(kind => answers.Exists(answer =>
                answer.Of(kind) is not null))
                .Select(kind => Row(kind))],
        };

        VerdictRow Row(QuestionKind? kind)
        {
            var verdicts = answers.Select(answer => kind is { } asked ? answer.Of(asked)?.Verdict : answer.Verdict).ToList();
            var known = verdicts.OfType<Verdict>().Distinct().ToList();
            return new(kind, verdicts, known.Count < 2 ? []
                : [.. verdicts.Index().Where(item => item.Item == known.Min()).Select(item => item.Index)]);
        }
    }

    /// <summary>Answers for builds of one scenario, each through the same days, and puts them side by side.</summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="builds">The builds by their short names, the base first; all of the scenario if empty.</param>
    /// <param name="days">The days' short names; all if empty.</param>
    /// <param name="options">What is asked; null for the usual.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build or day.</exception>
    public static SideBySide Of(Scenario scenario, IReadOnlyList<string> builds, IReadOnlyList<string> days,
        AnswerOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(builds);
        IReadOnlyList<string> names = builds.Count > 0 ? builds : [.. scenario.Builds.Keys];
        return Of([.. names.Select(name => new ComparedRig(name, RigAnswer.Of(scenario, name, days, options,
            cancellation: cancellation)))], cancellation: cancellation);
    }
}
