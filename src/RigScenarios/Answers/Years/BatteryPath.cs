using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>Which line of a band.</summary>
public enum AgeEnd
{
    /// <summary>The set that speaks for the battery.</summary>
    Middle,

    /// <summary>The least capacity left of the published fits.</summary>
    Least,

    /// <summary>The most capacity left of the published fits.</summary>
    Greatest,
}

/// <summary>
/// One battery's age over the time to come: its life so far, and then one pattern again and again. Exact at any time, for the
/// laws have no steps.
/// </summary>
internal sealed class BatteryPath
{
    private readonly KnownAge known;
    private readonly LifeResult middle;
    private readonly List<LifeResult> lives;

    /// <param name="known">What is known of its age now.</param>
    /// <param name="ahead">What goes on from now.</param>
    public BatteryPath(KnownAge known, LifePhase ahead)
    {
        (this.known, Ahead) = (known, ahead);
        Past = known.History is null && known.CapacityLeft is { } left
            ? [new Measured(left, known.ResistanceFactor, historyKnown: false)] : known.Past;
        middle = BatteryLife.After(known.Set, known.IsSetAssumed, Past, ahead);
        lives =
        [
            middle, .. (known.History is not null ? known.Lives() : AgingSets.BandFor(known.Set).Select(set => (set, Past)))
                .Select(life => BatteryLife.After(life.Item1, known.IsSetAssumed, life.Item2, ahead)),
        ];
        Warnings = BatteryLife.After(known.Set, known.IsSetAssumed, [.. Past, ahead]).Warnings;
    }

    /// <summary>What goes on from now.</summary>
    public LifePhase Ahead { get; }

    /// <summary>Its life so far.</summary>
    public IReadOnlyList<LifePhase> Past { get; }

    /// <summary>What its life so far and the pattern ahead rest on that is not as it should be.</summary>
    public IReadOnlyList<AgingWarning> Warnings { get; }

    /// <summary>The age after a further time.</summary>
    /// <param name="further">How long after now; 0 or more.</param>
    /// <param name="end">Which line of the band.</param>
    public Age At(Duration further, AgeEnd end = AgeEnd.Middle)
    {
        if (further.Days <= 0)
            return Now(end);
        return end switch
        {
            AgeEnd.Middle => middle.After(further),
            AgeEnd.Least => lives.Select(life => life.After(further)).MinBy(age => age.CapacityLeft.DecimalFractions)!,
            _ => lives.Select(life => life.After(further)).MaxBy(age => age.CapacityLeft.DecimalFractions)!,
        };
    }

    /// <summary>How long until only so much is left; null beyond <see cref="LifeResult.Furthest"/>, zero where it is so
    /// already.</summary>
    /// <param name="left">Part of the new capacity.</param>
    /// <param name="end">Which line of the band.</param>
    public Duration? TimeTo(Ratio left, AgeEnd end = AgeEnd.Middle)
    {
        if (Now(end).CapacityLeft <= left)
            return Duration.Zero;
        if (end == AgeEnd.Middle)
            return middle.TimeTo(left);
        var times = lives.Select(life => life.TimeTo(left)).ToList();
        if (end == AgeEnd.Least)
            return times.Where(time => time is not null).MinBy(time => time!.Value.Days);
        return times.Contains(null) ? null : times.MaxBy(time => time!.Value.Days);
    }

    private Age Now(AgeEnd end) => known.Ends is { } ends && end != AgeEnd.Middle
        ? end == AgeEnd.Least ? ends.Least : ends.Greatest : known.Age;
}
