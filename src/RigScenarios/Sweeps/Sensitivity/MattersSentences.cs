using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Which uncertainty matters, in sentences for people who plan a day.</summary>
public static class MattersSentences
{
    // Eight, five and two days of ten.
    private static readonly double[] ToldShares = [0.2, 0.5, 0.8];

    // A share below this is told together with all others; one that is more by less than this is told as the same.
    private const double Least = 0.02;
    private const double Noticed = 0.05;

    /// <summary>The answer in one sentence: "The day lasts 8 times in 10 (78 %, standard error 1.3 %, of 1024 runs)."</summary>
    /// <param name="answer">The answer.</param>
    public static string Headline(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (answer.Lasts is not { } lasts)
            return Spread(answer);
        var subject = answer.AsGiven.Days.Count == 1 ? "The day lasts" : "The days last";
        return lasts.Share is null ? "Whether it lasts is known in no run."
            : $"{subject} {InTens.Of(lasts)}{Error(lasts)}.";
    }

    /// <summary>How late it gets, and how the whole answer comes out.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Chances(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var lines = new List<string>();
        if (answer.Lasts is not null)
        {
            lines.AddRange(ToldShares.Select(below => Lasts(answer, below)).OfType<string>());
            if (lines.Count == 0)
                lines.Add(Spread(answer));
            lines.Add($"With every figure as it stands in the file {AnswerSentences.Lasts(answer.AsGiven)}.");
        }
        if (answer.Whole is { } whole)
            lines.Add(Whole(whole, answer.AsGiven.TheBuild.Stance));
        return lines;
    }

    /// <summary>What moves the figure, that which moves it most first; what moves it little in one line.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Shares(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var indices = answer.Indices;
        if (!(indices.Variance > 0))
            return ["Nothing of it moves the figure."];
        var told = indices.Things.Where(thing => thing.Total.Value >= Least).ToList();
        var rest = indices.Things.Count - told.Count;
        List<string> lines = [.. told.Select(thing => $"{AnswerSentences.Upper(thing.Name)}: {Share(thing.FirstOrder)} of the "
            + $"spread by itself{(thing.Total.Value - thing.FirstOrder.Value < Noticed ? ""
                : $", {Share(thing.Total)} with what it does together with others")}.")];
        if (rest > 0)
            lines.Add($"{rest} more with less than {InTens.Percent(Least)} each.");
        return lines;
    }

    /// <summary>One thing at a time: "Draw of the camera in record from 17 W to 25 W: 1 h 5 min left to -20 min."</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="most">How many at most.</param>
    public static IReadOnlyList<string> Alone(SensitivityAnswer answer, int most = 5)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Tornado.Bars.Where(bar => bar.Width > 0).Take(most).Select(bar => $"{AnswerSentences.Upper(bar.Name)} "
            + $"from {ShortNumber.Of(bar.LowText)} to {ShortNumber.Of(bar.HighText)}: {Value(answer, bar.AtLow)} to "
            + $"{Value(answer, bar.AtHigh)}.")];
    }

    /// <summary>What to measure first, and what that would bring at most.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="most">How many at most.</param>
    public static IReadOnlyList<string> First(SensitivityAnswer answer, int most = 3)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var now = Math.Sqrt(answer.Indices.Variance);
        var lines = answer.Removals.Where(gain => gain.VarianceGone is { Value: >= Noticed, Low: > 0 }).Take(most)
            .Select(gain => $"{AnswerSentences.Upper(gain.Act)}: the {Name(answer)} would be known to "
                + $"±{Value(answer, gain.SpreadLeft)} instead of ±{Value(answer, now)}{Guess(gain.Lasts, "whether it lasts")}.")
            .ToList();
        lines.AddRange((answer.Whole?.Gains ?? []).Take(most).Select(gain => $"{AnswerSentences.Upper(gain.Act)}: "
            + $"{Guess(gain.Guess, "whether anything of the whole answer fails")[2..]}."));
        return lines.Count > 0 ? lines : ["Nothing of it, known alone, would make the answer noticeably surer."];
    }

    /// <summary>What all of this rests on.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Basis(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var figures = answer.Uncertain.Figures;
        var unsourced = figures.Count(figure => figure.Source?.Standing is Cells.Standing.CommonPractice
            or Cells.Standing.FromMemory);
        var given = figures.Count(figure => figure.IsGiven);
        List<string> lines =
        [
            $"Taken as uncertain: {figures.Count} figures{(given > 0 ? $", {given} with a spread that was given" : "")}"
                + $"{(unsourced > 0 ? $", {unsourced} by common practice without a source" : "")}. The chances are no surer than "
                + "these spreads.",
            "A deviation (±) holds about two runs in three, twice that holds 95 in 100. What measuring would bring is told for "
                + "exact knowledge; a meter has an error of its own.",
            .. answer.Uncertain.TakenAsGiven,
            $"{answer.Runs} scenarios, seed {answer.Question.Options.Seed}. {answer.Way.Reason}",
        ];
        var besides = answer.Whole is null ? 0 : answer.Question.Uncertain!.Figures.Count - figures.Count;
        if (besides > 0)
            lines.Insert(1, $"For the whole answer {besides} more are uncertain that have no part in this figure, such as "
                + $"{answer.Question.Uncertain!.Figures.First(figure => !figures.Contains(figure)).Name}.");
        if (answer.Indices.RowsUnknown > 0)
            lines.Add($"In {answer.Indices.RowsUnknown} of {answer.Indices.Rows} rows the figure is not known in some run; they "
                + "are left out of the shares.");
        return lines;
    }

    /// <summary>What was varied, each with its spread and where that comes from: "Air temperature: -8 °C +- 1.34 °C;
    /// …".</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Uncertain(SensitivityAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Uncertain.Figures.Select(figure =>
            $"{AnswerSentences.Upper(figure.Name)}: {figure.Field.Spread.Words}; {figure.Why}"
                + $"{(figure.Source is { } source ? $" ({source})" : "")}.")];
    }

    private static string? Lasts(SensitivityAnswer answer, double below)
    {
        if (answer.EndsAt is { } ends)
        {
            if (ends.At(below) is not { } hours)
                return null;
            var times = new AnswerTimes(answer.AsGiven.Plan.Days);
            var (end, wrap) = (Duration.FromHours(hours), times.Wrap(answer.AsGiven.Plan.Days.Count - 1));
            return end >= wrap ? $"{InTens.Days(1 - below)} last to wrap with {AnswerTimes.Length(end - wrap)} left or more."
                : $"{InTens.Days(1 - below)} last beyond {times.At(end)}.";
        }
        return answer.Question.Figure != SensitivityQuestion.UsualFigure || answer.Bands.At(below) is not { } reserve ? null
            : reserve >= 0 ? $"{InTens.Days(1 - below)} have {AnswerTimes.Length(Duration.FromHours(reserve))} left or more on "
                + "the tightest day."
            : $"{InTens.Days(1 - below)} miss no more than {AnswerTimes.Length(Duration.FromHours(-reserve))} of the "
                + "tightest day.";
    }

    private static string Spread(SensitivityAnswer answer)
    {
        var place = answer.Bands.Places[0];
        return place.Known == 0 ? $"The {Name(answer)} is known in no run."
            : answer.Bands is var bands && bands.At(0.1) is { } low && bands.At(0.9) is { } high && bands.At(0.5) is { } middle
                ? $"In 8 of 10 runs the {Name(answer)} is {Value(answer, low)} to {Value(answer, high)}; half have more than "
                    + $"{Value(answer, middle)}."
                : $"The {Name(answer)} has a deviation of {Value(answer, Math.Sqrt(answer.Indices.Variance))}.";
    }

    private static string Whole(WholeChance whole, Stance stance)
    {
        if (whole.NothingFails.Share is null)
            return "Whether the whole answer holds is not known in any run: a figure is missing.";
        var unknown = whole.NothingFails.Unknown > 0
            ? $" In {whole.NothingFails.Unknown} more a figure is missing, and nobody can say." : "";
        var failing = whole.Failing.OrderByDescending(one => one.Value)
            .Select(one => $"{AnswerSentences.Title(one.Key, stance).ToLowerInvariant()} {one.Value}").ToList();
        return $"Nothing of the whole answer fails {InTens.Of(whole.NothingFails)}{Error(whole.NothingFails)}"
            + $".{(failing.Count > 0 ? $" What fails, in how many runs: {string.Join(", ", failing)}." : "")}{unknown}";
    }

    private static string Guess(GuessGain? guess, string about) => guess is not { Gain.DecimalFractions: > 0 } ? ""
        : $"; you would be wrong about {about} {InTens.Of(guess.WrongThen)} instead of {InTens.Of(guess.WrongNow)}";

    private static string Error(Chance chance) => chance.Share is not { } share ? ""
        : chance.Yes == 0 || chance.No == 0 ? $", so that the chance is {InTens.Percent(chance.Interval()!.Value.Low
            .DecimalFractions)} to {InTens.Percent(chance.Interval()!.Value.High.DecimalFractions)}"
        : $" ({InTens.Percent(share.DecimalFractions)}, standard error "
            + $"{InTens.Percent(chance.StandardError!.Value.DecimalFractions)}, of {chance.Known} runs)";

    private static string Share(IndexEstimate index) => $"{InTens.Percent(Math.Max(0, index.Value))} "
        + $"({InTens.Percent(Math.Max(0, index.Low))} to {InTens.Percent(Math.Max(0, index.High))})";

    // What people call the usual figure; any other has the name of its column.
    private static string Name(SensitivityAnswer answer) => answer.Figure.Name switch
    {
        SensitivityQuestion.UsualFigure => "reserve",
        var name => $"figure {name}",
    };

    private static string Value(SensitivityAnswer answer, double value) => double.IsNaN(value) ? "not known"
        : answer.Figure.Unit == "h" ? AnswerTimes.Length(Duration.FromHours(value))
        : string.Create(CultureInfo.InvariantCulture, $"{value:G4} {answer.Figure.Unit}").TrimEnd();
}
