namespace RigScenarios.Fits.Logs;

/// <summary>
/// A stretch of a log over which the model's error of the voltage counts once, however many rows it has.
/// </summary>
/// <param name="FirstBin">Index of its first bin.</param>
/// <param name="EndBin">Index after its last bin.</param>
/// <param name="UsableBins">How many of its bins are compared; bins that touch a gap are not.</param>
/// <param name="MeanVolts">Mean voltage over the usable bins, V.</param>
public readonly record struct LogBlock(int FirstBin, int EndBin, int UsableBins, double MeanVolts);
