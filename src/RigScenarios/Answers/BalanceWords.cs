using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words how a build balances.</summary>
public static class BalanceWords
{
    /// <summary>The answer in one or two sentences.</summary>
    public static string Answer(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.SizesMissing is [var size, ..])
            return size.Words;
        return balance.Rig.Build.Stance switch
        {
            Stance.Shoulder => balance.Shoulder is { } shoulder ? OnShoulder(balance, shoulder) : NoAnswer(balance),
            Stance.Hand => balance.Hands is { } hands ? InHands(balance, hands) : NoAnswer(balance),
            _ => balance.Best is { } head ? OnHead(balance, head) : NoAnswer(balance),
        };
    }

    /// <summary>Below this the hands carry nothing, as far as a person can tell: 0.5 N.</summary>
    internal static Force Nothing { get; } = Force.FromNewtons(0.5);

    /// <summary>What is said where nobody measured what the operator's shoulder can hold.</summary>
    internal const string NoEffort =
        "How long it can be held follows from the greatest effort of the operator's own shoulder, measured "
            + "(in-hands.greatest-effort).";

    /// <summary>Beside every rig that is lifted.</summary>
    internal const string Lifting = "Lift heavy rigs with two people, and tighten every lock before you carry them.";

    /// <summary>Where to set camera plate and counterbalance; null without a head.</summary>
    public static string? Setting(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return balance.Best is not { } head || balance.SizesMissing.Count > 0 ? null
            : $"Set the camera plate so that the point {Ahead(head.CameraPlate)} the body's tripod socket stands over the "
                + $"middle of the head, and the counterbalance to {Dial(head)}.";
    }

    /// <summary>"7.5 N·m, setting 3 of 0 to 5": a dial whose first setting gives nothing counts from 0, another from 1.</summary>
    public static string Dial(HeadBalance head)
    {
        ArgumentNullException.ThrowIfNull(head);
        var dial = head.Head.Counterbalance;
        return head.StepIndex is { } index
            ? $"{Moment(head.Counterbalance)}, setting {dial.FirstSetting + index} of {dial.FirstSetting} to "
                + $"{dial.FirstSetting + dial.Steps.Count - 1}" : Moment(head.Counterbalance);
    }

    /// <summary>How it is set now, where the file says so; null where it does not.</summary>
    public static string? AsSet(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return balance.AsSet is not { } set || balance.SizesMissing.Count > 0 ? null
            : $"As it is set now, {Ahead(set.CameraPlate)} the socket and {Moment(set.Counterbalance)}: at worst "
                + $"{Moment(set.WorstResidual)} at {set.WorstTilt.Degrees:0}° tilt; let go there, it {LetGoInWords(set)}.";
    }

    /// <summary>The two questions that a build at rest is asked, each in a line: the verdict, and the limit with the least
    /// left.</summary>
    public static IReadOnlyList<string> Questions(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return [Line(balance, BalanceQuestions.Balance(balance)), Line(balance, BalanceQuestions.Stand(balance))];
    }

    /// <summary>"12 mm ahead of", "8 mm behind".</summary>
    public static string Ahead(Length length)
    {
        var millimetres = Math.Round(length.Millimeters);
        return millimetres switch
        {
            0 => "0 mm from",
            > 0 => $"{millimetres:0} mm ahead of",
            _ => $"{-millimetres:0} mm behind",
        };
    }

    /// <summary>Where the centre of gravity is, with how sure that is.</summary>
    public static string Centre(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        RigPoint centre = balance.Mass.Centre, unsure = balance.Mass.CentreUncertainty;
        var side = Math.Round(centre.Y.Millimeters);
        var across = side == 0 ? "in the plane of the lens"
            : $"{Math.Abs(side):0} mm to the {(side > 0 ? "left" : "right")} of the lens";
        if (balance.SizesMissing.Count > 0)
            return $"{balance.Mass.Mass.Kilograms:0.00} kg (±{balance.Mass.MassUncertainty.Kilograms:0.00} kg). Where the "
                + "centre of gravity is can't be said without the size of the "
                + $"{string.Join(", ", balance.SizesMissing.Select(missing => LimitSentences.Element(missing.Thing)))}.";
        return $"{balance.Mass.Mass.Kilograms:0.00} kg (±{balance.Mass.MassUncertainty.Kilograms:0.00} kg). The centre of "
            + $"gravity is {Ahead(centre.X)} the body's tripod socket (±{unsure.X.Millimeters:0} mm), "
                + $"{centre.Z.Millimeters:0} mm above its base (±{unsure.Z.Millimeters:0} mm), {across}.";
    }

    /// <summary>What to do at every swap of the battery; null where nothing is to be done, or nothing is known of the
    /// head.</summary>
    public static string? BeforeSwap(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return balance.LocksBeforeSwap == true ? "Tighten the tilt lock before anything comes off." : null;
    }

    /// <summary>What to be careful with.</summary>
    public static IReadOnlyList<string> Cautions(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        var cautions = balance.Cases.Select(HeadCaseWords.Caution).OfType<string>().ToList();
        if (balance.Check.OutsideRange.Count > 0)
            cautions.Add($"Outside what their mounts allow: {string.Join(", ", balance.Check.OutsideRange)}.");
        if (balance.Check.Overlaps.Count > 0)
        {
            var pairs = balance.Check.Overlaps.Take(5)
                .Select(overlap => $"{overlap.One} and {overlap.Other} by {overlap.Depth.Millimeters:0} mm");
            cautions.Add($"In each other's way, as boxes: {string.Join("; ", pairs)}.");
        }
        if (balance.Rig.WithoutMass.Count > 0)
            cautions.Add($"Without a mass, and so not counted: {string.Join(", ", balance.Rig.WithoutMass)}.");
        if (balance.Level is not null)
            cautions.Add("Tipping is worked out for a tripod that is locked and stiff, on hard ground, nobody touching it. "
                + "Soft ground, a knock or a cable takes less. Put on ballast and have somebody hold it. Anything raised over "
                    + "people is work for a qualified rigger, with safety lines.");
        cautions.Add(Lifting);
        if (balance.Rig.Build.Stance != Stance.Tripod)
            cautions.Add("How long somebody can hold a rig differs widely between people. Put it down before it hurts; hand "
                + "over.");
        cautions.Add("Predicted, not measured: arithmetic on masses and places that you gave. It knows no loose screw and no "
            + "worn lock. The makers' limits come first; try it with a hand under the lens.");
        return cautions;
    }

    private static string Line(BuildBalance balance, AnswerQuestion question)
    {
        var rest = question.Verdict == Verdict.NotKnown ? question.Missing[0] : question.Least is not { } least
            ? "" : $"{(least.IsPassed ? "" : "Least left: ")}{LimitSentences.Of(least, null)}.";
        var title = AnswerSentences.Title(question.Kind, balance.Rig.Build.Stance);
        return $"{title}: {question.Verdict.InWords()}. {rest}".TrimEnd();
    }

    private static string OnHead(BuildBalance balance, HeadBalance head)
    {
        var why = head.Exceeded.Where(edge => edge != BalanceEdge.Tilt).Select(edge => edge switch
        {
            BalanceEdge.TravelFrontEnd =>
                $"the centre of gravity is {-head.TravelFrontMargin.Millimeters:0} mm ahead of what the camera plate reaches",
            BalanceEdge.TravelRearEnd =>
                $"the centre of gravity is {-head.TravelRearMargin.Millimeters:0} mm behind what the camera plate reaches",
            _ => $"it is {-head.LoadMargin!.Value.Kilograms:0.00} kg over the head's rated load",
        }).ToList();
        var held = $"{Moment(head.Head.Friction)} of friction at rest{(balance.Supports.IsFrictionKnown ? "" : " (assumed)")}";
        if (head.WhenLetGo == LetGo.Falls || why.Count > 0)
        {
            if (head.WhenLetGo != LetGo.Stays)
                why.Add($"at {head.WorstTilt.Degrees:0}° tilt it pulls with {Moment(head.WorstResidual)} against {held}; let "
                    + $"go there, it {LetGoInWords(head)}");
            return $"It does not balance: {string.Join("; ", why)}.";
        }
        var unsure = balance.Mass.CentreUncertainty.X;
        var doubt = head.TravelMargin < unsure
            ? $" The centre of gravity is known to ±{unsure.Millimeters:0} mm only: it may not reach." : "";
        var reach = $"{head.TravelMargin.Millimeters:0} mm of the camera plate's travel left.{doubt}";
        return head.WhenLetGo == LetGo.Stays
            ? $"It balances: it stays where you let go at every tilt, with {Small(head.TiltMargin.NewtonMeters)} left of "
                + $"{held}, and {reach}"
            : $"It nearly balances: let go at {head.WorstTilt.Degrees:0}° tilt it {LetGoInWords(head)}, "
                + $"{Moment(head.WorstResidual)} against {held}. Lock the tilt when you step back. There are {reach}";
    }

    private static string LetGoInWords(HeadBalance head) => head.WhenLetGo switch
    {
        LetGo.Stays => "stays",
        LetGo.Creeps => $"creeps at {head.CreepSpeed!.Value.DegreesPerSecond:0.0} °/s",
        _ => "falls",
    };

    private static string OnShoulder(BuildBalance balance, ShoulderBalance shoulder)
    {
        var hands = shoulder.HandLoad.Newtons;
        var carry = Math.Abs(hands) < Nothing.Newtons ? "The hands carry nothing: it rests on the shoulder." : hands > 0
            ? $"The hands hold up {InKilograms(hands)}, the shoulder carries {InKilograms(shoulder.PadLoad.Newtons)}."
            : $"The rig wants to tip backward: the hands pull down with {InKilograms(-hands)}, the shoulder carries "
                + $"{InKilograms(shoulder.PadLoad.Newtons)}.";
        var roll = Math.Abs(shoulder.RollMoment.NewtonMeters) < 0.1
            ? "" : $" It rolls to the {(shoulder.RollMoment.NewtonMeters > 0 ? "left" : "right")} with "
                + $"{Math.Abs(shoulder.RollMoment.NewtonMeters):0.0} N·m.";
        var weight = hands < Nothing.Newtons ? "" : Counterweight(balance, shoulder);
        var outside = balance.Check.OutsideRange.Count > 0 ? " Something is outside what its mount allows." : "";
        return $"{carry}{roll}{weight}{outside}";
    }

    /// <summary>At the rear of what is there: nobody wants a rod that sticks out behind.</summary>
    private static string Counterweight(BuildBalance balance, ShoulderBalance shoulder)
    {
        var (name, place) = balance.Mass.Parts.Select(part => (part.Key, part.Value.Centre.X)).MinBy(part => part.X.Meters);
        return shoulder.CounterweightAt(place) is { Need: CounterweightNeed.Needed, Mass: { } mass }
            ? $" A counterweight of {mass.Kilograms:0.0} kg beside the {name} would free the hands; the shoulder then carries "
                + $"{balance.Mass.Mass.Kilograms + mass.Kilograms:0.0} kg."
            : " No counterweight helps where there is room for one: everything sits ahead of the shoulder.";
    }

    private static string InHands(BuildBalance balance, Loads.HandHold hands)
    {
        var moment = hands.ShoulderMoment(balance.Mass).NewtonMeters;
        var time = balance.Holding is { } holding
            ? $" That is {holding.Part.Percent:0} % of the greatest effort that you gave; a published fit then has a typical "
                + $"holding time of {Held(holding.Time)}. People differ more than that."
            : $" {NotHeld(balance.Rig.Build.InHands?.GreatestEffort, Math.Abs(moment))}";
        return $"Each hand carries {balance.Mass.Mass.Kilograms * hands.Share.DecimalFractions:0.0} kg; each shoulder works "
            + $"against {Math.Abs(moment):0.0} N·m, the arm's own weight in it.{time}";
    }

    /// <summary>An effort that nobody measured, one that is too small, and a hold that takes none are three things.</summary>
    private static string NotHeld(Torque? effort, double moment) => effort is not { } greatest ? NoEffort
        : moment > greatest.NewtonMeters
            ? $"That is beyond the greatest effort that you gave, {greatest.NewtonMeters:0.0} N·m: it can't be held so."
            : "That takes nothing of the greatest effort that you gave.";

    private static string Held(Loads.HoldingTime time) => AnswerTimes.Length(time.Typical)
        + (time is { Low: { } low, High: { } high }
            ? $", the 95 % interval of the fitted curve is {AnswerTimes.Length(low)} to {AnswerTimes.Length(high)}" : "")
        + (time.OutsideData ? " (the effort is outside what was measured; this is the nearest that was)" : "");

    private static string NoAnswer(BuildBalance balance) =>
        balance.Supports.Missing.FirstOrDefault() ?? "What this build stands on is not known, so there is no answer.";

    internal static string Small(double newtonMeters) =>
        newtonMeters < 0.1 ? $"{newtonMeters:0.00} N·m" : $"{newtonMeters:0.0} N·m";

    internal static string Moment(Torque torque) => $"{torque.NewtonMeters:0.0} N·m";

    internal static string InKilograms(double newtons) =>
        $"{newtons / StandardGravity.MetresPerSecondSquared:0.0} kg ({newtons:0} N)";
}
