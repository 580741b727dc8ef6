using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The words of the first screenful: the same in every face, changed here and nowhere else.</summary>
public static class AnswerSentences
{
    /// <summary>The verdict in one sentence with its clock time: "No: the camera stops at 22:24, 1 h 26 min before
    /// wrap."</summary>
    /// <param name="answer">The answer.</param>
    public static string Headline(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        if (TippingSentences.Headline(answer) is { } tips)
            return tips;
        var worst = answer.Questions.FirstOrDefault(question => question.Verdict == answer.Verdict);
        return answer.Verdict switch
        {
            Verdict.Holds =>
                $"Yes: {Lasts(answer)}"
                + (answer.Of(QuestionKind.Wiring) is not { Least: not null } ? ""
                    : TippingSentences.Stands(answer) is null ? ", and nothing is past a limit" : ", nothing is past a limit")
                + (TippingSentences.Stands(answer) is { } stands ? $", and {stands}." : "."),
            Verdict.Close when worst!.Kind == QuestionKind.Power => $"Just: {Lasts(answer)}; {CloseReserve(answer)}.",
            Verdict.Close => $"Just: {Lasts(answer)}, but {Lower(Reason(answer, worst!))}.",
            Verdict.NotKnown => $"Not known: {Lasts(answer)}, but a figure is missing for "
                + $"{Title(worst!.Kind, answer.TheBuild.Stance).ToLowerInvariant()}.",
            _ when worst!.Kind == QuestionKind.Power => 
                $"No: {ArrivalSentences.Cause(answer)}{Stops(answer)}{TippingSentences.Besides(answer)}.",
            _ => $"No: {Lasts(answer)}, but {Lower(Reason(answer, worst))}.",
        };
    }

