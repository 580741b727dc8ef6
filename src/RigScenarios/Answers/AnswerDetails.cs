using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>One section of the details: a question with its limits, the least left first, and what holds with ease in one
/// line.</summary>
/// <param name="Kind">The question.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Limits">The limits that are told one by one.</param>
/// <param name="Lines">The same in words, and after them what is missing.</param>
/// <param name="Folded">What holds with ease, in one line; null where nothing does.</param>
public sealed record DetailSection(QuestionKind Kind, string Title, IReadOnlyList<Limit> Limits, IReadOnlyList<string> Lines,
    string? Folded)
{
    /// <summary>Its title with the order of its lines.</summary>
    public string Heading => Kind == QuestionKind.Cost ? $"{Title}, dearest first" : $"{Title}, least left first";
}

/// <summary>The details below the first screenful.</summary>
public static class AnswerDetails
{
    private const double EasyShare = 0.3;
    private const double EasyVolts = 1;
    private const double EasyKelvin = 10;
    private const double EasyMillimetres = 20;

    /// <summary>A section for each question that has limits, and for cost, in the order of the questions.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<DetailSection> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var times = new AnswerTimes(answer.Plan.Days);
        return [.. answer.Questions.Where(question => question.Limits.Count > 0 || question.Missing.Count > 0
            || question.Kind == QuestionKind.Cost).Select(question => question.Kind == QuestionKind.Cost
            ? CostSentences.Section(answer, question) : Section(answer, question, times))];
    }

    /// <summary>Whether a limit holds with ease: with more than 30 % left, or 1 V, 10 K, 20 mm. A limit without a rating does
    /// not, for nobody knows.</summary>
    /// <param name="limit">The limit.</param>
    public static bool HoldsWithEase(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        return limit.Kind switch
        {
            LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff => limit.Left > EasyVolts,
            LimitKind.Temperature => limit.Left > EasyKelvin,
            LimitKind.Travel => limit.Left > EasyMillimetres,
            LimitKind.Clamping when StatedErrors.IsClose(limit) => false,
            _ => limit.Share > EasyShare,
        };
    }

    private static DetailSection Section(RigAnswer answer, AnswerQuestion question, AnswerTimes times)
    {
        var held = question.Limits.Where(limit => QuestionRules.IsHeld(answer.Powered, limit) && !limit.IsPassed).ToHashSet();
        var unrated = question.Limits.Where(limit => limit.Allowed is null).ToList();
        var near = question.Limits.Where(limit => !held.Contains(limit) && limit.Allowed is not null && !HoldsWithEase(limit))
            .ToList();
        // Of one part's steady and momentary loads the one with the least left is told, and any other that is passed.
        var told = near.Where(limit => limit.IsPassed).Concat(near.DistinctBy(limit => (limit.Element, limit.Kind))).Distinct()
            .OrderBy(near.IndexOf).ToList();
        var folded = question.Limits.Count - near.Count - unrated.Count;
        var lines = told.Select(limit => Words(limit, times)).Concat(question.Missing);
        if (near.Count > told.Count)
            lines = lines.Append($"{near.Count - told.Count} more of the same parts hold, with as much left or more.");
        if (unrated.Count > 0)
            lines = lines.Append($"No rating is known for "
                + $"{string.Join(", ", unrated.Select(limit => LimitSentences.Element(limit.Element)).Distinct())}.");
        return new(question.Kind, AnswerSentences.Title(question.Kind, answer.TheBuild.Stance), told, [.. lines],
            folded == 0 ? null : Fold(question, near, folded));
    }

    /// <summary>A limit as a line of the details.</summary>
    internal static string Words(Limit limit, AnswerTimes times) => $"{Mark(limit)}{LimitSentences.Of(limit, times)}.";

    private static string Fold(AnswerQuestion question, List<Limit> told, int folded)
    {
        var rest = question.Limits.Where(limit => limit.Allowed is not null && !told.Contains(limit)).ToList();
        List<string> least = [];
        if (rest.Exists(limit => limit.Kind is not (LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff
            or LimitKind.CutOff or LimitKind.Temperature or LimitKind.Travel)))
            least.Add($"{100 * EasyShare:0} %");
        if (rest.Exists(limit => limit.Kind is LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff
            or LimitKind.CutOff && limit.Left > EasyVolts))
            least.Add($"{EasyVolts:0} V");
        if (rest.Exists(limit => limit.Kind == LimitKind.Temperature))
            least.Add($"{EasyKelvin:0} K");
        if (rest.Exists(limit => limit.Kind == LimitKind.Travel))
            least.Add($"{EasyMillimetres:0} mm");
        var more = told.Count > 0 ? " more" : "";
        var ease = least.Count == 0 ? ", held by a regulator"
            : $", {(folded == 1 ? "" : "each ")}with more than {string.Join(" or ", least)} left";
        return folded == 1 ? $"1{more} limit holds{ease}." : $"{folded}{more} limits hold{ease}.";
    }

    /// <summary>A figure to compare with binds nobody, and says so.</summary>
    private static string Mark(Limit limit) => limit.Basis.Force == LimitForce.Yardstick ? "To compare: " : "";
}
