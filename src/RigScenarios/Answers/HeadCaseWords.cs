using RigScenarios.Balance;

namespace RigScenarios.Answers;

/// <summary>What can happen to a rig on its head, in plain words.</summary>
public static class HeadCaseWords
{
    /// <summary>What happens in a case, in one sentence.</summary>
    public static string Of(HeadCase happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        double level = happening.Level.NewtonMeters, left = happening.Margin.NewtonMeters;
        var pull = Math.Abs(level) < 0.05 ? "level it pulls neither way"
            : $"level it pulls nose {(level > 0 ? "down" : "up")} with {Math.Abs(level):0.0} N·m";
        var side = Math.Abs(happening.CentreLeft.Millimeters) >= 5
            ? $"; its centre of gravity is {Math.Abs(happening.CentreLeft.Millimeters):0} mm to the "
                + $"{(happening.CentreLeft.Meters > 0 ? "left" : "right")} and rolls it with "
                    + $"{Math.Abs(happening.Roll.NewtonMeters):0.0} N·m" : "";
        var isLevel = happening.Hand.NewtonMeters != 0;
        var rest = happening.WhenLetGo == LetGo.Stays
            ? $"let go, it stays {(isLevel ? "when level" : "at every tilt")}, {BalanceWords.Small(left)} of friction left"
            : $"let go, it {(happening.WhenLetGo == LetGo.Creeps ? "creeps" : "falls")}: friction at rest is "
                + $"{BalanceWords.Small(-left)} "
                + $"short {(isLevel ? "with the head level" : "at the worst tilt")}";
        return $"{pull}; {rest}{side}.";
    }

    /// <summary>What to do before something comes off; null where friction at rest holds what is left.</summary>
    public static string? Caution(HeadCase happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        if (!happening.NeedsLock)
            return null;
        var (head, level) = (happening.Balance.Head, happening.Level.NewtonMeters);
        var where = Math.Abs(level) > head.Friction.NewtonMeters
            ? $"level, it then pulls nose {(level > 0 ? "down" : "up")} with {Math.Abs(level):0.0} N·m"
            : $"at {happening.Balance.WorstTilt.Degrees:0}° tilt it then pulls with {happening.Worst.NewtonMeters:0.0} N·m";
        var rest = head.TiltLock switch
        {
            null => "What the lock holds is not known: keep a hand on the rig.",
            { } held when held < happening.Worst =>
                $"The tilt lock, {BalanceWords.Moment(held)}, does not hold that: keep hold of the rig, or take off something "
                    + "on the other "
                    + "side first.",
            _ => "Keep a hand on the rig all the same.",
        };
        return $"Tighten the tilt lock before the {happening.Part} comes off: {where}; friction at rest holds "
            + $"{BalanceWords.Moment(head.Friction)}. {rest}";
    }
}
