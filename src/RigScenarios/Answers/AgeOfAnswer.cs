using System.Text.Json.Nodes;
using RigScenarios.Simulation;

namespace RigScenarios.Answers;

/// <summary>What an answer says of the age of its batteries: in sentences, and for programs.</summary>
public static class AgeOfAnswer
{
    /// <summary>The section of the details; empty where no battery's life is told.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Lines(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var told = answer.Plan.Batteries.Where(battery => battery.Value.Life is not null)
            .Select(battery => (battery.Key, Known: battery.Value.KnownAge)).ToList();
        var first = told.SelectMany(battery => AgingSentences.HowOld(battery.Known).Select((line, i) => told.Count > 1 && i == 0
            ? $"{AnswerSentences.Upper(LimitSentences.Element(battery.Key))}: {line}" : line));
        var rest = told.SelectMany(battery => AgingSentences.Of(battery.Known).Skip(AgingSentences.HowOld(battery.Known).Count));
        return [.. first.Concat(Spread(answer) is { } spread ? [spread] : []).Concat(rest).Distinct()];
    }

    /// <summary>What the days do at the ends of what the ages may be: "Run at both ends of what its age may be: with the least,
    /// it stops at 21:40; with the most, 1 h 5 min left after wrap."; null where there is no band.</summary>
    /// <param name="answer">The answer.</param>
    public static string? Spread(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.AgeSpread is not { } spread ? null
            : $"Run at both ends of what its age may be: with the least, {End(answer, spread.Least, spread.LeastReserve)}; "
                + $"with the most, {End(answer, spread.Greatest, spread.GreatestReserve)}.";
    }

    /// <summary>Why days that last by the middle of the ages are close: "with the least that its age may have left it stops at
    /// 21:40"; null where the ages are no reason.</summary>
    internal static string? Doubt(RigAnswer answer)
    {
        if (!answer.Simulation.Completes || answer.AgeSpread is not { } spread)
            return null;
        var wish = answer.Options.Wish;
        if (spread.Least.Completes && !(spread.LeastReserve.Time < wish && answer.Tightest.Reserve.Time >= wish))
            return null;
        var end = $"with the least that its age may have left {End(answer, spread.Least, spread.LeastReserve)}";
        return spread.Least.Completes ? $"{end}, and {AnswerTimes.Length(wish!.Value)} is wished" : end;
    }

    /// <summary>The age of each battery, for programs.</summary>
    /// <param name="answer">The answer.</param>
    public static JsonArray Shape(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return new JsonArray([.. answer.Plan.Batteries.Select(battery =>
        {
            var known = battery.Value.KnownAge;
            return (JsonNode)new JsonObject
            {
                ["battery"] = battery.Key,
                ["known"] = !known.IsUnknown,
                ["measured"] = known.IsMeasured,
                ["capacity_left_percent"] = Round(known.Age.CapacityLeft.Percent),
                ["resistance_factor"] = Round(known.Age.ResistanceFactor),
                ["least_percent"] = Round(known.Ends?.Least.CapacityLeft.Percent),
                ["greatest_percent"] = Round(known.Ends?.Greatest.CapacityLeft.Percent),
                ["set"] = known.History?.Set.Name,
                ["warnings"] = new JsonArray([.. (known.History?.Warnings ?? [])
                    .Select(warning => (JsonNode)Cells.Aging.AgingWarningNames.Name(warning))]),
                ["words"] = new JsonArray([.. AgingSentences.Of(known).Select(line => (JsonNode)line)]),
            };
        })]);
    }

    private static string End(RigAnswer answer, SimulationResult result, Reserve reserve)
    {
        if (result.Completes)
            return $"{AnswerSentences.ReserveLeft(reserve)} left after wrap";
        var stop = result.FirstToStop?.FirstStop;
        return stop is null ? "it stops before wrap" : $"it stops {new AnswerTimes(answer.Plan.Days).When(stop.At)}";
    }

    private static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;
}
