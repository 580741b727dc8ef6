using System.Runtime.InteropServices;

namespace RigScenarios.Batteries;

/// <summary>Integrals over a part of a step.</summary>
/// <param name="Charge">A·s.</param>
/// <param name="Delivered">J.</param>
/// <param name="Chemical">J.</param>
/// <param name="HeatToAmbient">J.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct StepIntegrals(double Charge, double Delivered, double Chemical, double HeatToAmbient);
