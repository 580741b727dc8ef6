namespace RigScenarios.Simulation;

/// <summary>Where a battery is and what happens with it.</summary>
public enum BatteryPlace
{
    /// <summary>On the rig.</summary>
    OnRig,

    /// <summary>At rest, fit for use.</summary>
    Resting,

    /// <summary>At rest with too little charge to be used.</summary>
    TooLow,

    /// <summary>Waiting for a free bay, or for its turn on a charger that serves one after the other.</summary>
    WaitingForBay,

    /// <summary>On a bay without power.</summary>
    WaitingForPower,

    /// <summary>On a bay, too cold or too warm to be charged.</summary>
    WaitingForTemperature,

    /// <summary>Being charged.</summary>
    Charging,

    /// <summary>Charged and at rest.</summary>
    Full,
}

/// <summary>The places in words.</summary>
public static class BatteryPlaceWords
{
    /// <summary>The place in the words of messages, tables and files.</summary>
    public static string InWords(this BatteryPlace place) => place switch
    {
        BatteryPlace.OnRig => "on the rig",
        BatteryPlace.Resting => "resting",
        BatteryPlace.TooLow => "too low to use",
        BatteryPlace.WaitingForBay => "waiting for a bay",
        BatteryPlace.WaitingForPower => "waiting for power",
        BatteryPlace.WaitingForTemperature => "waiting for temperature",
        BatteryPlace.Charging => "charging",
        BatteryPlace.Full => "full",
        _ => throw new ArgumentOutOfRangeException(nameof(place), $"{place} is no place of a battery."),
    };
}
