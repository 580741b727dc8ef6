using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>An arm that holds an accessory.</summary>
/// <param name="LockTorque">The moment that its weakest lock holds.</param>
public sealed record ArmData(Torque LockTorque);
