namespace RigScenarios.Balance;

/// <summary>What stops a rig from being balanced on a head: the edges of its envelope.</summary>
public enum BalanceEdge
{
    /// <summary>The camera plate is as far as it goes to the front: x = s_max.</summary>
    TravelFrontEnd,

    /// <summary>The camera plate is as far as it goes to the rear: x = s_min.</summary>
    TravelRearEnd,

    /// <summary>Friction at rest does not hold the worst residual of the tilt range.</summary>
    Tilt,

    /// <summary>The rated load of the head.</summary>
    Load,
}

/// <summary>The limits in words.</summary>
public static class BalanceEdgeWords
{
    /// <summary>"travel front end", "travel rear end", "tilt", "load".</summary>
    public static string InWords(this BalanceEdge limit) => limit switch
    {
        BalanceEdge.TravelFrontEnd => "travel front end",
        BalanceEdge.TravelRearEnd => "travel rear end",
        BalanceEdge.Tilt => "tilt",
        _ => "load",
    };
}
