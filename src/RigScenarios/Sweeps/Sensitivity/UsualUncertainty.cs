using RigScenarios.Answers;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// What of a build and its days nobody knows exactly where nobody said so, and by how much: labels, ages, draws from data sheets,
/// the forecast, masses and places, and the prediction itself. Each has a source, or says that it is common practice;
/// docs/uncertainty.md has the table.
/// </summary>
/// <param name="Figures">The figures.</param>
/// <param name="Correlations">Which of them go together.</param>
/// <param name="TakenAsGiven">What may be off too and is left as it stands, in sentences.</param>
public sealed record UsualUncertainty(
    IReadOnlyList<UnsureFigure> Figures, IReadOnlyList<Correlation> Correlations, IReadOnlyList<string> TakenAsGiven)
{
    // Of things that have one cause and are still not the same: our choice, no source.
    internal const double OneCause = 0.9;

    /// <summary>What is uncertain about an answer.</summary>
    /// <param name="answer">The answer.</param>
    public static UsualUncertainty Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var batteries = UnsureBatteries.Of(answer);
        var draws = UnsureDraws.Of(answer);
        List<UnsureFigure> figures =
        [
            .. batteries.Figures.Concat(draws.Figures).Concat(UnsureSurroundings.Air(answer))
                .Concat(UnsurePrediction.Of(answer)).Select(figure => figure with { OnlyInDays = true }),
            .. UnsureRig.Of(answer),
        ];
        return new([.. figures.DistinctBy(figure => figure.Field.Path)], [.. batteries.Correlations, .. draws.Correlations],
            [.. UnsureSurroundings.TakenAsGiven(answer)]);
    }

    /// <summary>The same with spreads that somebody gave: each goes before the usual one of its field.</summary>
    /// <param name="given">The fields with their spreads.</param>
    /// <param name="correlations">Which of them go together.</param>
    public UsualUncertainty With(IReadOnlyList<UncertainField> given, IReadOnlyList<Correlation> correlations)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(correlations);
        var known = Figures.ToDictionary(figure => figure.Field.Path);
        var said = given.Select(field => known.TryGetValue(field.Path, out var usual)
            ? UnsureFigure.Given(field) with
            {
                Name = usual.Name, Act = usual.Act, OnlyAtRest = usual.OnlyAtRest, OnlyInDays = usual.OnlyInDays,
            }
            : UnsureFigure.Given(field)).ToList();
        var paths = given.Select(field => field.Path).ToHashSet();
        return this with
        {
            Figures = [.. Figures.Where(figure => !paths.Contains(figure.Field.Path)), .. said],
            Correlations = [.. Correlations.Where(usual => !correlations.Any(other => Joins(other, usual))), .. correlations],
        };
    }

    /// <summary>Only spreads that somebody gave; everything else is taken as it stands.</summary>
    /// <param name="given">The fields with their spreads.</param>
    /// <param name="correlations">Which of them go together.</param>
    public static UsualUncertainty Only(IReadOnlyList<UncertainField> given, IReadOnlyList<Correlation> correlations)
    {
        ArgumentNullException.ThrowIfNull(given);
        return new([.. given.Select(UnsureFigure.Given)], correlations,
            ["Everything that is not named as uncertain is taken as it stands, the prediction's own error with it."]);
    }

    /// <summary>The fields, for a plan.</summary>
    public IReadOnlyList<UncertainField> Fields => [.. Figures.Select(figure => figure.Field)];

    private static bool Joins(Correlation one, Correlation other) =>
        (one.First == other.First && one.Second == other.Second) || (one.First == other.Second && one.Second == other.First);
}
