using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>One limit of the wiring with the worst load on it.</summary>
/// <param name="Element">Name of the element in the network; <see cref="Battery"/> for the battery.</param>
/// <param name="Limit">What is limited, in words.</param>
/// <param name="Case">The kind of load.</param>
/// <param name="Load">The worst value, with its unit.</param>
/// <param name="Allowed">The limit, with its unit.</param>
/// <param name="Margin">What is left as a share of the limit; negative where it is passed.</param>
/// <param name="At">The worst moment, from the start of the day.</param>
/// <param name="Block">The number of the block in which that is, from 0.</param>
/// <param name="States">What draws then, in words.</param>
/// <param name="Source">What the limit rests on.</param>
/// <param name="Remedy">What widens the margin, in words.</param>
public sealed record WiringFinding(
    string Element, string Limit, LoadCase Case, string Load, string Allowed, Ratio Margin, Duration At, int Block, string States, string Source, string Remedy)
{
    /// <summary>The name under which findings about the battery itself stand.</summary>
    public const string Battery = "battery";

    /// <summary>Whether it is a limit of voltage and not of current.</summary>
    public bool IsVoltage { get; init; }

    /// <summary>The worst current, where the limit is one of current; null for others.</summary>
    public ElectricCurrent? Current { get; init; }
}

/// <summary>A change of the wiring that was run through the day.</summary>
/// <param name="Words">What to do.</param>
/// <param name="Gain">How much longer the first essential device then runs within the day.</param>
/// <param name="ReachesEnd">Whether the planned day is then reached.</param>
public sealed record WiringFix(string Words, Duration Gain, bool ReachesEnd);