    /// <summary>The questions with their titles, verdicts and least margins, in one line each.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<QuestionLine> Questions(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return [.. answer.Questions.Select(question => new QuestionLine(question.Kind,
            Title(question.Kind, answer.TheBuild.Stance), question.Verdict, Line(answer, question)))];
    }

    /// <summary>A question's name for people.</summary>
    /// <param name="kind">The question.</param>
    /// <param name="stance">How the rig is carried.</param>
    public static string Title(QuestionKind kind, Stance stance) => kind switch
    {
        QuestionKind.Power => "Power",
        QuestionKind.Wiring => "Wiring",
        QuestionKind.Balance => "Balance",
        QuestionKind.Stand => stance == Stance.Tripod ? "Tripod and joints" : "Joints",
        QuestionKind.Travel => "Travel",
        _ => "Cost",
    };

    /// <summary>What ends a run, as a clause.</summary>
    /// <param name="reason">The reason.</param>
    public static string Because(StopReason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return reason.Kind switch
        {
            StopKind.ShortOfVoltage => $"too little voltage at the {LimitSentences.Element(reason.Element ?? "device")}",
            StopKind.VoltageCutoff => "the battery's voltage is at its cut-off",
            StopKind.Empty => "the battery is empty",
            StopKind.PowerLimit => "the battery cannot deliver what is asked",
            StopKind.OverCurrent => "the current is past the battery's limit",
            StopKind.OverTemperature => "the battery is past its temperature limit",
            StopKind.PlannedSwap => "a planned swap",
            StopKind.NothingLeft => "no battery is left",
            StopKind.WaitingForCharge => "every battery waits for charge",
            _ => "nothing stopped it",
        };
    }

    /// <summary>The same for an answer whose build is known: a battery plate that runs short has a guard that acts.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="reason">The reason.</param>
    public static string Because(RigAnswer answer, StopReason reason)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(reason);
        return reason is { Kind: StopKind.ShortOfVoltage, Element: { } element } && element == answer.TheBuild.Plate
            ? "the battery plate's guard switches off" : Because(reason);
    }

    /// <summary>What is not known about the wiring.</summary>
    internal static IReadOnlyList<string> WiringMissing(PoweredBuild powered)
    {
        var bare = powered.Regulators.Keys.Concat(powered.Splitters.Keys).Concat(powered.Devices.Keys)
            .Where(thing => !powered.Links.TryGetValue(thing, out var link) || link.Cable is null)
                .Select(LimitSentences.Element).ToList();
        var unknown = powered.Devices.Where(device => device.Value.Voltage?.Minimum is null)
            .Select(device => LimitSentences.Element(device.Key)).ToList();
        var lines = new List<string>();
        if (bare.Count > 0)
            lines.Add($"No power cable is given for {string.Join(", ", bare)}: joined without resistance, so their real "
                + "voltage is lower.");
        if (unknown.Count > 0)
            lines.Add($"The least voltage is not known of {string.Join(", ", unknown)}: taken never to stop for it.");
        return lines;
    }

    /// <summary>Until when it lasts and what is left then: "it lasts until wrap at 23:50 with 1 h 27 min left".</summary>
    internal static string Lasts(RigAnswer answer)
    {
        if (!answer.Simulation.Completes || answer.NothingArrives)
            return Stops(answer);
        return ArrivalSentences.Without(answer) is { } missing ? $"without {missing} {Outcome(answer)}" : Outcome(answer);
    }

    /// <summary>The same without a word of what stays behind.</summary>
    internal static string Outcome(RigAnswer answer)
    {
        if (!answer.Simulation.Completes)
            return Stops(answer);
        var times = new AnswerTimes(answer.Plan.Days);
        var end = times.Wrap(answer.Plan.Days.Count - 1);
        var until = answer.Plan.Days[^1].Starts is null ? "it lasts the day" : $"it lasts until wrap {times.When(end)}";
        var tight = answer.Tightest.Day < answer.Plan.Days.Count
            ? $"; day {answer.Tightest.Day} is tightest, with {ReserveLeft(answer.Tightest.Reserve)} left" : "";
        return $"{until} with {ReserveLeft(answer.Reserve)} left{tight}";
    }

    /// <summary>The reserve: "1 h 27 min", "more than 5 days".</summary>
    internal static string ReserveLeft(Reserve reserve) =>
        reserve.IsLowerBound ? $"more than {AnswerTimes.Length(reserve.Time)}" : AnswerTimes.Length(reserve.Time);

    /// <summary>Which essential device stops first, when, and how long before the end of its day: "the camera stops at 22:24, 1 h
    /// 26 min before wrap".</summary>
    internal static string Stops(RigAnswer answer)
    {
        if (answer.NothingArrives)
            return ArrivalSentences.NothingArrives(answer);
        var times = new AnswerTimes(answer.Plan.Days);
        var name = answer.Simulation.Devices.FirstOrDefault(device => device.Value == answer.Simulation.FirstToStop).Key;
        if (answer.Simulation.FirstToStop is not { FirstStop: { } stop } || name is null)
            return "it stops before wrap";
        var before = times.Wrap(stop.Day - 1) - stop.At;
        return $"the {LimitSentences.Element(name)} stops {times.When(stop.At)}, {AnswerTimes.Length(before)} before wrap";
    }

    private static string CloseReserve(RigAnswer answer)
    {
        if (AgeOfAnswer.Doubt(answer) is { } least)
            return least;
        var doubt = QuestionRules.Doubt(answer);
        return answer.Tightest.Reserve.Time < doubt
            ? $"the prediction is good to about {AnswerTimes.Length(doubt)}"
            : $"{AnswerTimes.Length(answer.Options.Wish ?? Duration.Zero)} is wished";
    }

    private static string Line(RigAnswer answer, AnswerQuestion question) => question.Kind == QuestionKind.Power
        && FittedWords.RestsOn(answer.Plan) is { } rests ? $"{Own(answer, question)} {rests}" : Own(answer, question);

    private static string Own(RigAnswer answer, AnswerQuestion question) => question.Kind switch
    {
        QuestionKind.Power when answer.NothingArrives => $"{Upper(Stops(answer))}.",
        QuestionKind.Power when question.Verdict == Verdict.Fails =>
            $"{Upper(ArrivalSentences.Without(answer) is { } missing ? $"without {missing} {Stops(answer)}" : Stops(answer))}: "
                + $"{StopReasonOf(answer)}.{Back(answer)}",
        QuestionKind.Power when question.Verdict == Verdict.Close => $"{Upper(Lasts(answer))}; {CloseReserve(answer)}.",
        QuestionKind.Power => $"{Upper(Lasts(answer))}.",
        _ => Upper(Reason(answer, question)) + ".",
    };

    private static string Back(RigAnswer answer) => answer.ComesBack is not { } back ? ""
        : $" {ColdWords.Of(back, answer.Plan.Batteries.Count > 1 ? back.Battery : null)}";

    private static string StopReasonOf(RigAnswer answer) =>
        answer.Simulation.FirstToStop?.FirstStop is { } stop
            ? Because(answer, stop.Reason) : "the battery ends";

    /// <summary>What a question's verdict rests on, as a clause.</summary>
    private static string Reason(RigAnswer answer, AnswerQuestion question)
    {
        if (question.Kind == QuestionKind.Travel)
            return JourneySentences.Line(answer.Journeys);
        if (question.Kind == QuestionKind.Cost)
            return CostSentences.Line(answer);
        if (question.Verdict == Verdict.NotKnown)
            return string.Join(" ", question.Missing).TrimEnd('.');
        if (question.Least is not { } least)
        {
            return question.Kind == QuestionKind.Balance && answer.Balance is { } balance
                ? BalanceWords.Answer(balance).TrimEnd('.') : "no limit of it is known";
        }
        var times = new AnswerTimes(answer.Plan.Days);
        var passed = question.Limits.Count(limit => limit is { HasForce: true, IsPassed: true });
        var more = passed > 1 ? $"; {passed} limits are passed" : "";
        return $"{(least.IsPassed ? "" : "least left: ")}{LimitSentences.Of(least, times)}{more}";
    }

    internal static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];
}

/// <summary>A question in one line.</summary>
/// <param name="Kind">The question.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Words">What it rests on, in a sentence.</param>
public sealed record QuestionLine(QuestionKind Kind, string Title, Verdict Verdict, string Words);
