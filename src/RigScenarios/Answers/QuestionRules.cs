using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>How a verdict follows from figures: the rules of all questions in one place.</summary>
internal static class QuestionRules
{
    /// <summary>Do all essential devices run to the end of the plan?</summary>
    /// <param name="result">How the days went.</param>
    /// <param name="doubt">What the prediction of the time may be off by.</param>
    /// <param name="wish">The reserve that is wished; null for none.</param>
    /// <param name="reserve">The least reserve of days that each begin with charged batteries; that of the result where there is
    /// only one.</param>
    /// <param name="ages">The same days at the ends of what the batteries' ages may be; null where no life is told.</param>
    public static AnswerQuestion Power(
        SimulationResult result, Duration doubt, Duration? wish, Reserve reserve, Lazy<AgeSpread?>? ages = null)
    {
        var verdict = !result.Completes ? Verdict.Fails
            : !reserve.IsLowerBound && reserve.Time < doubt ? Verdict.Close
            : reserve.Time < wish ? Verdict.Close
            // Whoever is in doubt already need not run both ends.
            : ages?.Value is { } spread && (!spread.Least.Completes || spread.LeastReserve.Time < wish) ? Verdict.Close
            : Verdict.Holds;
        // A day can fail by minutes that a late swap costs, with hours left at its end: it is no nearer to holding for that.
        var missing = result.Completes ? 0 : Math.Max(1.0 / 60, -reserve.Time.Hours);
        return new(QuestionKind.Power, verdict, []) { Shortfall = missing };
    }

    /// <summary>
    /// What the prediction of a time may be off by: the error of the model over that time and, of a cold battery, what its own
    /// heat may change. The two have nothing to do with each other, so their squares add up.
    /// </summary>
    public static Duration Doubt(RigAnswer answer)
    {
        var share = (answer.Simulation.ExpectedError.Share ?? ExpectedError.WhereNotMeasured).DecimalFractions;
        var model = share * (answer.Working + answer.Tightest.Reserve.Time).Seconds;
        var warmth = Math.Max(0, -(answer.Warmth?.Cooled.Seconds ?? 0));
        return Duration.FromSeconds(double.Hypot(model, warmth));
    }

    /// <summary>Is any limit passed?</summary>
    /// <param name="kind">The question.</param>
    /// <param name="limits">Its limits.</param>
    /// <param name="counts">Which of them count for the verdict, besides having a rating.</param>
    /// <param name="missing">What nobody gave.</param>
    /// <param name="ranks">Which of those can be the nearest one while they hold; null for all.</param>
    public static AnswerQuestion OfLimits(QuestionKind kind,
        IEnumerable<Limit> limits, Func<Limit, bool> counts, IReadOnlyList<string> missing, Func<Limit, bool>? ranks = null)
    {
        ranks ??= _ => true;
        var all = Limit.LeastLeftFirst(limits);
        var forceful = all.Where(limit => limit.HasForce && counts(limit)).ToList();
        var verdict = forceful.Exists(limit => limit.IsPassed) ? Verdict.Fails
            : forceful.Exists(limit => ranks(limit) && StatedErrors.IsClose(limit)) ? Verdict.Close
            : forceful.Count == 0 && missing.Count > 0 ? Verdict.NotKnown
            : Verdict.Holds;
        return new(kind, verdict, all)
        {
            Least = forceful.FirstOrDefault(limit => limit.IsPassed || ranks(limit)),
            Missing = missing,
            Shortfall = forceful.Where(limit => limit.IsPassed).Sum(limit => Math.Clamp(-limit.Share!.Value, 0.001, 10)),
        };
    }

    /// <summary>
    /// Which limits of a run count for the wiring question. A dip for a moment just where the rig stops is part of that stop,
    /// which the power question
    /// tells; a dip before is a limit like others.
    /// </summary>
    public static Func<Limit, bool> CountsIn(SimulationResult result) => limit => CountsForWiring(limit)
        && !(limit.Worst is ElectricPotential && limit.At is { } at && result.FirstStop is { } stop
            && Math.Abs((at.Time - stop.At).Minutes) < 1);

