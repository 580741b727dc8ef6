using RigScenarios.Balance;
using RigScenarios.Builds;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Says in plain words how a build balances.</summary>
public static class BalanceWords
{
    /// <summary>The answer in one or two sentences.</summary>
    public static string Answer(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return balance.Rig.Build.Stance switch
        {
            Stance.Shoulder => balance.Shoulder is { } shoulder ? OnShoulder(balance, shoulder) : NoAnswer(balance),
            Stance.Hand => balance.Hands is { } hands ? InHands(balance, hands) : NoAnswer(balance),
            _ => balance.Best is { } head ? OnHead(balance, head) : NoAnswer(balance),
        };
    }

    /// <summary>Where to set plate and counterbalance; null without a head.</summary>
    public static string? Setting(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.Best is not { } head)
            return null;
        var step = head.StepIndex is { } index ? $"step {index + 1} of {head.Head.Counterbalance.Steps.Count} ({Moment(head.Counterbalance)})" : Moment(head.Counterbalance);
        return $"Set the plate so that the point {Ahead(head.Plate)} the body's tripod socket stands over the middle of the head, and the counterbalance to {step}.";
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
        var across = side == 0 ? "in the plane of the lens" : $"{Math.Abs(side):0} mm to the {(side > 0 ? "left" : "right")} of the lens";
        return $"{balance.Mass.Mass.Kilograms:0.00} kg (±{balance.Mass.MassUncertainty.Kilograms:0.00} kg). The centre of gravity is {Ahead(centre.X)} the body's tripod socket (±{unsure.X.Millimeters:0} mm), {centre.Z.Millimeters:0} mm above its base (±{unsure.Z.Millimeters:0} mm), {across}.";
    }

    /// <summary>On its legs: when it tips over; null without legs whose figures are known.</summary>
    public static string? Tipping(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.Level is not { } level || balance.Supports.Stand is not { } legs)
            return null;
        var worst = balance.WorstTilt ?? level;
        if (worst.TipsOnLevel)
            return $"It tips over by itself on level ground{(level.TipsOnLevel ? "" : $" when the head is tilted {worst.Tilt.Degrees:0}°")}: turn a foot under the lens, spread the legs, lower the rig.";
        var tilted = balance.WorstTilt is null ? "" : $", with the head tilted {worst.Tilt.Degrees:0}° at {worst.TipAngle.Degrees:0.0}°";
        var wind = balance.Wind is { } area && worst.TippingWind(area) is { } speed ? $", a steady wind of {speed.MetersPerSecond:0} m/s (Beaufort {Beaufort.Of(speed)}; gusts run above the mean) does it too" : "";
        var ballast = StandBallast.Of(balance) is not { } bag ? "" : bag.Ballast.Need switch
        {
            BallastNeed.NoneNeeded => $" It stands the {bag.Wanted.Degrees:0.#}° wished for without ballast.",
            BallastNeed.Needed => $" For {bag.Wanted.Degrees:0.#}° it needs {bag.Ballast.Mass!.Value.Kilograms:0.0} kg of ballast on a hook {bag.Height.Millimeters:0} mm above the ground.",
            _ => $" No ballast on a hook {bag.Height.Millimeters:0} mm above the ground gives {bag.Wanted.Degrees:0.#}°: spread the legs or hang it lower.",
        };
        return $"On its legs, at the worst pan: level it tips at a lean of {level.TipAngle.Degrees:0.0}°{tilted}. Then a push of {InKilograms(worst.TippingForce(legs.PlateHeight)!.Value.Newtons)} at the height of the plate tips it{wind}.{ballast}";
    }

    /// <summary>Picking it up, as the revised NIOSH equation judges it.</summary>
    public static string Lifting(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return $"Picking it up from the floor: the revised NIOSH equation recommends at most {balance.Lift.RecommendedLimit.Kilograms:0.0} kg for such a lift; this is {balance.Lift.Index(balance.Mass.Mass):0.0} times that. It judges lifting with two hands, not holding or carrying; local rules decide.";
    }

    /// <summary>What happens in a case, in one sentence.</summary>
    public static string Case(HeadCase happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        double level = happening.Level.NewtonMeters, left = happening.DragMargin.NewtonMeters;
        var pull = Math.Abs(level) < 0.05 ? "level it stays" : $"level it pulls nose {(level > 0 ? "down" : "up")} with {Math.Abs(level):0.0} N·m";
        var side = Math.Abs(happening.CentreLeft.Millimeters) >= 5 ? $"; its centre is {Math.Abs(happening.CentreLeft.Millimeters):0} mm to the {(happening.CentreLeft.Meters > 0 ? "left" : "right")} and rolls it with {Math.Abs(happening.Roll.NewtonMeters):0.0} N·m" : "";
        var where = happening.Hand.NewtonMeters == 0 ? "over the whole tilt range" : "with the head level";
        return $"{pull}; {(left >= 0 ? $"the drag holds it {where}, {Small(left)} left" : $"the drag is {Small(-left)} short {(happening.Hand.NewtonMeters == 0 ? "at the worst tilt" : "with the head level")}")}{side}.";
    }

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<string> Cautions(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        var cautions = balance.Cases.Where(happening => happening.Caution is not null).Select(happening => happening.Caution!).ToList();
        if (balance.Check.OutsideRange.Count > 0)
            cautions.Add($"Outside what their mounts allow: {string.Join(", ", balance.Check.OutsideRange)}.");
        if (balance.Check.Overlaps.Count > 0)
            cautions.Add($"In each other's way, as boxes: {string.Join("; ", balance.Check.Overlaps.Take(5).Select(overlap => $"{overlap.One} and {overlap.Other} by {overlap.Depth.Millimeters:0} mm"))}.");
        if (balance.Rig.WithoutMass.Count > 0)
            cautions.Add($"Without a mass, and so not counted: {string.Join(", ", balance.Rig.WithoutMass)}.");
        if (balance.Level is not null)
            cautions.Add("Tipping is worked out for legs that are locked and stiff, on hard level ground, nobody touching it. Soft ground, a knock, a cable or a gust takes less. Put on ballast and have somebody hold it. Anything raised over people is work for a qualified rigger, with safety lines.");
        cautions.Add("Lift heavy rigs with two people, and tighten every lock before you carry them.");
        if (balance.Rig.Build.Stance != Stance.Tripod)
            cautions.Add("How long somebody can hold a rig differs widely between people. Put it down before it hurts; hand over.");
        cautions.Add("Predicted, not measured: arithmetic on masses and places that you gave. It knows no loose screw and no worn lock. The makers' limits come first; try it with a hand under the lens.");
        return cautions;
    }

    private static string OnHead(BuildBalance balance, HeadBalance head)
    {
        if (head.Exceeded.Count == 0)
        {
            var unsure = balance.Mass.CentreUncertainty.X;
            var close = head.TravelMargin < unsure ? $" The centre is known to ±{unsure.Millimeters:0} mm only: it may not reach." : "";
            return $"It balances: it stays where you let go over the whole tilt range, with {Moment(head.TiltMargin)} of the {Moment(head.Head.Drag)} drag left and {head.TravelMargin.Millimeters:0} mm of plate to spare.{close}";
        }
        var why = head.Exceeded.Select(limit => limit switch
        {
            BalanceLimit.TravelFrontEnd => $"the centre of gravity is {-head.TravelFrontMargin.Millimeters:0} mm ahead of what the plate reaches",
            BalanceLimit.TravelRearEnd => $"the centre of gravity is {-head.TravelRearMargin.Millimeters:0} mm behind what the plate reaches",
            BalanceLimit.Tilt => $"at {head.WorstTilt.Degrees:0}° tilt it pulls with {Moment(head.WorstResidual)} against a drag of {Moment(head.Head.Drag)}",
            _ => $"it is {-head.LoadMargin!.Value.Kilograms:0.00} kg over the head's rated load",
        });
        return $"It does not balance: {string.Join("; ", why)}.";
    }

    private static string OnShoulder(BuildBalance balance, ShoulderBalance shoulder)
    {
        var hands = shoulder.HandLoad.Newtons;
        var carry = Math.Abs(hands) < 0.5 ? "The hands carry nothing: it rests on the shoulder." : hands > 0
            ? $"The hands hold up {InKilograms(hands)}, the shoulder carries {InKilograms(shoulder.PadLoad.Newtons)}."
            : $"The rig wants to tip backward: the hands pull down with {InKilograms(-hands)}, the shoulder carries {InKilograms(shoulder.PadLoad.Newtons)}.";
        var roll = Math.Abs(shoulder.RollMoment.NewtonMeters) < 0.1 ? "" : $" It rolls to the {(shoulder.RollMoment.NewtonMeters > 0 ? "left" : "right")} with {Math.Abs(shoulder.RollMoment.NewtonMeters):0.0} N·m.";
        var weight = hands < 0.5 ? "" : Counterweight(balance, shoulder);
        return $"{carry}{roll}{weight}{(balance.Check.OutsideRange.Count > 0 ? " Something is outside what its mount allows." : "")}";
    }

    /// <summary>At the rear of what is there: nobody wants a rod that sticks out behind.</summary>
    private static string Counterweight(BuildBalance balance, ShoulderBalance shoulder)
    {
        var (name, place) = balance.Mass.Parts.Select(part => (part.Key, part.Value.Centre.X)).MinBy(part => part.X.Meters);
        return shoulder.CounterweightAt(place) is { Need: CounterweightNeed.Needed, Mass: { } mass }
            ? $" A counterweight of {mass.Kilograms:0.0} kg beside the {name} would free the hands; the shoulder then carries {balance.Mass.Mass.Kilograms + mass.Kilograms:0.0} kg."
            : " No counterweight helps where there is room for one: everything sits ahead of the shoulder.";
    }

    private static string InHands(BuildBalance balance, Loads.HandHold hands)
    {
        var moment = hands.ShoulderMoment(balance.Mass).NewtonMeters;
        var time = balance.Holding is { } holding
            ? $" That is {holding.Part.Percent:0} % of the greatest effort that you gave; a published fit then has a typical holding time of {DayWords.Length(holding.Time.Typical)}{(holding.Time is { Low: { } low, High: { } high } ? $", {DayWords.Length(low)} to {DayWords.Length(high)} for most people" : "")}{(holding.Time.OutsideData ? " (the effort is outside what was measured; this is the nearest that was)" : "")}."
            : " How long that can be held follows from the greatest effort of the operator's own shoulder, measured (in-hands.greatest-effort); without it no time is given.";
        return $"Each hand carries {balance.Mass.Mass.Kilograms * hands.Share.DecimalFractions:0.0} kg; each shoulder works against {moment:0.0} N·m, the arm's own weight in it.{time}";
    }

    private static string NoAnswer(BuildBalance balance) => balance.Supports.Missing.Count > 0 ? balance.Supports.Missing[0] : "What this build stands on is not known, so there is no answer.";

    private static string Small(double newtonMeters) => newtonMeters < 0.1 ? $"{newtonMeters:0.00} N·m" : $"{newtonMeters:0.0} N·m";

    private static string Moment(Torque torque) => $"{torque.NewtonMeters:0.0} N·m";

    private static string InKilograms(double newtons) => $"{newtons / StandardGravity.MetresPerSecondSquared:0.0} kg ({newtons:0} N)";
}
