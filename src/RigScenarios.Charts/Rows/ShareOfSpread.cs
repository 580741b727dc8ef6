namespace RigScenarios.Charts.Rows;

/// <summary>An estimate with the interval that holds it.</summary>
/// <param name="Value">The estimate; not-a-number where it is not known.</param>
/// <param name="Low">The lower end of the interval.</param>
/// <param name="High">The upper end.</param>
public sealed record EstimatedShare(double Value, double Low, double High);

/// <summary>How much of the spread of a result comes from one uncertain figure, in per cent.</summary>
/// <param name="Name">Which figure, as people read it.</param>
/// <param name="Alone">What it brings by itself (first-order index).</param>
/// <param name="WithOthers">What it brings together with all others (total index).</param>
public sealed record ShareOfSpread(string Name, EstimatedShare Alone, EstimatedShare WithOthers);
