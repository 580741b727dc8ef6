using System.Runtime.InteropServices;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>What holds throughout a step, so that the model is smooth in it.</summary>
/// <param name="near">The piece of the open-circuit voltage at the near well.</param>
/// <param name="far">The piece at the far well; of no meaning for a pack with one well.</param>
/// <param name="band">The temperature band.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly struct StepPieces(in MonotoneCubic.Piece near, in MonotoneCubic.Piece far, in TemperatureBand band)
{
    /// <summary>The piece of the open-circuit voltage at the near well.</summary>
    public readonly MonotoneCubic.Piece Near = near;

    /// <summary>The piece at the far well; of no meaning for a pack with one well.</summary>
    public readonly MonotoneCubic.Piece Far = far;

    /// <summary>The temperature band.</summary>
    public readonly TemperatureBand Band = band;
}
