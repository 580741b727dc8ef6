namespace RigScenarios.Fits.Logs;

/// <summary>Where a log has its times, voltages or currents.</summary>
/// <param name="Name">What stands above the column; case does not matter. In a file without such a line its number from the left,
/// the first being "1".</param>
/// <param name="Factor">What a number of it is multiplied with to get s, V or A (0.001 for mV; below 0 for the other direction of
/// the current); null to read it from the unit in the name.</param>
public sealed record LogColumn(string Name, double? Factor = null);
