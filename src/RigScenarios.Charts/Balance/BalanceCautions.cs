namespace RigScenarios.Charts.Balance;

/// <summary>What a reader must know beside pictures of weight and balance; in full: docs/cautions.md.</summary>
public static class BalanceCautions
{
    /// <summary>Beside every picture of a rig, its centre or its head.</summary>
    public const string Arithmetic =
        "Predicted, not measured: arithmetic on the masses, sizes and places that were given. It knows no loose screw and no "
            + "worn lock. The makers' limits go first; try it by hand before you let go.";

    /// <summary>Beside what tells of taking parts off or moving them on a head.</summary>
    public const string TiltLock = "Tighten the tilt lock before anything comes off or moves, and keep a hand on the rig.";

    /// <summary>Beside what tells of a tripod.</summary>
    public const string TipOver =
        "Level and hard ground, tripod locked, nothing moves: a knock, a cable, wind, a slope or soft ground takes from the "
            + "angle shown. Weigh it down low and don't leave it alone. "
        + "No standard sets an angle for camera tripods; the lines are what is asked of other equipment.";

    /// <summary>Beside what tells of a rig on the shoulder or in the hands.</summary>
    public const string Lifting =
        "Lift with two people what one can't lift easily, and rest before the arms shake. Loads are those at rest; walking "
            + "and turning add to them.";

    /// <summary>Beside a change of builds.</summary>
    public const string Change =
        "Support the rig while parts are off: with less on one end it can turn over on the head or slide off the shoulder.";
}
