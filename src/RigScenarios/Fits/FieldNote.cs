using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits;

/// <summary>
/// What somebody wrote down of one run on the battery: how long it lasted, or that it still ran. Nobody wrote down when the
/// camera rolled, so its draw counts as the mean of its states.
/// </summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an
/// <see cref="ArgumentOutOfRangeException"/>.</remarks>
public sealed record FieldNote
{
    /// <summary>Its name, of its own among the notes.</summary>
    public required string Id { get; init; }

    /// <summary>Air, charge and draw.</summary>
    public required BatteryRun Run { get; init; }

    /// <summary>How long it ran until battery or device ended it; null if neither did.</summary>
    public Duration? Runtime
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Seconds, "s");
            field = value;
        }
    }

    /// <summary>After how long it still ran; null if it ended.</summary>
    public Duration? StillRunning
    {
        get;
        init
        {
            if (value is { } given)
                Require.Positive(given.Seconds, "s");
            field = value;
        }
    }

    /// <summary>Charge that the battery showed then, 0…1; null if it showed none.</summary>
    public Ratio? PercentShown
    {
        get;
        init
        {
            if (value is { } given)
                Require.Within(given.DecimalFractions, 0, 1, "");
            field = value;
        }
    }

    /// <summary>One deviation of the time; three minutes if not given, for people round to ten. Above 0.</summary>
    public Duration ClockError
    {
        get;
        init
        {
            Require.Positive(value.Seconds, "s");
            field = value;
        }
    } = Duration.FromMinutes(3);

    /// <summary>One standard deviation of the natural logarithm of its time: the clock, two days that are never alike, the model,
    /// the charge at the start. 0 without a time.</summary>
    public double Deviation => (Runtime ?? StillRunning) is { } time
        ? Spread.OfNote(Run, time.Seconds, ClockError.Seconds) : 0;
}
