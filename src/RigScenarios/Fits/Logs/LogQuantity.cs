namespace RigScenarios.Fits.Logs;

/// <summary>What a column of a power log holds.</summary>
public enum LogQuantity
{
    /// <summary>Time, in seconds once read.</summary>
    Time,

    /// <summary>Voltage at the battery's terminals, in volts once read.</summary>
    Voltage,

    /// <summary>Current out of the battery, in amperes once read.</summary>
    Current,
}