    /// <summary>
    /// A steady voltage at its lower limit is where the battery or a cable ends the day: that is told by the power question, with
    /// its time. For a moment it
    /// is a limit like others.
    /// </summary>
    public static bool CountsForWiring(Limit limit) => limit.Case != LoadCase.Steady
        || limit.Kind is not (LimitKind.LowestVoltage or LimitKind.Input or LimitKind.SwitchOff or LimitKind.CutOff);

    /// <summary>
    /// Whether a voltage is held by a regulator or an outlet that holds one: it stands at the same small distance all day, which
    /// says nothing, so that it is
    /// never ranked as the nearest limit.
    /// </summary>
    public static bool IsHeld(PoweredBuild powered, Limit limit)
    {
        if (limit.Kind is not (LimitKind.LowestVoltage or LimitKind.Input))
            return false;
        for (var at = limit.Element; FeedOf(powered, at) is { } feed; at = feed)
        {
            if (powered.Regulators.ContainsKey(feed)
                || (powered.Links.TryGetValue(at, out var link) && link.OutletData?.Voltage is not null))
                return true;
        }
        return false;
    }

    private static string? FeedOf(PoweredBuild powered, string thing) =>
        powered.Devices.TryGetValue(thing, out var device) ? device.FedBy
        : powered.Regulators.TryGetValue(thing, out var regulator) ? regulator.FedBy
        : powered.Splitters.TryGetValue(thing, out var splitter) ? splitter.FedBy : null;

    /// <summary>Do the batteries get there?</summary>
    /// <param name="journeys">The journeys with their answers; null where the day of travel is not known.</param>
    public static AnswerQuestion Travel(IReadOnlyList<PlannedJourney> journeys)
    {
        var staying = journeys.Sum(journey => journey.Answer is { } answer ? StaysBehind(answer, journeys).Sum(left => left.Count)
            + Stopped(answer).Sum(line => line.Count) : 0);
        var undated = journeys.Where(journey => journey.Answer is null).Select(journey => journey.Name).ToList();
        var verdict = staying > 0 ? Verdict.Fails
            : undated.Count > 0 ? Verdict.NotKnown
            : journeys.Any(journey => journey.Answer!.Approvals.Any()) ? Verdict.Close
            : Verdict.Holds;
        return new(QuestionKind.Travel, verdict, [])
        {
            Shortfall = staying,
            Missing = [.. undated.Select(name => $"The day of the journey \"{name}\" is not given (journeys.{name}.date), and "
                + "rules change.")],
        };
    }

    /// <summary>What can't fly and goes another way on no other journey of the plan, before the days or after them as this
    /// one.</summary>
    public static IEnumerable<LeftBehind> StaysBehind(TravelAnswer answer, IReadOnlyList<PlannedJourney> journeys)
    {
        var after = journeys.Any(journey => ReferenceEquals(journey.Answer, answer) && journey.AfterDays);
        var others = journeys.Where(other => other.AfterDays == after && !ReferenceEquals(other.Answer, answer))
            .Select(other => other.Answer).OfType<TravelAnswer>().ToList();
        return answer.Left.Where(left => !others.Exists(other => Takes(other, left)));
    }

    /// <summary>Whether a journey takes as freight, or by road alone, what can't fly on another.</summary>
    private static bool Takes(TravelAnswer other, LeftBehind left) =>
        other.Consignment.Any(line => line.Battery.Name == left.Battery.Name && line.StoppedBy is null
            && line.Count >= left.Count)
        || (other.Journey.Legs.All(leg => leg == Leg.Road)
            && other.Journey.Batteries.Where(battery => battery.Name == left.Battery.Name)
                .Sum(battery => battery.Count) >= left.Count);

    /// <summary>What can't be handed over as freight as it is packed.</summary>
    public static IEnumerable<CargoCheck> Stopped(TravelAnswer answer) =>
        answer.Consignment.Where(line => line.StoppedBy is not null);
}
