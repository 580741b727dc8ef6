using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The answer in one line, for a place that has room for no more: the verdict and the hours.</summary>
public static class AnswerLine
{
    /// <summary>The line: "No: stops at 22:24, after 6 h 40 min", "Yes: lasts the day, 1 h 27 min left",
    /// "No, wiring: lasts the day, 1 h 27 min left".</summary>
    /// <param name="answer">The answer.</param>
    public static string Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (TippingSentences.Line(answer) is { } tips)
            return $"{Word(answer.Verdict)}: {tips}";
        if (answer.NothingArrives)
            return "No: no battery gets there";
        var worst = answer.Questions.FirstOrDefault(question => question.Verdict == answer.Verdict);
        var about = answer.Verdict == Verdict.Holds || worst is null or { Kind: QuestionKind.Power } ? ""
            : $", {AnswerSentences.Title(worst.Kind, answer.TheBuild.Stance).ToLowerInvariant()}";
        return $"{Word(answer.Verdict)}{about}: {Hours(answer)}";
    }

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "Yes",
        Verdict.Close => "Just",
        Verdict.Fails => "No",
        _ => "Not known",
    };

    private static string Hours(RigAnswer answer)
    {
        var days = answer.Plan.Days;
        if (answer.Simulation.Completes)
            return $"{(days.Count > 1 ? $"lasts all {days.Count} days" : "lasts the day")}, "
                + $"{AnswerSentences.ReserveLeft(answer.Tightest.Reserve)} left{TippingSentences.LeftInLine(answer)}";
        var runs = AnswerTimes.Length(answer.Simulation.Runtime);
        if (answer.Simulation.FirstToStop?.FirstStop is not { } stop)
            return $"runs {runs}";
        // "after 3 h 10 min" where the day has no clock, and no second time the same.
        return days.Count > 1 || days[0].Starts is not null
            ? $"stops {new AnswerTimes(days).When(stop.At)}{(days.Count > 1 ? "" : $", after {runs}")}"
            : $"stops after {runs}";
    }
}
