using RigScenarios.Fits;

namespace RigScenarios.Charts.Fits;

/// <summary>A fit as charts: its notes and logs against what was predicted, and what it says of each unknown.</summary>
public static class FitFigures
{
    /// <summary>The notes over what the fitted battery does; null where no note has a time.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static Figure? Notes(FitResult fit, string title = "Do your notes go together?",
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        if (fit.Notes.Count == 0)
            return null;
        return PredictedAgainstMeasured.Of("fit-notes", title, new ChartAxis("runtime", "h"),
            [.. fit.Problem.Notes.Zip(fit.Notes, Point)],
            "The bars hold 95 % of what a note may stand for: no two days are alike, and clocks are read roughly.", cautions);
    }

    /// <summary>Each log with the predicted voltage over it, in their order.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static IReadOnlyList<Figure> Logs(FitResult fit, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return
        [
            .. fit.Logs.Where(log => log.Course.Count > 0).Select(log => LogOverPrediction.Of(
                $"fit-log-{Figure.SlugOf(log.Log)}", $"{log.Log}: measured and predicted", new ComparedLog(log.Log,
                    [.. log.Course.Select(moment => moment.Time.Hours)],
                    [.. log.Course.Select(moment => moment.Compared ? moment.Measured.Volts : double.NaN)],
                    [.. log.Course.Select(moment => moment.Predicted.Volts)],
                    [.. log.Course.Select(moment => moment.Compared)])
                {
                    Amperes = [.. log.Course.Select(moment => moment.Current.Amperes)],
                },
                $"The log counts as {log.Blocks} independent voltages, however many rows it has.", cautions)),
        ];
    }

    /// <summary>All shares that the fit found, before and after, as spans.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static Figure Spans(FitResult fit, string title = "What do they tell of the battery?",
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return FitSpans.Of([.. Shares(fit).Select(Value)], title, cautions: cautions);
    }

    /// <summary>How likely each share is, before and after: a figure for each.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static IReadOnlyList<Figure> Posteriors(FitResult fit, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        return [.. Shares(fit).Select(Value).Select(value => FitPosterior.Of(value, $"How well is the {value.Name} known?",
            cautions: cautions))];
    }

    /// <summary>Two shares together for each pair that the data do not separate; none where they separate all.</summary>
    /// <param name="fit">The fit.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static IReadOnlyList<Figure> Joint(FitResult fit, IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(fit);
        var unknowns = fit.Estimates.Select(estimate => estimate.Unknown).ToList();
        return
        [
            .. fit.Inseparable.Where(pair => pair is { First.IsLogarithm: true, Second.IsLogarithm: true })
                .Select(pair => (X: unknowns.IndexOf(pair.First), Y: unknowns.IndexOf(pair.Second)))
                .Where(pair => pair is { X: >= 0, Y: >= 0 })
                .Select(pair => FitPosterior.Joint(Value(fit.Estimates[pair.X]), Value(fit.Estimates[pair.Y]),
                    fit.Correlation[pair.X][pair.Y], "Which of the two is it?",
                    "A long and narrow area: the data fix the two together, and what each is alone rests on what was assumed.",
                    cautions)),
        ];
    }

    private static IEnumerable<FitEstimate> Shares(FitResult fit) =>
        fit.Estimates.Where(estimate => estimate.Unknown is { IsMain: true, IsLogarithm: true });

    private static FittedValue Value(FitEstimate estimate) => new(Name(estimate.Unknown), estimate.Prior.Mean,
        estimate.Prior.Deviation, estimate.Log, estimate.StandardError)
    {
        Of = estimate.Unknown.Kind switch
        {
            UnknownKind.Capacity => "of the label",
            UnknownKind.Resistance => "of a new battery's",
            _ => "of what was given",
        },
        Low = estimate.Low,
        High = estimate.High,
    };

    private static string Name(FitUnknown unknown) => unknown.Kind switch
    {
        UnknownKind.Capacity => "capacity",
        UnknownKind.Resistance => "resistance",
        _ => unknown.Of is { } device ? $"draw of {device}" : "draw of all devices",
    };

    private static ComparedPoint Point(FieldNote note, FittedNote met)
    {
        var measured = (note.Runtime ?? note.StillRunning!.Value).Hours;
        var times = Math.Exp(FittedValue.TwoSided95 * note.Deviation);
        return new ComparedPoint(note.Id, met.Predicted.Hours, measured)
        {
            As = met.LeftOut ? ComparedAs.LeftOut : note.Runtime is null ? ComparedAs.AtLeast : ComparedAs.Measured,
            Least = note.Runtime is null ? null : measured / times,
            Greatest = note.Runtime is null ? null : measured * times,
        };
    }
}
