using RigScenarios.Cells;

namespace RigScenarios.Power;

/// <summary>A value that the model had to assume because the battery's data did not give it.</summary>
/// <param name="Field">The battery's key in files, such as "heat-capacity": writing it there replaces the assumption.</param>
/// <param name="Name">What it is, in words.</param>
/// <param name="Value">The value used, with its unit.</param>
/// <param name="Why">How it was arrived at.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record AssumedValue(string Field, string Name, string Value, string Why, Citation Source);

/// <summary>A pack that was made from a battery's data, with all that had to be assumed.</summary>
/// <param name="Pack">The pack.</param>
/// <param name="Assumed">Each default that was used; empty where the data gave everything.</param>
public sealed record PackAssumptions(Pack Pack, IReadOnlyList<AssumedValue> Assumed);
