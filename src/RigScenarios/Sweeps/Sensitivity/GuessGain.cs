using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>How often one would be wrong about a yes or no, before and after one act of measuring.</summary>
/// <param name="WrongNow">How often the likelier answer of today is wrong.</param>
/// <param name="WrongThen">How often one would be wrong who had measured, and then took what most runs with about this result
/// say. Never told too small: it is what a rule made of these very runs achieves on runs that it has not seen.</param>
/// <param name="StandardError">The standard error of that.</param>
/// <param name="Gain">By how much one is wrong less often; 0 where it is no less, or by less than three standard errors of the
/// difference: of many acts some seem to help by chance.</param>
public sealed record GuessGain(Ratio WrongNow, Ratio WrongThen, Ratio StandardError, Ratio Gain);
