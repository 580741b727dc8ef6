namespace RigScenarios.Balance;

/// <summary>What stops a rig from being balanced on a head.</summary>
public enum BalanceLimit
{
    /// <summary>The plate is as far as it goes to the front: x = s_max.</summary>
    TravelFrontEnd,

    /// <summary>The plate is as far as it goes to the rear: x = s_min.</summary>
    TravelRearEnd,

    /// <summary>The drag does not hold the worst residual of the tilt range.</summary>
    Tilt,

    /// <summary>The rated load of the head.</summary>
    Load,
}

/// <summary>The limits in words.</summary>
public static class BalanceLimitWords
{
    /// <summary>"travel front end", "travel rear end", "tilt", "load".</summary>
    public static string InWords(this BalanceLimit limit) => limit switch
    {
        BalanceLimit.TravelFrontEnd => "travel front end",
        BalanceLimit.TravelRearEnd => "travel rear end",
        BalanceLimit.Tilt => "tilt",
        _ => "load",
    };
}
