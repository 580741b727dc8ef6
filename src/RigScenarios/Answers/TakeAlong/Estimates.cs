using RigScenarios.Builds;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>Something to estimate, with what the answer says of it.</summary>
/// <param name="Name">Its short name, which stays the same whatever the rig.</param>
/// <param name="Kind">The question of the answer that it belongs to; null for the answer as a whole.</param>
/// <param name="Question">The question.</param>
/// <param name="Unit">The unit or the kind of thing that is asked for.</param>
/// <param name="Answer">What the answer says.</param>
internal sealed record Estimate(string Name, QuestionKind? Kind, string Question, string Unit, string Answer);

/// <summary>What is worth an estimate of one's own: only what this rig and these days have, and the answer knows.</summary>
internal static class Estimates
{
    public static IReadOnlyList<Estimate> Of(RigAnswer answer) => [.. Power(answer), .. Balance(answer), .. Rest(answer)];

    private static IEnumerable<Estimate> Power(RigAnswer answer)
    {
        var simulation = answer.Simulation;
        yield return new("energy", QuestionKind.Power,
            "How much energy does the rig take from its batteries?", "Wh",
            $"{simulation.FromPacks.WattHours:0} Wh{(simulation.Completes ? "" : ", as far as it runs")}.");
        yield return new("until", QuestionKind.Power,
            "Until when does it run? Does it last until wrap, with what left?", "time",
            Line(answer, QuestionKind.Power));
        if (simulation.Swaps.Count > 0)
        {
            var first = simulation.Swaps[0];
            var times = new AnswerTimes(answer.Plan.Days);
            yield return new("first-swap", QuestionKind.Power,
                "When is the first swap, and how many are there?", "time, number",
                $"{times.At(first.Time)}, in {times.Title(first.Day, first.Block)}; "
                    + (simulation.Swaps.Count == 1 ? "no other." : $"{simulation.Swaps.Count} in all."));
        }
        yield return new("wiring", QuestionKind.Wiring,
            "Which limit between battery and devices has the least left?", "part, A or V",
            Line(answer, QuestionKind.Wiring));
    }

    private static IEnumerable<Estimate> Balance(RigAnswer answer)
    {
        if (answer.Balance is not { } balance)
            yield break;
        yield return new("centre", QuestionKind.Balance,
            "What does it weigh, and where is its centre of gravity, seen from the body's tripod socket?", "kg, mm",
            BalanceWords.Centre(balance));
        if (BalanceWords.Setting(balance) is { } setting)
            yield return new("setting", QuestionKind.Balance,
                "Where does the camera plate go, and which counterbalance?", "mm, N·m", setting);
        else if (answer.TheBuild.Stance != Stance.Tripod)
            yield return new("carried", QuestionKind.Balance,
                "What do shoulder and hands carry?", "kg", BalanceWords.Answer(balance));
        if (TripodWords.Tipping(balance) is { } tipping)
            yield return new("tipping", QuestionKind.Stand,
                "At what lean does it tip over, and by what push at the camera plate?", "°, kg", tipping);
    }

    private static IEnumerable<Estimate> Rest(RigAnswer answer)
    {
        if (answer.Of(QuestionKind.Stand) is not null)
            yield return new("stand", QuestionKind.Stand,
                "What is nearest to its limit: a joint, the tripod, the lift?", "part",
                Line(answer, QuestionKind.Stand));
        if (answer.Of(QuestionKind.Travel) is not null)
            yield return new("travel", QuestionKind.Travel,
                "Which battery may not fly, and which needs the airline's approval?", "battery",
                Line(answer, QuestionKind.Travel));
        yield return new("works", null, "Will it work? If not: what decides it?", "yes or no", AnswerSentences.Headline(answer));
    }

    private static string Line(RigAnswer answer, QuestionKind kind) =>
        AnswerSentences.Questions(answer).First(line => line.Kind == kind).Words;
}
