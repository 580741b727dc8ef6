using RigScenarios.Batteries;
using RigScenarios.Cells.Aging;
using RigScenarios.Days;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>The cautions that the verdicts call for: what is past a limit first, what always holds last.</summary>
public static class AnswerCautions
{
    /// <summary>Beside every answer about wiring.</summary>
    public const string Polarity =
        "Which contact is positive is not told here for any connector: measure it with a meter before you plug anything in.";

    /// <summary>Beside every answer.</summary>
    public const string Always =
        "The makers' limits go first, and local rules. Lithium batteries can burn: never use one that is "
        + "swollen, damaged or wet, never bridge its contacts, never work around its protection.";

    private const double ColdCelsius = 5;
    private const double HotCelsius = 40;

    // Charged in less than an hour and a half: quicker than what cells are commonly charged with (common practice, no source).
    private const double FastCharge = 0.7;

    /// <summary>The cautions of an answer.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<string> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Of(answer, Predicted(answer.Simulation.ExpectedError), AgeUnknown(answer, whole: true));
    }

    /// <summary>The same for a sheet that is taken along: how far off times may be without the reason, and without what is for
    /// the
    /// time between jobs.</summary>
    internal static IEnumerable<string> OfTheDay(RigAnswer answer) =>
        Of(answer, PredictionWords.Short(answer.Simulation.ExpectedError), AgeUnknown(answer, whole: false))
            .Where(caution => caution is not (PowerCautions.Keeping or AgingSentences.Retire));

    /// <summary>The same for whoever puts the rig together: what goes for charging, journeys and the weather is on the sheet of
    /// the day.</summary>
    internal static IEnumerable<string> OfBuilding(RigAnswer answer) =>
    [
        .. Wiring(answer), .. Standing(answer), PredictionWords.Short(answer.Simulation.ExpectedError),
        .. PowerCautions.Batteries(answer.Plan).Where(caution => caution != PowerCautions.Keeping), Always,
    ];

    // What three years do to a battery is told where there is room for it.
    private static string? AgeUnknown(RigAnswer answer, bool whole)
    {
        var unknown = answer.Plan.Batteries.Values.Select(battery => battery.KnownAge).FirstOrDefault(known => known.IsUnknown);
        return unknown is null ? null
            : "A battery's age is not given, so it is taken as new. A worn one stops sooner, in the cold much "
                + "sooner: measure it once and say what it still holds."
                + (whole ? $" {AgingSentences.Unknown(unknown.Set, unknown.IsSetAssumed)}" : "");
    }

    private static List<string> Of(RigAnswer answer, string predicted, string? ageUnknown)
    {
        List<string> cautions =
        [
            .. Wiring(answer), .. Standing(answer), .. Travel(answer), predicted,
            .. new[] { ColdWords.Of(answer.Warmth) }.OfType<string>(),
            .. PowerCautions.Generators(answer.Plan), .. Charging(answer.Plan),
        ];
        if (ageUnknown is not null)
            cautions.Add(ageUnknown);
        if (answer.Plan.Batteries.Values.Any(battery => battery.Life is not null
            || battery.KnownAge.CapacityLeft <= LifeResult.Replaced))
            cautions.Add(AgingSentences.Retire);
        var air = answer.Plan.Days.SelectMany(day => day.AmbientPoints.Select(point => point.Temperature)
            .DefaultIfEmpty(day.Ambient ?? Temperature.FromDegreesCelsius(20))).ToList();
        if (air.Min().DegreesCelsius < ColdCelsius)
            cautions.Add("Cold: charging a lithium battery at or below 0 °C can damage it and make it dangerous later; warm "
                + "it first.");
        if (air.Max().DegreesCelsius > HotCelsius)
            cautions.Add("Heat: keep batteries out of the sun.");
        cautions.AddRange(PowerCautions.Batteries(answer.Plan));
        cautions.Add(Always);
        return cautions;
    }

    /// <summary>How far off times may be: the least that goes with any answer.</summary>
    /// <param name="error">The error of the prediction.</param>
    public static string Predicted(ExpectedError error) =>
        $"Times are predicted, not measured: expect them {PredictionWords.Of(error)}. Carry a reserve.";

    /// <summary>What goes with a plan that charges batteries; nothing where it does not.</summary>
    /// <param name="plan">The plan.</param>
    public static IEnumerable<string> Charging(DayPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var chargers = plan.Chargers.Values.Where(charger => charger.Bays > 0).ToList();
        if (chargers.Count == 0)
            yield break;
        yield return "Charging: the makers' limits of battery and charger for current, voltage and temperature go first. "
            + "Never charge lithium batteries unattended or overnight on the word of this plan, nor near anything that burns, "
                + "nor one that is swollen, damaged or wet.";
        foreach (var (name, battery) in plan.Batteries.Where(item => item.Value.MaximumChargeCurrent is null))
        {
            var rate = chargers.Max(charger => charger.Current.Amperes)
                / (battery.Part.Battery!.Capacity?.AmpereHours
                    ?? (battery.Part.Battery.Energy.WattHours / battery.Part.Battery.Voltage.Volts));
            if (rate > FastCharge)
                yield return $"{name} would be charged in little more than an hour ({rate:0.0} times its capacity in an "
                    + "hour), and what its maker allows is not given: look it up.";
        }
    }

    private static IEnumerable<string> Wiring(RigAnswer answer)
    {
        var passed = answer.Of(QuestionKind.Wiring)!.Limits.Where(limit => limit is { HasForce: true, IsPassed: true }).ToList();
        if (passed.Exists(limit => limit.Worst is ElectricCurrent))
        {
            yield return "Something is loaded beyond what its maker allows. Change that before you use it: cables and plugs "
                + "get hot, and a limiter may switch the rig off.";
            yield return "A fuse protects the cable behind it, not the device. Fit only the fuse that the maker names; never "
                + "bridge one. A cable that is warm, coiled or has a loose plug comes out of use.";
        }
        foreach (var limit in passed.Where(limit => limit.Kind == LimitKind.Fuse))
        {
            if (Opening(answer, limit) is { } opening)
                yield return opening;
        }
        var counts = QuestionRules.CountsIn(answer.Simulation);
        if (passed.Exists(limit => limit.Worst is ElectricPotential && limit.Case != LoadCase.Steady && counts(limit)))
            yield return "For moments a voltage dips below what a device needs. The device may restart, or hold over it: try "
                + "it before the day.";
        if (answer.Of(QuestionKind.Wiring)!.Verdict != Verdict.Holds)
            yield return Polarity;
    }

    /// <summary>When a fuse that carries too much opens; null below its rating, where it only ages.</summary>
    private static string? Opening(RigAnswer answer, Limit limit)
    {
        var fuse = answer.Simulation.Network.Elements.FirstOrDefault(element => element.Name == limit.Element)?.Fuse;
        if (fuse is null || limit.Worst is not ElectricCurrent worst || worst < fuse.Rating)
            return null;
        var when = fuse.OpensWithin(worst) switch
        {
            { Hours: >= 1 } => "it opens within an hour, not at once",
            { } time => $"it opens within {time.Minutes:0} minutes, not at once",
            null => "it may carry that for hours, or go in the middle of a take",
        };
        return $"Fuse, {LimitSentences.Element(limit.Element)}: at {LimitSentences.Quantity(worst, limit.Kind)} of "
            + $"{LimitSentences.Quantity(fuse.Rating, limit.Kind)} rated {when}.";
    }

    private static IEnumerable<string> Standing(RigAnswer answer)
    {
        if (answer.Of(QuestionKind.Balance) is { Verdict: Verdict.Fails or Verdict.Close })
            yield return "A head that does not hold its load swings when it is let go: keep a hand on it, lock the tilt, and "
                + "balance it anew with makers' figures before anybody steps away.";
        if (answer.Of(QuestionKind.Stand) is { Verdict: Verdict.Fails or Verdict.Close })
            yield return "A rig that tips or a joint that gives way falls on people. Change that first, fit a safety line, "
                + "and keep people away from under it.";
    }

    private static IEnumerable<string> Travel(RigAnswer answer)
    {
        foreach (var doubt in answer.Journeys.SelectMany(journey => journey.Answer is { } travel
            ? TravelWords.LimitDoubts(travel) : []).Distinct())
            yield return doubt;
        if (answer.Journeys.Count > 0)
            yield return "Ask each airline before you travel: rules change, states and carriers may be stricter, and their "
                + "answer counts.";
    }
}
