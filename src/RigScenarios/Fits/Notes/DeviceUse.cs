using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>What a device did through a stretch, as shares of its time: nobody wrote down when it did what.</summary>
/// <param name="Off">Share of the time switched off, 0…1.</param>
/// <param name="Standby">Share of the time switched on without recording, 0…1.</param>
/// <param name="Record">Share of the time recording or at work, 0…1. The three add up to 1.</param>
public sealed record DeviceUse(Ratio Off, Ratio Standby, Ratio Record)
{
    /// <summary>Off all the time.</summary>
    public static DeviceUse AllOff { get; } = Of(1, 0, 0);

    /// <summary>On without recording all the time.</summary>
    public static DeviceUse AllStandby { get; } = Of(0, 1, 0);

    /// <summary>Recording or at work all the time.</summary>
    public static DeviceUse AllRecord { get; } = Of(0, 0, 1);

    /// <summary>The use with plain shares, 0…1 each.</summary>
    /// <param name="off">Switched off.</param>
    /// <param name="standby">Switched on without recording.</param>
    /// <param name="record">Recording or at work.</param>
    public static DeviceUse Of(double off, double standby, double record) =>
        new(Ratio.FromDecimalFractions(off), Ratio.FromDecimalFractions(standby), Ratio.FromDecimalFractions(record));
}
