namespace RigScenarios.Sweeps.Sampling;

/// <summary>Two uncertain fields that go together: where one is large, the other tends to be large too, or small.</summary>
/// <remarks>A normal (Gaussian) copula: each field keeps its own spread, and the two are joined as normal variables with this
/// coefficient. The rank correlation of their values is <c>6/π·asin(coefficient/2)</c>, a little smaller (K. Pearson, "On further
/// methods of determining correlation", 1907).</remarks>
/// <param name="First">The path of one uncertain field of the plan.</param>
/// <param name="Second">The path of the other.</param>
/// <param name="Coefficient">The correlation of the normal variables, above -1 and below 1; 0 is none.</param>
public sealed record Correlation(string First, string Second, double Coefficient);
