using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Whether the tripod tips, as the headline says it: by the wind, the slope or the lean that were asked about.</summary>
internal static class TippingSentences
{
    /// <summary>The answer that begins with the tripod: where it tips, or only just stands; null where a question before it is as
    /// bad, or something else is worse.</summary>
    public static string? Headline(RigAnswer answer)
    {
        var worst = answer.Questions.FirstOrDefault(question => question.Verdict == answer.Verdict);
        if (worst is not { Kind: QuestionKind.Stand } || Decisive(answer) is not { } limit)
            return null;
        var rest = $"apart from that {AnswerSentences.Lasts(answer)}";
        if (worst.Verdict == Verdict.Fails && limit is { HasForce: true, IsPassed: true })
            return $"No: it tips{(IsBySlope(limit) ? " over by itself" : "")}: {Clause(limit)}; {rest}.";
        return worst.Verdict != Verdict.Close ? null
            : limit.IsPassed ? $"Just: {Clause(limit)}; {rest}."
            : StatedErrors.IsClose(limit) && limit.HasForce ? $"Just: it may tip: {Clause(limit)}; {rest}." : null;
    }

    /// <summary>The same in a few words: "it tips, 7.0 m/s too windy"; null where <see cref="Headline"/> is.</summary>
    public static string? Line(RigAnswer answer) => Headline(answer) is null || Decisive(answer) is not { } limit ? null
        : !limit.IsPassed ? $"it may tip, {LimitSentences.Away(limit)} left"
        : limit.Kind == LimitKind.Gust ? $"it tips, {LimitSentences.Away(limit)} too windy"
        : IsBySlope(limit) ? $"it tips over by itself, {LimitSentences.Away(limit)} too steep"
        : $"it tips {LimitSentences.Away(limit)} before the lean that is wanted";

    /// <summary>What is left until it tips, for the end of a line: ", 2.9 m/s until it tips"; empty where nobody asked, or it
    /// tips.</summary>
    public static string LeftInLine(RigAnswer answer) => Stands(answer) is null ? ""
        : $", {LimitSentences.Away(Decisive(answer)!)} until it tips";

    /// <summary>What is told after something else that fails: ", and the wind tips it, 4.2 m/s too strong"; empty where nothing
    /// tips it.</summary>
    public static string Besides(RigAnswer answer) => Decisive(answer) is not { HasForce: true, IsPassed: true } limit ? ""
        : limit.Kind == LimitKind.Gust ? $", and the wind tips it, {LimitSentences.Away(limit)} too strong"
        : ", and it tips over by itself";

    /// <summary>Where everything holds: "it stands: a gust of 12.9 m/s tips it, 10.0 m/s are expected"; null where nobody asked
    /// about wind, slope or lean.</summary>
    public static string? Stands(RigAnswer answer) =>
        answer.Of(QuestionKind.Stand)?.Verdict == Verdict.Holds && Decisive(answer) is { IsPassed: false } limit
            ? $"it stands: {Clause(limit)}" : null;

    /// <summary>Of what was asked about the tripod's tipping what is passed; else the wind, which pushes on the slope; else the
    /// slope alone, else the lean that is wanted.</summary>
    private static Limit? Decisive(RigAnswer answer) => answer.Of(QuestionKind.Stand)?.Limits
        .Where(limit => limit.Kind == LimitKind.Gust || (limit.Kind == LimitKind.TipAngle
            && (limit.HasForce || answer.TheBuild.OnLegs?.WantedLean is not null)))
        .OrderByDescending(limit => limit is { HasForce: true, IsPassed: true }).ThenByDescending(limit => limit.IsPassed)
        .ThenByDescending(limit => limit.Kind == LimitKind.Gust).ThenByDescending(IsBySlope).FirstOrDefault();

    /// <summary>The limit in words, with what is left or missing.</summary>
    private static string Clause(Limit limit)
    {
        var (tips, asked) = (LimitSentences.Quantity(limit.Worst, limit.Kind),
            LimitSentences.Quantity(limit.Allowed!, limit.Kind));
        var away = LimitSentences.Away(limit);
        if (limit.Kind == LimitKind.Gust)
            return limit.IsPassed ? $"gusts of {asked} are expected and {tips} tip it, {away} too many"
                : limit.Allowed is Speed { MetersPerSecond: 0 } ? $"a gust of {tips} tips it, no wind is expected"
                : $"a gust of {tips} tips it, {asked} are expected, {away} left";
        if (!IsBySlope(limit))
            return $"it tips at a lean of {tips}, {asked} is wanted, {away} {(limit.IsPassed ? "short" : "left")}";
        return limit.Allowed is Angle { Degrees: 0 } ? "on level ground"
            : limit.IsPassed ? $"the slope is {asked} and it tips at {tips}, {away} too steep"
            : $"it tips at a slope of {tips}, this one has {asked}, {away} left";
    }

    private static bool IsBySlope(Limit limit) => limit is { Kind: LimitKind.TipAngle, HasForce: true };
}
